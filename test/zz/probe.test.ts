import { it } from "vitest";
import { readFileSync } from "node:fs";
import { readItem } from "../../src/item/readItem";
import { InputError } from "../../src/errors";
const show = (v: unknown) => v instanceof InputError ? "✗ " + v.problem.replace(/\{(\w+)\}/g, (_, n: string) => String(v.facts[n])) : typeof v === "number" ? +v.toFixed(4) : v;
it("p", () => {
  let out = "";
  for (const l of readFileSync("/tmp/lines.txt", "utf8").split("\n").filter(Boolean)) {
    const [u, s] = [l[0] === "m" ? "metric" : "inch", l.slice(2)] as const;
    try { const i = readItem(s, u as any, []); out += `${l}\n     S ${show(i.size)} | M ${i.grade instanceof InputError ? show(i.grade) : i.grade.key} | L ${show(i.length)} | Q ${show(i.quantity)} | U ${i.unread}\n`; } catch (e) { out += `${l}\n     THROW ${e instanceof InputError ? show(e) : (e as Error).stack}\n`; }
  }
  console.log(out);
});
