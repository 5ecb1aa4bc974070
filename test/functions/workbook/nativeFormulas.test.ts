import { readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { initSync, Model } from "@ironcalc/wasm";
import { expect, it } from "vitest";
import { addressOf } from "../../../functions/formula/cellAddress";
import { bookParts, cellXml, folder, recalc, zip } from "./fixture";

/**
 * What estimators' sheets do with texts, blanks and numbers, by recalc and by an engine of other authors (IronCalc). Left
 * out is where that one departs from Excel: ROUND(1.005,2), TEXT of a half, fractions as formats, texts that are dates.
 * Not held here, and an error where Excel gives a number: --"5".
 */

initSync({ module: readFileSync(createRequire(import.meta.url).resolve("@ironcalc/wasm/wasm_bg.wasm")) });

/** Invented. Grades are texts, 2/3 too; a blank, an empty text, a zero, a negative number. */
const data: readonly (readonly (string | number | null)[])[] = [
  ["size", "grade", "blade", "qty", "price", "note"],
  ["round 7", "4140", "bi-metal", 20, 12.5, "rush"],
  ["round 4", "304", "carbide", 5, 3.25, null],
  ["2/3", "3/4", "bi-metal", 0, -4, "x"],
  ["tube 6x0.5", "A36", "carbide", null, 100, ""],
  ["RND 3-1/2", "17-4PH", "bi-metal", 7, 0.333333, "2/3"],
  ["304", "316", "x", 1.5, 46000, "Ä"],
];

/** The first, in A20, is the empty text that those after it use. */
const formulas = String.raw`
IF(TRUE,"","")
A20=0
A20=""
ISBLANK(A20)
A20+1
A20*2
SUM(A20,1)
COUNTIF(A20:A20,"")
COUNTIF(A20:A20,0)
COUNTBLANK(A20:A20)
COUNTA(A20:A20)
IF(A20>0,"more","less")
LEN(A20)
A20&"x"
SUMPRODUCT((A20:A21="")*1)
AVERAGE(A20,4)
MAX(A20:A21)
N(A20)
MATCH("",A20:A20,0)
G5=""
G5=0
SUMPRODUCT((D2:D7="")*1)
SUMPRODUCT((D2:D7=0)*1)
ROUND(A20,2)
A2*1
SUM(A4)
MAX(A4,1)
ROUND(A4,2)
"12 mm"+1
ABS("x")
INT("7.9")
SQRT("16")
IF("TRUE",1,2)
CONCAT(A2:A3)
SUM(A2:A7)
MIN(A2:A7)
AVERAGE(B2:B7)
PRODUCT(B2:B7)
ROUNDUP(12.1/5,0)
CEILING(0,5)
CEILING(-7.3,1)
FLOOR(-7.3,1)
ROUND(-1.45,1)
ROUND(1.45,1)
ROUND(123.456,-1)
TEXT(1.005,"0.00")
TEXT(0.5,"0")
TEXT(1.5,"0")
TEXT(-1234.5,"#,##0.00;(#,##0.00)")
TEXT(12,"0.0")
TEXT("a","0.0")
TEXT(0.75,"0 %")
TEXT(1e6,"0.00E+00")
TEXT(5,"$#,##0.00")
SUM(D2:D7)
AVERAGE(D2:D7)
COUNT(A2:F7)
COUNTA(A2:F7)
COUNTBLANK(A2:F7)
COUNTIF(B2:B7,"304")
COUNTIF(B2:B7,304)
COUNTIF(A2:A7,"2/3")
COUNTIF(A2:A7,"round*")
COUNTIF(D2:D7,">5")
COUNTIF(D2:D7,"<>0")
COUNTIF(F2:F7,"")
COUNTIF(C2:C7,"BI-METAL")
SUMIF(C2:C7,"bi-metal",D2:D7)
SUMIF(D2:D7,">=5")
SUMIFS(D2:D7,C2:C7,"bi-metal",E2:E7,">0")
AVERAGEIF(C2:C7,"carbide",E2:E7)
MAX(D2:D7)
MIN(D2:D7)
VLOOKUP("round 4",A2:E7,4,FALSE)
VLOOKUP("304",B2:E7,3,FALSE)
VLOOKUP(304,B2:E7,3,FALSE)
INDEX(A2:A7,MATCH("304",B2:B7,0))
MATCH("round*",A2:A7,0)
XLOOKUP("carbide",C2:C7,A2:A7)
XLOOKUP("none",C2:C7,A2:A7,"not there")
IF(D4=0,"zero","not")
IF(D5=0,"zero","not")
IF(D5="","blank","not")
IF(F5="","blank","not")
ISBLANK(D5)
ISBLANK(F5)
ISNUMBER(B3)
ISTEXT(B3)
B3+1
B3*2
"304"+1
A4&"-"&B4
D2&" pcs"
E6&""
ROUND(E6,2)
ROUNDUP(E6*D6,0)
ROUNDDOWN(-2.5,0)
ROUND(-2.5,0)
ROUND(2.5,0)
CEILING(7.3,0.5)
FLOOR(7.3,0.5)
MROUND(7.3,0.25)
INT(-3.5)
MOD(-3,2)
MOD(10,3)
TRUNC(-3.7)
QUOTIENT(7,2)
ABS(E4)
SQRT(2)
PI()
POWER(2,0.5)
2^3^2
-2^2
(-2)^2
10%
50%*D2
1/3
SUMPRODUCT(D2:D7,E2:E7)
SUMPRODUCT((C2:C7="bi-metal")*D2:D7)
TEXT(1234.5,"#,##0.00")
TEXT(0.125,"0.0%")
TEXT(E6,"0.00")
TEXT(46000,"yyyy-mm-dd")
TEXT(7,"00")
VALUE("12.5")
VALUE("1,234")
LEFT(A2,5)
RIGHT(A2,1)
MID(A6,5,5)
LEN(A6)
FIND("-",A6)
SEARCH("ROUND",A2)
SUBSTITUTE(A6,"-"," ")
TRIM("  a  b ")
UPPER(C2)
PROPER("round bar")
REPT("x",3)
CONCATENATE(A2," ",B2)
TEXTJOIN(", ",TRUE,A2:A4)
EXACT("a","A")
"a"="A"
"a"<"b"
1<"a"
TRUE>1
AND(D2>1,E2>1)
OR(D4>1,E4>1)
NOT(TRUE)
XOR(TRUE,FALSE)
IFERROR(1/0,"bad")
IFNA(NA(),"none")
ISERROR(1/0)
IFS(D2>100,"a",D2>10,"b",TRUE,"c")
SWITCH(C3,"bi-metal",1,"carbide",2)
CHOOSE(2,"a","b","c")
RANK(E2,E2:E7)
LARGE(E2:E7,2)
SMALL(E2:E7,2)
MEDIAN(E2:E7)
STDEV(E2:E7)
VAR(E2:E7)
PERCENTILE(E2:E7,0.9)
QUARTILE(E2:E7,1)
YEAR(46351)
MONTH(46351)
DAY(46351)
WEEKDAY(46351)
EDATE(46351,1)
EOMONTH(46351,0)
NETWORKDAYS(46351,46371)
DAYS(46371,46351)
DATEDIF(46000,46351,"d")
TIME(1,30,0)
HOUR(0.75)
MINUTE(0.52)
ROW(A5)
COLUMN(C1)
ROWS(A2:A7)
COLUMNS(A2:F7)
ADDRESS(2,3)
INDIRECT("D2")
OFFSET(D2,1,1)
SUM(OFFSET(D2,0,0,3,1))
SUBTOTAL(9,D2:D7)
SUBTOTAL(109,D2:D7)
SUBTOTAL(3,A2:A7)
PRODUCT(D2:D3)
SUMSQ(D2:D3)
LN(2)
LOG(100)
LOG10(1000)
EXP(1)
SIN(1)
DEGREES(PI())
N(TRUE)
T(5)
D2:D2
+D2
"5"*"2"
D5*2
D5&"x"
A2*2
SUM("5",2)
SUM(B2:B7)
AVERAGEIFS(E2:E7,C2:C7,"bi-metal",D2:D7,">0")
COUNTIFS(C2:C7,"bi-metal",D2:D7,">0")
MAXIFS(E2:E7,C2:C7,"bi-metal")
MINIFS(E2:E7,C2:C7,"bi-metal")
SUMIF(B2:B7,"3*",E2:E7)
COUNTIF(B2:B7,"3*")
COUNTIF(B2:B7,">300")
COUNTIF(A2:A7,"304")
COUNTIF(A2:A7,304)
MATCH(304,A2:A7,0)
MATCH("304",A2:A7,0)
LOOKUP(6,{1,5,10},{"a","b","c"})
VLOOKUP(6,{1,"a";5,"b";10,"c"},2)
VLOOKUP(6,{1,"a";5,"b";10,"c"},2,TRUE)
HLOOKUP("qty",A1:F7,3,FALSE)
ISNUMBER(SEARCH("tube",A5))
IF(ISNUMBER(FIND("/",A4)),"fraction","no")
NUMBERVALUE("1.234,5",",",".")
FIXED(1234.567,1)
CHAR(65)
CODE("A")
UNICHAR(8960)
CLEAN("a")
ROUND(D2/E2,3)
SIGN(-3)
FACT(5)
COMBIN(5,2)
GCD(12,18)
LCM(4,6)
CONVERT(1,"in","mm")
CONVERT(1,"lbm","kg")
BIN2DEC("101")
ROMAN(4)
EVEN(3)
ODD(2)
SUM(D2:D7)/COUNT(D2:D7)
IF(SUM(D2:D7)>30,SUM(D2:D7)*0.9,SUM(D2:D7))
COUNTIF(A2:A7,"*")
COUNTIF(A2:A7,"?*/*")
SUMPRODUCT(D2:D7*(E2:E7>0))
LEFT(304,2)
304&""
"3/4"&""
IF(A4="2/3",1,2)
A4="2/3"
B3="304"
B3=304
F6="2/3"
CEILING.MATH(7.3)
FLOOR.MATH(-7.3)
ROUND(D7,0)
ROUND(0.5,0)
ROUND(1.5,0)
5&5
5/0
VALUE("abc")
SQRT(-1)
MATCH("zz",A2:A7,0)
LEN("")
LEN(D5)
TRUE+TRUE
TRUE&""
SUM(TRUE,2)
COUNT(TRUE,"5","a")
COUNTA("")
AVERAGE("5",1)
DATEVALUE("2026-11-25")
TIMEVALUE("06:00")
YEARFRAC(46000,46365)
WORKDAY(46351,5)
ISOWEEKNUM(46351)
WEEKNUM(46351)
A2="round*"
F2="?"
F4="?"
F4="x"
SUMPRODUCT(--(A2:A7="round*"))
SUMPRODUCT((A2:A7="304")*1)
SUMPRODUCT((A2:A7=304)*1)
SUMPRODUCT((B2:B7>"3")*1)
COUNTIF(A2:A7,"=304")
COUNTIF(B2:B7,"<>3/4")
COUNTIF(B2:B7,"3/4")
COUNTIF(D2:D7,"")
COUNTIF(D2:D7,0)
COUNTIF(D2:D7,"=0")
SUMIF(B2:B7,"304",D2:D7)
SUMIF(B2:B7,304,D2:D7)
SUMIF(B2:B7,B3,D2:D7)
SUMIF(A2:A7,A4,D2:D7)
SUMIFS(D2:D7,B2:B7,"304")
SUMIFS(D2:D7,B2:B7,B3)
XLOOKUP("304",A2:A7,D2:D7)
XLOOKUP(304,A2:A7,D2:D7,"none")
XLOOKUP("2/3",A2:A7,B2:B7)
XMATCH("304",B2:B7)
MATCH("2/3",A2:A7,0)
MATCH("tube*",A2:A7,0)
VLOOKUP("tube*",A2:E7,2,FALSE)
VLOOKUP("2/3",A2:E7,2,FALSE)
VLOOKUP(A4,A2:E7,2,FALSE)
COUNTIF(E2:E7,">=3.25")
COUNTIF(E2:E7,"<0")
COUNTIF(A2:A7,"r?und 7")
COUNTIF(A2:A7,"*x*")
COUNTIF(A2:A7,"~*")
IF(D5<1,"yes","no")
IF(F3="","e","f")
D5=0
D5=""
F5=0
""=0
D5=FALSE
IF(D4,"y","n")
COUNTIF(C2:C7,"<>bi-metal")
COUNTIF(C2:C7,"<c")
SUMPRODUCT((C2:C7<>"bi-metal")*(D2:D7>0))
SUM((C2:C7="bi-metal")*1)
MAX((C2:C7="bi-metal")*E2:E7)
COUNTIFS(B2:B7,"304",C2:C7,"carbide")
AVERAGEIF(B2:B7,"304",E2:E7)
INDEX(SORT(E2:E7),1)
SUM(SORT(E2:E7,1,-1))
INDEX(SORT(A2:E7,5),1,1)
SUM(TAKE(E2:E7,2))
SUM(DROP(E2:E7,4))
XLOOKUP("round 4",A2:A7,E2:E7)
INDEX(E2:E7,2)
SUMIF(A2:A7,A4,E2:E7)
EDATE(DATE(2026,1,31),1)
EDATE(DATE(2026,1,31),13)
EDATE(DATE(2024,2,29),12)
EDATE(DATE(2026,3,31),-1)
EDATE(DATE(2026,5,31),-3)
EDATE(DATE(2026,8,30),6)
EDATE(DATE(2026,1,15),1)
EDATE(46000.7,1)
EDATE(DATE(2026,1,15),1.9)
EDATE("x",1)
EDATE(-1,1)
EOMONTH(DATE(2026,1,31),0)
EOMONTH(DATE(2026,1,31),1)
EOMONTH(DATE(2026,1,15),-1)
EOMONTH(DATE(2024,1,31),1)
DATE(2026,2,30)=DATE(2026,3,2)
DATE(2026,13,1)=DATE(2027,1,1)
DATE(2026,0,1)=DATE(2025,12,1)
DATE(2026,1,-5)=DATE(2025,12,26)
ISOWEEKNUM(DATE(2024,12,30))
ISOWEEKNUM(DATE(2027,1,1))
ISOWEEKNUM(DATE(2026,1,1))
ISOWEEKNUM(DATE(2021,1,3))
ISOWEEKNUM(DATE(2020,12,31))
ISOWEEKNUM(DATE(2018,12,31))
ISOWEEKNUM(DATE(2026,6,15))
WEEKNUM(DATE(2024,12,30),21)
WEEKNUM(DATE(2027,1,1),21)
WEEKNUM(DATE(2024,12,30),2)
WEEKNUM(DATE(2026,12,31))
WEEKDAY(46053)
WEEKDAY(46053,2)
WEEKDAY(46053,3)
YEAR(46053)
MONTH(46053)
DAY(46053)
DATEDIF(DATE(2026,1,31),DATE(2026,3,1),"m")
DATEDIF(DATE(2025,1,31),DATE(2026,3,1),"y")
DATEDIF(DATE(2026,1,1),DATE(2026,3,1),"d")
DAYS(DATE(2026,3,1),DATE(2026,1,31))
DAYS360(DATE(2026,1,31),DATE(2026,3,31))
YEARFRAC(DATE(2026,1,1),DATE(2026,7,1))
YEARFRAC(DATE(2026,1,1),DATE(2026,7,1),1)
YEARFRAC(DATE(2026,1,31),DATE(2026,2,28),0)
NETWORKDAYS(DATE(2026,1,1),DATE(2026,1,31))
NETWORKDAYS(DATE(2026,1,31),DATE(2026,1,1))
NETWORKDAYS.INTL(DATE(2026,1,1),DATE(2026,1,31),11)
WORKDAY(DATE(2026,1,30),1)
WORKDAY(DATE(2026,1,30),-1)
WORKDAY(DATE(2026,1,31),5)
WORKDAY.INTL(DATE(2026,1,30),1,7)
HOUR(0.573)
MINUTE(0.573)
SECOND(0.573)
TIME(25,0,0)
TIME(1,90,0)
IF("x",1,2)
IF("false",1,2)
IF("",1,2)
IF(A2,1,2)
IF(A20,1,2)
IF(G2,1,2)
IF(D2,1,2)
IFERROR(IF(A2,1,2),"bad")
SUMPRODUCT(IF(D2:D7>1,E2:E7,0))
SUM(IF(C2:C7="x",1,0))
SWITCH(1,"1","a",1,"b")
SWITCH("A","a",1,2)
SWITCH(TRUE,D2>50,"x",D2>10,"y")
SWITCH(D2,5,"five",20,"twenty","other")
SWITCH(B3,304,"number","304","text")
SWITCH(9,1,"a")
SWITCH(A4,"2/3",1,2)
AVERAGEA(A2:A7)
AVERAGEA(D2:D7)
AVERAGEA(D2:D7,TRUE)
STDEVA(A2:A7)
VARA(A2:A7)
MEDIAN(A2:A7)
MEDIAN(A7,3)
MEDIAN(D2:D7,A2:A7)
MEDIAN(D2:D7)
STDEV(A2:A7)
STDEV(G2:G5)
STDEV(D2:D7)
STDEVP(D2:D7)
STDEV.S(5)
STDEV.P(G2:G5)
VAR(A2:A7)
VAR(A2:A7,D2:D3)
VAR(D2:D7)
VAR.P(D2:D7)
VAR(G2:G5)
GEOMEAN(A2:A7)
GEOMEAN(1,2,4)
HARMEAN(1,2,4)
TRIMMEAN(E2:E7,0.4)
PERCENTRANK(A2:A7,304)
PERCENTRANK(D2:D7,7)
PERCENTILE(E2:E7,0.3)
PERCENTILE.INC(E2:E7,0.9)
PERCENTILE.EXC(E2:E7,0.3)
LARGE(E2:E7,9)
RANK(D2,D2:D7)
RANK(D2,D2:D7,1)
RANK.AVG(7,D2:D7)
MODE(1,2,2,3)
CORREL(D2:D4,E2:E4)
SLOPE(E2:E4,D2:D4)
INTERCEPT(E2:E4,D2:D4)
FORECAST(10,E2:E4,D2:D4)
RSQ(E2:E4,D2:D4)
MINIFS(E2:E7,C2:C7,"carbide")
MAXIFS(E2:E7,C2:C7,"zz")
ABS(A7)
SQRT(A7)
EXP("1")
LN(A7)
LOG10(A7)
SIN(A7)
COS(A7)
TAN(A7)
ATAN(A7)
ATAN2(400,A7)
ROUND(A7,0)
ROUND(400,A7)
ROUND(A2,0)
ROUNDUP(A7,-1)
ROUNDDOWN(A7,-1)
MOD(A7,5)
MOD(400,A7)
POWER(A7,2)
A7^2
INT(A7)
TRUNC(A7)
CEILING(A7,5)
FLOOR(A7,5)
MROUND(A7,5)
ROUND(1234.5,-2)
ROUNDUP(-2.1,0)
ROUNDDOWN(-2.9,0)
CEILING(2.1,0.5)
CEILING(-2.1,0.5)
FLOOR(-2.9,0.5)
CEILING.MATH(-2.1)
FLOOR.MATH(-2.1)
MROUND(7.3,0.5)
MROUND(-7.3,-0.5)
TRUNC(8.999,2)
MOD(-7,3)
MOD(7,-3)
MOD(5.5,0.5)
MOD(10,0)
QUOTIENT(-7,2)
50%*2
0/0
LOG(8,2)
PRODUCT(D2:D7)
VLOOKUP("ROUND 4",A2:E7,4,0)
VLOOKUP("round*",A2:E7,4,FALSE)
VLOOKUP(6,{1,10;5,50;10,100},2)
VLOOKUP(0,{1,10;5,50;10,100},2)
VLOOKUP(6,{1,10;5,50;10,100},3)
MATCH(6,{10,5,1},-1)
XLOOKUP("zz",B2:B7,E2:E7,"none")
SUM(OFFSET(D1,1,0,3,1))
SUM(INDIRECT("D2:D4"))
SUM(FILTER(D2:D7,D2:D7>1))
SUM(SEQUENCE(2,3,5,2))
LET(x,5,x*2)
SUM(VSTACK(D2:D3,E2:E3))
TEXTBEFORE("6x4x0.5","x")
TEXTAFTER("6x4x0.5","x")
PROPER("o'neil STEEL bar")
SUBSTITUTE("a-b-c","-","/",2)
REPLACE("abcdef",2,3,"X")
TEXTJOIN(",",FALSE,F2:F4)
TEXT(1234.567,"#,##0.0")
TEXT(46053,"yyyy-mm-dd")
TEXT(-7,"0.0;(0.0)")
PV(0.05,10,-100)
RATE(10,-100,800)
IPMT(0.05/12,1,60,10000)
NORM.DIST(1,0,1,TRUE)
NORMSINV(0.975)
POISSON(2,3,FALSE)
T.INV.2T(0.05,9)
CHISQ.INV(0.95,3)
WEIBULL(2,1.5,3,TRUE)
CONFIDENCE(0.05,2.5,50)
D2>1.50
E2>0.50
IF(E2>0.50,"a","b")
E2=12.50
12.50=E2
E2<>12.50
E2>.5
COUNT(1.50)
ISNUMBER(1.50)
ISTEXT(1.50)
1.50&""
1.50=1.5
1E3=1000
E2>1E1
E2>1E-3
E7<1E6
ROUND(E2,1.0)
VLOOKUP(5.0,D2:E7,2,FALSE)
MATCH(7.0,D2:D7,0)
COUNTIF(D2:D7,7.0)
SUMPRODUCT((E2:E7>1.50)*1)
SUMPRODUCT((E2:E7>=3.250)*D2:D7)
IF(D2>=20.0,"y","n")
AND(E2>1.0,D2<100.0)
-1.50<0
2.50%
SUM({1.50,2.50})
MAX(IF(E2:E7>1.50,E2:E7,0.00))
LEFT(A2,2.0)
CHOOSE(2.0,"a","b")
COUNTIF(A20:A20,"<>")
COUNTIFS(A20:A20,"<>")
SUMIF(A20:A20,"<>",D2:D2)
SUMIFS(D2:D2,A20:A20,"<>")
AVERAGEIF(A20:A20,"<>",D2:D2)
SUMIFS(E2:E7,F2:F7,"<>")
COUNTIF(F2:F7,"<>")
COUNTIF(G1:G5,"<>")
COUNTIF(A1:F7,"<>")
A20<>""
D5<>""
LOOKUP(5,{1,2,3})
LOOKUP(1E+20,{1,2,3})
LOOKUP(9.99E+307,E2:E7)
LOOKUP(1E+100,D2:D7)
LOOKUP(2,{1,2,2,3},{"a","b","c","d"})
VLOOKUP(1E+100,{1,10;5,50;10,100},2,TRUE)
VLOOKUP(200,{1,10;5,50;10,100},2,TRUE)
VLOOKUP(2,{1,"a";2,"b";2,"c";3,"d"},2)
MATCH(1E+100,D2:D7)
MATCH(7,{1,5,10,50})
MATCH("zzz",C2:C7)
MATCH("zzz",A2:A7)
MATCH("c",{"a","b","d"})
MATCH("C",{"a","b","d"},1)
MATCH("b",{"a","b","d"},1)
MATCH("0",{"a","b","d"},1)
MATCH(4,{5,3,1},-1)
MATCH(6,{5,3,1},-1)
MATCH(0,{5,3,1},-1)
MATCH("b",{"d","c","a"},-1)
XMATCH("c",{"a","b","d"},-1)
XMATCH("c",{"a","b","d"},1)
XMATCH(6,D2:D7,-1)
XMATCH(6,D2:D7,1)
XLOOKUP(1E+100,D2:D7,E2:E7,"none",-1)
XLOOKUP(6,D2:D7,E2:E7,"none",1)
INDEX(D2:D7,MATCH(1E+306,D2:D7))
INDEX(A2:A7,MATCH(REPT("z",20),A2:A7))
SUM(D:D)
COUNTA(B:B)
SUMIFS(E:E,C:C,"bi-metal",D:D,">1")
VLOOKUP("round 4",A:E,4,FALSE)
SUMPRODUCT(MAX((C2:C7="bi-metal")*E2:E7))
LARGE(IF(C2:C7="bi-metal",E2:E7),2)
SUM(INDEX(D2:E7,0,1))
TRIM(MID(SUBSTITUTE(A5," ",REPT(" ",50)),51,50))
VALUE(MID(A2,FIND(" ",A2)+1,10))
CEILING(D2*3.25,12)
INT(240/(12.5+0.06))
TEXT(1.25,"[h]:mm")
TEXT(1234567.891,"#,##0")
`
  .trim()
  .split("\n");
const firstRow = 20;

/** No result of any formula: recalc then prints what each gives. */
const none = 0.123456789;

const file = (): string => {
  const cells = data.map((line, r) => {
    const row = line.map((v, c) => (v === null ? "" : cellXml(addressOf(r, c), v)));
    return `<row r="${r + 1}">${row.join("")}</row>`;
  });
  const below = formulas.map((f, i) => {
    const row = firstRow + i;
    return `<row r="${row}">${cellXml(`A${row}`, none, f)}</row>`;
  });
  const path = join(folder(), "native.xlsx");
  writeFileSync(path, zip(bookParts({ One: [...cells, ...below].join("") })));
  return path;
};

const byIronCalc = (): string[] => {
  const model = new Model("book", "en", "UTC", "en");
  data.forEach((line, r) => {
    line.forEach((v, c) => {
      if (v !== null) model.setUserInput(0, r + 1, c + 1, typeof v === "string" ? `'${v}` : String(v));
    });
  });
  formulas.forEach((f, i) => {
    model.setUserInput(0, firstRow + i, 1, `=${f}`);
  });
  model.evaluate();
  return formulas.map((_, i) => model.getFormattedCellValue(0, firstRow + i, 1));
};

/** IronCalc shows nine digits, and some results as percent. */
const same = (ours: string, shown: string): boolean => {
  const number = Number(ours);
  const other = Number(shown.replace(/[,%]/g, "")) * (shown.endsWith("%") ? 0.01 : 1);
  if (ours !== "" && Number.isFinite(number)) return Math.abs(number - other) <= 1e-6 * Math.max(1, Math.abs(number));
  return ours.toUpperCase() === shown.toUpperCase();
};

it(`gives what another engine gives, of ${formulas.length} native formulas`, () => {
  const { stdout } = recalc(file());
  const ours = new Map(
    stdout
      .split("\n")
      .filter((l) => l.includes("\t"))
      .map((l) => {
        const parts = l.split("\t");
        return [parts[0]!, parts[parts.length - 1]!.replace(/^is /, "").replace(/^"|"$/g, "")] as const;
      }),
  );
  const shown = byIronCalc();
  const departs = formulas.flatMap((f, i) => {
    const own = ours.get(`One!A${firstRow + i}`);
    return own !== undefined && same(own, shown[i]!) ? [] : [`${f}: ${String(own)}, not ${shown[i]!}`];
  });
  expect(departs).toEqual([]);
});
