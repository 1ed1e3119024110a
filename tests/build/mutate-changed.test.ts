import { linesOf } from "../../build/mutate-changed";

test("finds the changed lines of a difference without context", () => {
  const difference = [
    "diff --git a/src/a.ts b/src/a.ts",
    "--- a/src/a.ts",
    "+++ b/src/a.ts",
    "@@ -3 +3 @@ export",
    "-old",
    "+new",
    "@@ -10,2 +10,0 @@",
    "-gone",
    "-gone",
    "@@ -20,0 +18,3 @@",
    "+1",
    "+2",
    "+3",
    "--- /dev/null",
    "+++ b/src/b.ts",
    "@@ -0,0 +1,2 @@",
    "+1",
    "+2",
  ].join("\n");
  expect(linesOf(difference)).toEqual([
    { file: "src/a.ts", from: 3, count: 1 },
    { file: "src/a.ts", from: 18, count: 3 },
    { file: "src/b.ts", from: 1, count: 2 },
  ]);
});
