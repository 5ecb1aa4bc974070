/** functions.json as far as a workbook depends on it: the cells keep a function's name and its arguments by their places. */
export interface Released {
  readonly functions: readonly {
    readonly id: string;
    readonly name: string;
    readonly parameters: readonly {
      readonly name: string;
      readonly type: string;
      readonly dimensionality: string;
      readonly optional?: boolean;
      readonly repeating?: boolean;
    }[];
  }[];
}

const kept = ["name", "type", "dimensionality", "repeating"] as const;

/** What a later list of functions would change for workbooks that an earlier one has made; nothing for an extension. */
export function extensionProblems(earlier: Released, later: Released): readonly string[] {
  return earlier.functions.flatMap(({ id, name, parameters }) => {
    const now = later.functions.find((f) => f.id === id && f.name === name);
    if (now === undefined) return [`${name} is gone: its cells would show #NAME?`];
    const changed = parameters.flatMap((parameter, i) => {
      const other = now.parameters[i];
      if (other === undefined) return [`${name} has lost its argument ${parameter.name}`];
      const moved = kept.filter((key) => other[key] !== parameter[key]);
      const asked = parameter.optional === true && other.optional !== true ? ["optional"] : [];
      return [...moved, ...asked].map((key) => `${name}, argument ${i + 1}, ${parameter.name}: ${key} is another`);
    });
    const wanted = now.parameters
      .slice(parameters.length)
      .filter(({ optional }) => optional !== true)
      .map((parameter) => `${name} wants a new argument, ${parameter.name}`);
    return [...changed, ...wanted];
  });
}
