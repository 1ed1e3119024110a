import { checkSheet, isErrorValue, readableCall } from "../../src/taskpane/sheet-check";
import { fromHost } from "../../src/formula-text/dialect";

const same = (formula: string) => formula;

test("cells that use the functions, their errors, and checks that are not OK", () => {
  const cells = [
    { address: "A1", formula: "=SUM(B1:B3)", value: "#VALUE!" },
    { address: "A2", formula: "=IRRIG.PIPE.FRICTION(-1,2,3)", value: "#VALUE!" },
    { address: "A3", formula: "=IRRIG.PIPE.FRICTION(1,2,3)", value: 0.1 },
    { address: "A4", formula: "=IRRIG.CHECK.RATE(0.5,0.3)", value: "The rate is too high" },
    { address: "A5", formula: "=IRRIG.CHECK.RATE(0.2,0.3)", value: "OK" },
    { address: "A6", formula: '="IRRIG.CHECK.RATE(1,2)"', value: "IRRIG.CHECK.RATE(1,2)" },
    { address: "A7", formula: "=IRRIG.CHECK.RATE(A1,2)", value: "#N/A" },
  ];
  const found = checkSheet(cells, same);
  expect(found.using).toBe(5);
  expect(found.errors.map(({ address }) => address)).toEqual(["A2", "A7"]);
  expect(found.warnings).toMatchObject([{ address: "A4", sentence: "The rate is too high" }]);
});

test("another namespace", () => {
  const cells = [{ address: "A1", formula: "=FIELD.PIPE.FRICTION(1,2,3)", value: "#N/A" }];
  expect(checkSheet(cells, same).using).toBe(0);
  expect(checkSheet(cells, (formula) => fromHost(formula, "FIELD")).errors).toHaveLength(1);
});

test("error values and text that only looks like one", () => {
  for (const value of ["#VALUE!", "#N/A", "#NAME?", "#SPILL!", "#CALC!", "#BUSY!"])
    expect(isErrorValue(value)).toBe(true);
  for (const value of ["#1 riser", "#", 5, null, "see #N/A"])
    expect(isErrorValue(value)).toBe(false);
});

test("one call with literals, references and names can be worked out elsewhere", () => {
  expect(readableCall("=IRRIG.PIPE.FRICTION(50,$B$4,'My sheet'!C5:C9,Units,)")).toEqual({
    name: "PIPE.FRICTION",
    arguments: [
      { kind: "literal", text: "50" },
      { kind: "reference", text: "$B$4" },
      { kind: "reference", text: "'My sheet'!C5:C9" },
      { kind: "reference", text: "Units" },
      { kind: "omitted" },
    ],
  });
  expect(readableCall("=IRRIG.SPRINKLER.K({35,3.7;45,4.2})")?.arguments).toEqual([
    { kind: "literal", text: "{35,3.7;45,4.2}" },
  ]);
  expect(
    readableCall("=IRRIG.PIPE.FRICTION(TRUE,-1.5,A1#)")?.arguments.map(({ kind }) => kind),
  ).toEqual(["literal", "literal", "reference"]);
});

test.each([
  "=IRRIG.PIPE.FRICTION(A1+1,2,3)",
  "=IRRIG.PIPE.FRICTION(1,2,3)*2",
  "=SUM(A1)",
  "=A1",
  "=IRRIG.PIPE.FRICTION(1,2",
])("%s is left to the spreadsheet", (formula) => expect(readableCall(formula)).toBeUndefined());
