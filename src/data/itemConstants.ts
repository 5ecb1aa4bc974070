import { constant, type Constant } from "./constant";

/** Limits of what an order line is taken to mean; beyond them the line is refused with its readings. */
// prettier-ignore
export const itemConstants = {
  longestLine: constant(200, "characters", "judgement", "a description cell"),
  longestFeet: constant(65, "ft", "common practice", "bars are sold up to 60 ft"),
  longestMetres: constant(12, "m", "common practice", "bars are sold up to 12 m"),
  longestPiece: constant(20_000, "mm", "judgement", "a longer bare number is no length of a piece"),
  mostNumberGroups: constant(5, "-", "judgement", "more numbers that stand apart are no line of an order list; each costs a reading"),
  largestBarArea: constant(0.5e6, "mm²", "judgement", "a number that would make a larger bar is no size where another can be"),
  longestDesignation: constant(6, "words", "judgement", "words of the longest designation"),
  shortestPlainName: constant(2, "characters", "judgement", "shorter words are no name of a material"),
  longestRefusal: constant(150, "characters", "judgement", "a sentence that is read in a cell, with the name of its argument"),
  mostAtoms: constant(60, "-", "judgement", "words, numbers and signs of one line"),
  inch: constant(25.4, "mm", "read", "international yard and pound agreement, 1959"),
  foot: constant(304.8, "mm", "read", "international yard and pound agreement, 1959"),
  closeSizes: constant(0.05, "-", "judgement", "a size in the other unit is rounded"),
  priceAtoms: constant(2, "-", "judgement", "the slash of a rate and its unit"),
  largestUnwritten: constant(1.29e6, "mm²", "judgement", "2,000 in²: a larger bar is read only where its unit is written"),
  longestBar: constant(40_000, "mm", "judgement", "a longer written length is that of the whole order, and of no piece"),
  shortestTimes: constant(10, "mm", "judgement", "a count times a length: a shorter length for each piece counted may be a size"),
  widestSides: constant(4, "-", "judgement", "sides of an outline or legs of an angle farther apart: the first number may be the length"),
  leastInWalls: constant(8, "-", "judgement", "a solid is rarely cut shorter than this part of its size; a wall is rarely thicker"),
  thickestWall: constant(12.7, "mm", "judgement", "so short a second number may be the wall of a hollow bar"),
  mostGradesJoined: constant(4, "-", "judgement", "grades of one line that may be names of one material"),
} as const satisfies Record<string, Constant>;
