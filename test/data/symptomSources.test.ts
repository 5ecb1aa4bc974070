import { describe, expect, it } from "vitest";
import { hazardTexts } from "../../src/data/cautions";
import { symptomRemedies } from "../../src/data/symptomRemedies";
import { symptoms } from "../../src/data/symptoms";
import { symptomSources } from "../../src/data/symptomSources";

/** All that CUTCHECK, the help page and the cautions say of trouble. */
const said = JSON.stringify([symptoms(), symptomRemedies, [...hazardTexts.values()]]);

// Beginning of the fact, and what it backs, matched by reading both side by side.
const backed: readonly (readonly [fact: string, sentence: string])[] = [
  ["harder metal, lighter feed", "Half feed through the skin"],
  ["vibration: band speed", "Move the band speed by a tenth"],
  ["a regular click", "a crack or a lost tooth is passing through the work"],
  ["one tooth alone strikes", "the edge drops into a gullet and one tooth takes the whole load"],
  ["too fast wears", "hot edges wear fast"],
  ["three-tooth rule", "Count the teeth across the work"],
  ["edge radius 5 to 15 µm", "A chip thinner than the edge is round is ploughed, not cut"],
  ["a least chip exists", "lets only dust off"],
  ["force per area rises", "A thin chip is mostly rubbing"],
  ["new bi-metal teeth", "Fresh edges are thin and uneven in height"],
  ["weld and uneven back", "Sight along the back for a step"],
  ["side stiffness", "The band's stand against a sideways push"],
  ["cracks grow by fatigue", "small cracks grow from the gullets"],
  ["washboard lines", "each wave in the cut feeds the next"],
  ["vibration shortens", "Find its cause under noise or vibration"],
  ["blue on steel", "Colour on the chip alone is heat in the chip"],
  ["in fast cutting", "Carbide runs at speeds where the chip colours"],
  ["magnesium: fine feed", "Magnesium, titanium, zirconium and the like: never water on burning chips"],
  ["water-mixed coolant", "water-based coolant gives off hydrogen"],
  ["contact with the moving blade", "never pick chips out by hand"],
  ["lock-out; compressed air", "no compressed air"],
  ["wheel grip", "Bending stress grows straight with thickness over wheel diameter"],
];

describe("what stands behind the trouble table", () => {
  it.each(backed)("%s…: %s", (fact, sentence) => {
    expect(symptomSources.filter(([text]) => text.startsWith(fact))).toHaveLength(1);
    expect(said).toContain(sentence);
  });

  it("no fact is listed that backs nothing", () => {
    expect(symptomSources).toHaveLength(backed.length);
  });

  it("each says how far it was read, in the words of docs/sources.md; what was not seen is not called read", () => {
    for (const [fact, source, read] of symptomSources) {
      expect(read, fact).toMatch(/^(?:read|abstract|named|derived)(?:$| \(|;)/);
      if (source === "mechanics") expect(read).toBe("derived");
    }
  });

  // Titles of the two rules of the US Code of Federal Regulations, from memory: "The control of hazardous energy
  // (lockout/tagout)" and "Hand and portable powered tools and equipment: compressed air used for cleaning".
  it("lock-out and compressed air name their rules", () => {
    const rules = symptomSources.find(([fact]) => fact === "lock-out; compressed air for cleaning")!;
    expect(rules[1]).toBe("29 CFR 1910.147; 1910.242(b)");
  });

  it("blue is 300 °C: 572 °F, between the 570 and 590 °F of blue in tempering tables (from memory)", () => {
    const [fact] = symptomSources.find(([text]) => text.startsWith("blue on steel"))!;
    const fahrenheit = (Number(/(\d+) °C/.exec(fact)![1]) * 9) / 5 + 32;
    expect(fahrenheit).toBeGreaterThanOrEqual(570);
    expect(fahrenheit).toBeLessThanOrEqual(590);
  });
});
