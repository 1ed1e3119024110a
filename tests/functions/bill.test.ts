import { callError, callNumber, callTable } from "../support/host";

describe("BILL.MATERIALS", () => {
  const tubing = [["50 mm", 4]];
  const feeder = [["75 mm", 100]];
  const rowsOf = (...cells: unknown[]) =>
    Object.fromEntries(
      callTable("BILL.MATERIALS", ...cells)
        .slice(1)
        .map(([item, quantity]) => [item, quantity]),
    );

  test("blank options: spacing to head 1, no regulators, tubing by length, nothing spare", () => {
    const bill = callTable("BILL.MATERIALS", 1, 4, 40, tubing, feeder);
    expect(bill.slice(0, 3)).toEqual([
      ["item", "quantity", "unit"],
      ["tubing, 50 mm", 160, "ft"],
      ["tubing, 75 mm", 100, "ft"],
    ]);
    expect(bill.flat()).not.toContain("regulator");
    for (const blank of [null, "", 0]) {
      expect(
        callTable("BILL.MATERIALS", 1, 4, 40, tubing, feeder, "US", blank, blank, blank, blank),
      ).toEqual(bill);
    }
    expect(callTable("BILL.MATERIALS", 1, 4, 40, tubing, feeder, "US", 40, false)).toEqual(bill);
  });

  test("both unit systems count the same", () => {
    const us = callTable("BILL.MATERIALS", 3, 4, 40, tubing, feeder, "US", 20, true, 300, 5);
    const si = callTable(
      "BILL.MATERIALS",
      3,
      4,
      40 * 0.3048,
      tubing,
      [["75 mm", 100 * 0.3048]],
      "SI",
      20 * 0.3048,
      true,
      300 * 0.3048,
      5 * 0.3048,
    );
    expect(si.map(([, quantity]) => quantity)).toEqual(us.map(([, quantity]) => quantity));
    expect(us[1][0]).toBe("tubing, 50 mm, roll of 300 ft");
    expect(si[1][0]).toBe("tubing, 50 mm, roll of 91.4 m");
  });

  test("first and spare go into the tubing, lines multiply", () => {
    expect(rowsOf(3, 4, 40, tubing, feeder, "US", 15, null, null, 6)).toMatchObject({
      "tubing, 50 mm": 3 * (15 + 3 * 40 + 6),
      "tubing, 75 mm": 300,
      "sprinkler head": 12,
      flag: 12,
      "end cap, 50 mm": 3,
      "quick connect, 75 mm": 6,
      "backflow device": 1,
    });
  });

  test("a spacing per segment, a size listed twice in a row and one not laid", () => {
    const bill = rowsOf(
      1,
      4,
      [[10], [20], [30], [40]],
      [
        ["75 mm", 1],
        ["75 mm", 1],
        ["63 mm", 0],
        ["50 mm", 2],
      ],
      feeder,
    );
    expect(bill).toMatchObject({
      "tubing, 75 mm": 130,
      "tubing, 50 mm": 70,
      "saddle, 75 mm": 2,
      "saddle, 50 mm": 2,
      "reducing coupler, 75 mm to 50 mm": 1,
    });
    expect(Object.keys(bill).join()).not.toMatch(/63 mm/);
  });

  test("a feeder of two sizes has its own reducing coupler and two kinds of quick connect", () => {
    expect(
      rowsOf(2, 4, 40, tubing, [
        ["90 mm", 200],
        ["75 mm", 60],
      ]),
    ).toMatchObject({
      "tubing, 90 mm": 400,
      "tubing, 75 mm": 120,
      "reducing coupler, 90 mm to 75 mm": 2,
      "reducing coupler, 75 mm to 50 mm": 2,
      "quick connect, 90 mm": 2,
      "quick connect, 75 mm": 2,
    });
  });

  test("rolls are pooled: what is left of one begins the next line", () => {
    // 4 × 40 = 160 ft a line. Three lines, 480 ft: two rolls of 240 ft, the first ends inside line 2.
    expect(rowsOf(3, 4, 40, tubing, feeder, "US", null, null, 240)).toMatchObject({
      "tubing, 50 mm, roll of 240 ft": 2,
      "straight coupler, 50 mm": 1,
    });
    // A roll a line: none ends inside.
    const even = rowsOf(3, 4, 40, tubing, [["75 mm", 160]], "US", null, null, 160);
    expect(even).toMatchObject({
      "tubing, 50 mm, roll of 160 ft": 3,
      "tubing, 75 mm, roll of 160 ft": 3,
    });
    expect(Object.keys(even).join()).not.toMatch(/straight coupler/);
  });

  test("short rolls join several times in a run", () => {
    expect(rowsOf(1, 4, 40, tubing, feeder, "US", null, null, 50)).toMatchObject({
      "tubing, 50 mm, roll of 50 ft": 4,
      "straight coupler, 50 mm": 3,
      "tubing, 75 mm, roll of 50 ft": 2,
      "straight coupler, 75 mm": 1,
    });
  });

  test("text in cells stays text", () => {
    const bill = callTable("BILL.MATERIALS", 1, 1, 40, [["=1+1", 1]], [["1-1/2", 10]]);
    expect(bill[1][0]).toBe("tubing, =1+1");
    expect(bill[2][0]).toBe("tubing, 1-1/2");
    expect(rowsOf(1, 1, 40, [[50, 1]], [[" 75 ", 10]])).toMatchObject({
      "tubing, 50": 40,
      "tubing, 75": 10,
    });
  });

  test("a wrong argument is named", () => {
    const error = (...cells: unknown[]) => callError("BILL.MATERIALS", ...cells).message;
    expect(error(1, 5, 40, tubing, feeder)).toBe("tubing lists 4 segments for 5 heads");
    expect(error(0, 4, 40, tubing, feeder)).toBe(
      "lines must be a whole number from 1 to 500; got 0",
    );
    expect(error(1, 4, 40, null, feeder)).toBe(
      "tubing is missing: it must be two columns, size and number of segments",
    );
    expect(error(1, 4, 40, [["", 4]], feeder)).toBe("tubing row 1 size must be text; got a blank");
    expect(error(1, 4, 40, [["50 mm", 3.5]], feeder)).toBe(
      "tubing row 1 number of segments must be a whole number from 0 to 500; got 3.5",
    );
    expect(error(1, 4, 40, tubing, [["75 mm", 0]])).toBe(
      "feeder row 1 length must be above 0 ft; got 0",
    );
    expect(error(1, 4, 40, tubing, [[true, 5]])).toBe("feeder row 1 size must be text; got TRUE");
    expect(error(1, 4, 40, tubing, "75 mm", "SI")).toBe(
      'feeder must be two columns, size and length (m); got "75 mm"',
    );
    expect(error(1, 4, 40, tubing, feeder, "US", null, "maybe")).toBe(
      'regulated must be TRUE or FALSE; got "maybe"',
    );
    expect(error(1, 4, 40, tubing, feeder, "US", null, null, -300)).toBe(
      "roll must be above 0 ft; got -300",
    );
    expect(error(1, 4, 40, tubing, feeder, "US", null, null, null, -4)).toBe(
      "spare must be 0 ft or more; got -4",
    );
  });
});

