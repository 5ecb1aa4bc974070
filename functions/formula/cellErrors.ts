/** The errors that a file may keep in a cell (ECMA-376-1, 18.17.3). */
const kept = ["#N/A", "#NUM!", "#VALUE!", "#DIV/0!", "#REF!", "#NULL!", "#NAME?", "#GETTING_DATA"];

/** Errors that are younger than the file format. */
const younger = [
  "#SPILL!",
  "#CALC!",
  "#BUSY!",
  "#FIELD!",
  "#BLOCKED!",
  "#CONNECT!",
  "#UNKNOWN!",
  "#EXTERNAL!",
  "#TIMEOUT!",
  "#PYTHON!",
];

/** The errors that a cell can show. */
export const cellErrors: readonly string[] = [...kept, ...younger];

/** Text is not looked at further: that a formula gives "#N/A" as text is not known. */
export const isError = (value: unknown): value is string => typeof value === "string" && cellErrors.includes(value);

/** Of the younger ones a file keeps #VALUE!, with a note of their own beside (from memory). */
export const isYounger = (value: unknown): boolean => typeof value === "string" && younger.includes(value);
