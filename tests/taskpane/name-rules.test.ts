import { nameFault } from "../../src/taskpane/name-rules";

const fault = (name: string) => nameFault(name, ["Units", "MyLoss"], "IRRIG");

test.each([
  "LOSS",
  "my_loss",
  "Loss.63mm",
  "_x",
  "\\x",
  "Verlust_ä",
  "a".repeat(255),
  "XFE1",
  "A1048577",
  "RC_1",
  "ROW",
])("%s is a name", (name) => expect(fault(name)).toBeUndefined());

test.each([
  ["", "empty"],
  ["a".repeat(256), "too long"],
  ["1st", "first character"],
  [".x", "first character"],
  ["my loss", "characters"],
  ["a-b", "characters"],
  ['a"b', "characters"],
  ["<b>", "first character"],
  ["A1", "cell address"],
  ["xfd1048576", "cell address"],
  ["R", "cell address"],
  ["c", "cell address"],
  ["R1C1", "cell address"],
  ["RC", "cell address"],
  ["true", "true or false"],
  ["False", "true or false"],
  ["units", "taken"],
  ["MYLOSS", "taken"],
  ["irrig.MINE", "namespace"],
])("%s is refused: %s", (name, expected) => expect(fault(name)).toBe(expected));
