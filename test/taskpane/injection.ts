/** Texts that a sheet would calculate, or change, if they were typed as they stand: from common practice, no source. */
export const hostileTexts: readonly string[] = [
  "=1+1", "=A1", "=SUM(A1:A9)", '=HYPERLINK("http://127.0.0.1/","x")', "=cmd|'/c calc'!A0", '=WEBSERVICE("http://127.0.0.1/")', "=IMPORTXML(A1,A2)", "=NOW()", "=INDIRECT(A1)", "==1",
  "+1", "+1+1", "+A1", "+SUM(A1)", "+cmd|'/c calc'!A0", "-1", "-1+1", "-A1", "-SUM(A1)", "--1",
  "@SUM(A1)", "@A1", "@1", "@", "@@", "=", "+", "-", "=\"a\"", "='Sheet 1'!A1",
  "3/4", "1/2", "4/6", "1.4301", "304", "1e5", "0x10", "00123", "12-1", "2026-01-02",
  "TRUE", "FALSE", "#N/A", "#REF!", "'quoted", "''", "=\t1", "\t=1", "=1\n+1", "＝1+1",
];
