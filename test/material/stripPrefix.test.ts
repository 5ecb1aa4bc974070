import { expect, it } from "vitest";
import { stripPrefix } from "../../src/material/stripPrefix";

it.each([
  ["AISI 304", "304", "any"],
  ["SAE1018", "1018", "any"],
  ["ASTM A36", "A36", "any"],
  ["UNS S30400", "S30400", "UNS"],
  ["W.-Nr. 1.4301", "1.4301", "W.-Nr."],
  ["Werkstoff-Nr. 1.4301", "1.4301", "W.-Nr."],
  ["DIN 1.2379", "1.2379", "W.-Nr."],
  ["DIN EN 1.4301", "1.4301", "W.-Nr."],
  ["EN AW-6082", "AW-6082", "aluminium"],
  ["EN-GJL-250", "GJL-250", "any"],
  ["AA 6061", "6061", "aluminium"],
  ["CDA 360", "360", "copper"],
  ["SA-516 Gr 70", "A-516 Gr 70", "any"],
  ["JIS SUS304", "SUS304", "any"],
  ["EN8", "EN8", "any"],
  ["EN 19", "EN 19", "any"],
  ["EN31", "EN31", "any"],
  ["304", "304", "any"],
])("%s is %s of %s (the EN of EN8, EN19, EN31 is part of the name: BS 970, from memory)", (text, rest, scope) => {
  expect(stripPrefix(text)).toEqual({ rest, scope });
});
