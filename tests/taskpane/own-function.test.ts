import {
  ownFormula,
  type OwnFunction,
  ownUse,
  readOwnFunction,
} from "../../src/taskpane/own-function";
import { frictionHelp } from "../support/help";

const myLoss: OwnFunction = {
  name: "MYLOSS",
  description: "63 mm tubing, C 140",
  calls: "PIPE.FRICTION",
  fixed: [undefined, "2.165", undefined, '"US"', "140"],
};

test("a name is a LAMBDA of what is left open around one call", () => {
  expect(ownFormula(myLoss, frictionHelp, "IRRIG")).toBe(
    '=LAMBDA(flow,length,IRRIG.PIPE.FRICTION(flow,2.165,length,"US",140))',
  );
  expect(ownUse(myLoss, frictionHelp)).toBe("MYLOSS(flow, length)");
});

test("optional arguments left out at the end leave the call", () => {
  const own = { ...myLoss, fixed: [undefined, "2.165", "100", "", ""] };
  expect(ownFormula(own, frictionHelp, "FIELD")).toBe(
    "=LAMBDA(flow,FIELD.PIPE.FRICTION(flow,2.165,100))",
  );
});

test.each([
  ["as typed", '=LAMBDA(flow,length,IRRIG.PIPE.FRICTION(flow,2.165,length,"US",140))'],
  ["with blanks", '= LAMBDA(flow, length, IRRIG.PIPE.FRICTION(flow, 2.165, length, "US", 140))'],
  [
    "as the file spells it",
    '=_xlfn.LAMBDA(_xlpm.flow,_xlpm.length,_xldudf_IRRIG_PIPE_FRICTION(_xlpm.flow,2.165,_xlpm.length,"US",140))',
  ],
])("it is read back %s", (_, formula) => {
  expect(
    readOwnFunction("MYLOSS", "63 mm tubing, C 140", formula, [frictionHelp], "IRRIG"),
  ).toEqual(myLoss);
});

test("a namespace of another build is read back too", () => {
  const formula = ownFormula(myLoss, frictionHelp, "FIELD");
  expect(readOwnFunction("MYLOSS", myLoss.description, formula, [frictionHelp], "FIELD")).toEqual(
    myLoss,
  );
});

test.each([
  "=Sheet1!$A$1",
  "=LAMBDA(x,x+1)",
  "=LAMBDA(x,IRRIG.NO.SUCH(x))",
  "=5",
  "=LAMBDA(x,IRRIG.PIPE.FRICTION(x,1,1)+1)",
])("%s is none of ours", (formula) => {
  expect(readOwnFunction("X", "", formula, [frictionHelp], "IRRIG")).toBeUndefined();
});
