import { it } from "vitest";
import { translateLine } from "/tmp/wt-c/src/item/translateLine";
import { readFileSync } from "node:fs";
it("x", () => {
  for (const l of JSON.parse(readFileSync("/tmp/c-lines.json","utf8"))) { const t = translateLine(l.line); console.log(l.line, " => ", t.text, [...t.languages].join(), t.stop?.kind ?? "", t.stop?.word ?? ""); }
});
