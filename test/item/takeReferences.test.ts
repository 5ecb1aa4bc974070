import { expect, it } from "vitest";
import { takeReferences } from "../../src/item/takeReferences";
import { lineOf, taken } from "./line";

it.each([
  ["PO 12345 RD 3", "PO 12345"],
  ["RD 3 DWG 123-45 REV 2", "DWG 123 - 45 REV 2"],
  ["Rund EN 10060 80", "EN 10060"],
  ["Rund DIN EN 10060 80 EN 10204 3.1", "DIN EN 10060 EN 10204 3.1"],
  ["EN 24 RD 3", ""],
  ["EN 1.4301 RD 3", ""],
  ["Pos. 10 Rund 80", "Pos. 10"],
  ["25 kg RD 3", "25 kg"],
  ["W12 X 50 lb", ""],
  ["RD 3 $45.50 4140", "$ 45.50"],
  ["RD 3 +/-.005", "+ / - .005"],
  ["Rund 20 h9", "h9"],
  ["5 no RD 3", ""],
  ["item 3 ft", ""],
])("%s: %s is set aside (common practice, no source)", (text, aside) => {
  const line = lineOf(text);
  takeReferences(line);
  expect(taken(line, "unread")).toBe(aside);
});

// H11 and H13 are tool steels (ASTM A681) and tolerance classes (ISO 286), h9 only a class; when which is meant: common practice.
it.each([
  ["metric", "Rund 20 H13", "H13"],
  ["metric", "Ø35 h11 L=300", "h11"],
  ["inch", "304L round 3 H13", "H13"],
  ["inch", "round 3 H11 tol", "H11"],
  ["inch", "round 3 tolerance: H13", "H13"],
  ["inch", "round 3 H13", ""],
  ["inch", "RD 3-1/4 H11", ""],
  ["metric", "H13 Rund 20", ""],
  ["metric", "Werkstoff H13 Rund 20", ""],
  ["inch", "round 3 h9", "h9"],
] as const)("%s, %s: %s is a tolerance", (units, text, aside) => {
  const line = lineOf(text, units);
  takeReferences(line);
  expect(taken(line, "unread")).toBe(aside);
});

it.each([
  ["RD 3 62/kg", "62 / kg"],
  ["RD 3 @ 62/kg", "@ 62 / kg"],
  ["RD 3 @ 24", ""],
  ["x 62/kg", ""],
  ["no 12345 RD 3", "no 12345"],
  ["5 no 12345 RD", ""],
  ["PO: 12345 RD 3", "PO : 12345"],
  ["PO # 12345 RD 3", "PO # 12345"],
  ["PO RD 3", ""],
  ["PO", ""],
  ["DIN 1.4301 RD 3", ""],
  ["Werkstoff 1,4301", ""],
  ["EN 12 RD 3", ""],
  ["EN 123456 RD 3", ""],
  ["EN 100 RD 3", "EN 100"],
  ["PO 12 mm", ""],
  ["PO 12 ft", ""],
  ["25 kg x 3", "25 kg"],
  ["x 25 kg", ""],
  ["RD 3 EN10060", "EN 10060"],
  ["RD 3 DINEN10060", "DINEN10060"],
  // The sign belongs to the number that it is joined to.
  ["RD 3 €45", "€ 45"],
  ["RD 3 45€", "45 €"],
  ["RD 3 45 €", "45 €"],
  ["RD 3 ±0.1", "± 0.1"],
])("%s: %s is set aside (common practice, no source)", (text, aside) => {
  const line = lineOf(text);
  takeReferences(line);
  expect(taken(line, "unread")).toBe(aside);
});
