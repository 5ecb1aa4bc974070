/** The errors that a cell can show. Text is not looked at further: that a formula gives "#N/A" as text is not known. */
export const isError = (value: unknown): value is string =>
  typeof value === "string" &&
  /^#(?:N\/A|NUM!|VALUE!|DIV\/0!|REF!|NULL!|NAME\?|SPILL!|CALC!|BUSY!|GETTING_DATA|FIELD!|BLOCKED!|CONNECT!|UNKNOWN!|EXTERNAL!|TIMEOUT!|PYTHON!)$/.test(
    value,
  );
