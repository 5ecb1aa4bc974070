import { ValueNodeFactory } from "@univerjs/engine-formula";

/**
 * 1.50, .5 and 1E3 in a formula are numbers, as 1.5 is. The engine takes a number that is not written in the shortest way
 * for a text, and a text is greater than every number: IF(A1>0.50,…) took the wrong branch.
 */
export function correctWrittenNumbers(): void {
  const factory = ValueNodeFactory.prototype;
  const own = Reflect.get<ValueNodeFactory, "create">(factory, "create");
  factory.create = function create(token) {
    const number = token.trim() === "" ? NaN : Number(token);
    return own.call(this, Number.isFinite(number) ? String(number) : token);
  };
}
