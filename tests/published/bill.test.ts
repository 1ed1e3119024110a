import { callNumber, callTable } from "../support/host";
import { published } from "../support/published";

published(
  {
    source: "A bill counted by hand",
    where:
      "two lines of 14 heads, two sizes, 300 ft rolls, regulators; the counting rules are in the function's help",
    seen: "common practice, no source",
  },
  () => {
    // A line: 22.5 + 6 × 45 = 292.5 ft of 63 mm, 7 × 45 + 4 = 319 ft of 50 mm; 320 ft of 75 mm feed it.
    // 63 mm: 585 ft, 2 rolls; the first ends inside the second run. 50 mm: 638 ft, 3 rolls, two of
    // them ending inside a run. 75 mm: 640 ft, 3 rolls, the same.
    expect(
      callTable(
        "BILL.MATERIALS",
        2,
        14,
        45,
        [
          ["63 mm SDR 17", 7],
          ["50 mm SDR 17", 7],
        ],
        [["75 mm SDR 17", 320]],
        "US",
        22.5,
        true,
        300,
        4,
      ),
    ).toEqual([
      ["item", "quantity", "unit"],
      ["tubing, 63 mm SDR 17, roll of 300 ft", 2, "roll"],
      ["tubing, 50 mm SDR 17, roll of 300 ft", 3, "roll"],
      ["tubing, 75 mm SDR 17, roll of 300 ft", 3, "roll"],
      ["straight coupler, 63 mm SDR 17", 1, "each"],
      ["straight coupler, 50 mm SDR 17", 2, "each"],
      ["straight coupler, 75 mm SDR 17", 2, "each"],
      ["sprinkler head", 28, "each"],
      ["saddle, 63 mm SDR 17", 14, "each"],
      ["saddle, 50 mm SDR 17", 14, "each"],
      ["stand", 28, "each"],
      ["regulator", 28, "each"],
      ["reducing coupler, 75 mm SDR 17 to 63 mm SDR 17", 2, "each"],
      ["reducing coupler, 63 mm SDR 17 to 50 mm SDR 17", 2, "each"],
      ["end cap, 50 mm SDR 17", 2, "each"],
      ["quick connect, 75 mm SDR 17", 4, "each"],
      ["hydrant connection with valve, gauge and screen", 2, "each"],
      ["backflow device", 1, "each"],
      ["flag", 28, "each"],
    ]);
  },
);

published(
  {
    source: "A bill counted by hand",
    where: "one metric line of 5 heads, one size throughout, tubing by length",
    seen: "common practice, no source",
  },
  () => {
    expect(callTable("BILL.MATERIALS", 1, 5, 14, [["50 mm", 5]], [["50 mm", 30]], "SI")).toEqual([
      ["item", "quantity", "unit"],
      ["tubing, 50 mm", 100, "m"],
      ["sprinkler head", 5, "each"],
      ["saddle, 50 mm", 5, "each"],
      ["stand", 5, "each"],
      ["end cap, 50 mm", 1, "each"],
      ["quick connect, 50 mm", 2, "each"],
      ["hydrant connection with valve, gauge and screen", 1, "each"],
      ["backflow device", 1, "each"],
      ["flag", 5, "each"],
    ]);
  },
);

published(
  {
    source: "A bill priced by hand",
    where:
      "630 × 0.85 + 28 × 9.50 + 3 × 1.335 = 535.50 + 266.00 + 4.01 (half a cent up); markup 15 %, tax 6 %",
    seen: "closed form",
  },
  () => {
    const table = callTable(
      "BILL.QUOTE",
      [
        ["item", "quantity", "unit"],
        ["tubing, 50 mm", 630, "ft"],
        ["sprinkler head", 28, "each"],
        ["end cap", 3, "each"],
      ],
      [
        ["end cap", 1.335],
        ["sprinkler head", 9.5],
        ["tubing, 50 mm", 0.85],
      ],
      0.15,
      0.06,
    );
    expect(table).toEqual([
      ["item", "quantity", "unit", "price", "amount"],
      ["tubing, 50 mm", 630, "ft", 0.85, 535.5],
      ["sprinkler head", 28, "each", 9.5, 266],
      ["end cap", 3, "each", 1.335, 4.01],
      ["subtotal", "", "", "", 805.51],
      ["markup", "", "", "", 120.83], // 120.8265
      ["tax", "", "", "", 55.58], // 926.34 × 0.06 = 55.5804
      ["total", "", "", "", 981.92],
    ]);
  },
);

published(
  {
    source: "Rolls counted by hand",
    where: "1260 ft and 5 % are 1323 ft, five rolls of 300 ft; 0.3 is three rolls of 0.1 exactly",
    seen: "closed form",
  },
  () => {
    expect(callNumber("BILL.ROLLS", 1260, 300, 0.05)).toBe(5);
    expect(callNumber("BILL.ROLLS", 1260, 300)).toBe(5);
    expect(callNumber("BILL.ROLLS", 1200, 300)).toBe(4);
    expect(callNumber("BILL.ROLLS", 1201, 300)).toBe(5);
    expect(callNumber("BILL.ROLLS", 0.3, 0.1)).toBe(3);
  },
);
