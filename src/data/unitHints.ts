const set = (words: string): ReadonlySet<string> => new Set(words.split(" "));

/** Words of series that stand in one system. */
export const europeanSeries = set(
  "ipe ipea ipeaa ipeo ipev ipn inp he hea heb hem heaa hec ipb ipbl ipbv ub uc upn unp upe pfc chs shs rhs dn isa isf",
);
export const americanSeries = set("wf hp mc wt hss nps sch sched schedule ga gauge");

/** Designations of grades that are used with millimetres alone: material numbers, European, British EN, Japanese, Korean and Chinese ones. */
export const metricGrade =
  /^(?:[12][.,]\d{4}|[spl]\d{3}[a-z]\w*(?:\+\w+)?|st\d\d\S*|c\d\de?(?:\+\w+)?|\d{2,3}[a-z]{1,2}\d?[a-z]{1,2}\w*\d(?:[-+]\S+)?|en\d{1,2}[a-z]?|su[sjm]\w*|stk\w*|sc[mr]\w*|ss[24]\d\d|s\d\dc|sn\w+\d|sks?\d+|skd\d+|q\d{3}[a-z]?|cw\d{3}[a-z]|cuzn\S*|\d\dsmn\S*|gg\d\d|ggg\d\d|ms\d\d|is\d{4})$/;
