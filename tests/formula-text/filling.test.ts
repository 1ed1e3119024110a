import { mayFillCells } from "../../src/formula-text/filling";

const names = { ranges: new Set(["INSIDES"]), functions: new Set(["MYLOSS"]) };

test.each([
  "=IRRIG.SET.TIME(1,2)",
  '=IF(B4="","",IRRIG.SET.TIME(1,2))',
  "=MyLoss(1,2)",
  "=INDEX(Insides,1)",
  '="at "&INDEX($B$2:$B$9,1)&" ft"',
  "=SUM(1,INDEX(Insides,1)*2)",
  "=Insides",
  "=Insides*2",
  "=B2:B9",
  "='Other page'!B2:B9",
  "=B2#",
  "={1,2}",
  "=IF(B2:B9>1,1,0)",
  "=SUM(IF(B2:B9>1,1,0))",
  "=SUM(B2:B9*2)",
  "=COUNTIF(B2:B9,Insides)",
  "=MATCH(B2:B9,C2:C9,0)",
  "=LET(x,1,x)",
  "=FILTER(B2:B9,C2:C9)",
  "=ISNUMBER(B2:B9)",
])("%s may fill cells", (formula) => expect(mayFillCells(formula, names)).toBe(true));

test.each([
  "=B2",
  "=B2*C2",
  "=Spacing*2",
  "=SUM(B2:B9)",
  "=SUM('Other page'!B2:B9, Insides)",
  "=SUM(INDEX(Insides,1))",
  "=SUMPRODUCT(B2:B9*C2:C9)",
  "=SUMPRODUCT(B2:B9, C2:C9)",
  "=MATCH(B2, C2:C9, 0)",
  "=COUNTIF(B2:B9, B2)",
  "=MINIFS(B2:B9, C2:C9, D2)",
  '="B2:B9 {1} INDEX("',
  "=FORMULATEXT(B2)",
  '=IF(AND(B2>1, (C2)>2), "OK", ROUND(MAX({1,2}), 1))',
])("%s fills one cell", (formula) => expect(mayFillCells(formula, names)).toBe(false));
