import { materials } from "../../src/formulas/materials";

test("two lines of three heads, counted by hand, by length", () => {
  const rows = materials({
    lines: 2,
    segments: [10, 20, 20],
    tubing: [
      { size: "2", segments: 1 },
      { size: "1.5", segments: 2 },
    ],
    feeder: [{ size: "3", length: 40 }],
    regulated: true,
    spare: 5,
  });
  const of = (part: string, quantity: number, ...sizes: string[]) => ({ part, sizes, quantity });
  expect(rows).toEqual([
    of("tubing", 20, "2"), // 2 × 10
    of("tubing", 90, "1.5"), // 2 × (20 + 20 + 5)
    of("tubing", 80, "3"), // 2 × 40
    of("sprinkler head", 6),
    of("saddle", 2, "2"),
    of("saddle", 4, "1.5"),
    of("stand", 6),
    of("regulator", 6),
    of("reducing coupler", 2, "3", "2"),
    of("reducing coupler", 2, "2", "1.5"),
    of("end cap", 2, "1.5"),
    of("quick connect", 4, "3"),
    of("hydrant connection", 2),
    of("backflow device", 1),
    of("flag", 6),
  ]);
});