describe("BILL.QUOTE", () => {
  const bill = [
    ["cap", 3, "each"],
    ["pipe", 10, "ft"],
  ];
  const prices = [
    ["cap", 2],
    ["pipe", 0.5],
  ];
  const amounts = (...cells: unknown[]) =>
    callTable("BILL.QUOTE", ...cells)
      .slice(1)
      .map((row) => row[4]);

  test("prices what BILL.MATERIALS gives", () => {
    const materials = callTable("BILL.MATERIALS", 1, 2, 40, [["50 mm", 2]], [["50 mm", 20]]);
    const each = materials.slice(1).map(([item]) => [item, 1]);
    // 100 ft, 2 heads, 2 saddles, 2 stands, 1 cap, 2 connects, 1 hydrant connection, 1 device, 2 flags
    expect(amounts(materials, each).slice(-1)).toEqual([113]);
  });

  test("blank markup and tax are none; the closing rows stay", () => {
    const plain = callTable("BILL.QUOTE", bill, prices);
    expect(plain.slice(-4)).toEqual([
      ["subtotal", "", "", "", 11],
      ["markup", "", "", "", 0],
      ["tax", "", "", "", 0],
      ["total", "", "", "", 11],
    ]);
    for (const blank of [null, "", 0]) {
      expect(callTable("BILL.QUOTE", bill, prices, blank, blank)).toEqual(plain);
    }
  });

  test("markup is on cost, tax is on both", () => {
    expect(amounts(bill, prices, 0.5, 0.1)).toEqual([6, 5, 11, 5.5, 1.65, 18.15]);
    expect(amounts(bill, prices, null, 0.1)).toEqual([6, 5, 11, 0, 1.1, 12.1]);
  });

  test("half a cent goes up, without the dust of binary fractions", () => {
    const one = (quantity: number, price: number) => amounts([["x", quantity]], [["x", price]])[0];
    expect(one(1, 1.005)).toBe(1.01);
    expect(one(3, 0.335)).toBe(1.01);
    expect(one(1.1, 1.1)).toBe(1.21);
    expect(one(1, 0.0049999)).toBe(0);
    expect(one(1, 8.345)).toBe(8.35);
    expect(one(100000000, 0.07)).toBe(7000000);
    expect(one(629.9999999999999, 1)).toBe(630);
    const tenths = new Array(10).fill(0).map((_, i) => [`item ${i}`, 1]);
    expect(
      amounts(
        tenths,
        tenths.map(([item]) => [item, 0.1]),
      ).slice(-1),
    ).toEqual([1]);
  });

  test("an item without a price is named, with all others", () => {
    expect(callError("BILL.QUOTE", bill, [["cap", 2]])).toMatchObject({
      code: "#N/A",
      message: 'no price for "pipe"',
    });
    for (const none of [0, "", null]) {
      expect(
        callError("BILL.QUOTE", bill, [
          ["cap", none],
          ["hose", 1],
        ]),
      ).toMatchObject({
        code: "#N/A",
        message: 'no price for "cap", "pipe"',
      });
    }
  });

  test("headers, blank rows, capitals and spaces do not matter; 1-1/2 is not 11/2", () => {
    expect(
      amounts(
        [
          ["Item", "Qty", "Unit"],
          ["CAP", 3, "each"],
          ["", null, ""],
          [0, 0, 0],
          ["pipe ", 10, ""],
        ],
        [
          ["item", "Price"],
          ["cap", 2],
          ["Pipe", 0.5],
        ],
      ).slice(-1),
    ).toEqual([11]);
    expect(callError("BILL.QUOTE", [["1-1/2", 1]], [["11/2", 1]]).code).toBe("#N/A");
    const [, row] = callTable("BILL.QUOTE", [["=CAP()", 1]], [["=cap()", 2]]);
    expect(row).toEqual(["=CAP()", 1, "", 2, 2]);
  });

  test("a quantity of 0 costs nothing", () => {
    expect(amounts([["cap", 0, "each"]], prices)[0]).toBe(0);
  });

  test("a wrong argument is named", () => {
    const error = (...cells: unknown[]) => callError("BILL.QUOTE", ...cells).message;
    expect(error(null, prices)).toBe(
      "bill is missing: it must be two or three columns, item, quantity and unit",
    );
    expect(error([["cap", 1, "each", 4]], prices)).toBe(
      "bill must be two or three columns, item, quantity and unit; got a range of 1 row and 4 columns",
    );
    expect(error([["cap", "many", "each"]], prices)).toBe(
      'bill row 1 quantity must be a number, 0 or more; got "many"',
    );
    expect(error([["cap", -1]], prices)).toBe("bill row 1 quantity must be 0 or more; got -1");
    expect(error([["", 4]], prices)).toBe("bill row 1 item must be text; got a blank");
    expect(
      error(bill, [
        ["cap", 2],
        ["Cap", 3],
      ]),
    ).toBe('prices lists "Cap" twice');
    expect(error(bill, [["cap", "dear"]])).toBe(
      'prices row 1 price must be a number, above 0; got "dear"',
    );
    expect(error(bill, [["cap", -2]])).toBe("prices row 1 price must be above 0; got -2");
    expect(error(bill, prices, -0.1)).toBe("markup must be 0 or more; got -0.1");
    expect(error(bill, prices, 0, "some")).toBe('tax must be a number, 0 or more; got "some"');
    expect(error([["cap", 1e12]], [["cap", 1e6]])).toBe(
      "an amount is too large to give to the cent",
    );
  });
});

describe("BILL.ROLLS", () => {
  test("blank waste is none, and nothing takes no roll", () => {
    for (const blank of [null, "", 0]) expect(callNumber("BILL.ROLLS", 900, 300, blank)).toBe(3);
    expect(callNumber("BILL.ROLLS", 900, 300, 0.001)).toBe(4);
    expect(callNumber("BILL.ROLLS", 0, 300)).toBe(0);
  });

  test("a wrong argument is named", () => {
    expect(callError("BILL.ROLLS", -1, 300).message).toBe("length must be 0 or more; got -1");
    expect(callError("BILL.ROLLS", 900, 0).message).toBe("roll must be above 0; got 0");
    expect(callError("BILL.ROLLS", 900, 300, 5).message).toBe("waste must be from 0 to 1; got 5");
  });
});
