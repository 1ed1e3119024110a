import type { OpenWorkbook } from "../../../build/asked-workbook";
import { readyMadeSheets } from "../../../src/sheets";
import type { UnitSystem } from "../../../src/sheets/kit/definition";
import { inputsOf } from "../../../src/trial/kept/inputs";
import { filledIn } from "../../../src/trial/start/filled-in";
import type { Typed, Water } from "../../../src/trial/start/given";
import type { Plan } from "../../../src/trial/start/propose";
import { said } from "../../../src/trial/start/say";
import { loadWorkbooks } from "../../support/open-workbook";
import { bookIn, proposed } from "./asked";

const { openWorkbook } = loadWorkbooks();

const books = new Map<string, OpenWorkbook>();

/** The workbook in the grid's own engine, which the proposal does not use, filled in with the plan. */
async function opened(id: string, system: UnitSystem, plan: Plan): Promise<OpenWorkbook> {
  const [from] = readyMadeSheets;
  const to = readyMadeSheets.find((sheet) => sheet.id === id) ?? from;
  const contents = filledIn(plan, { system, from, to, book: bookIn(system) });
  const key = `${id} ${system}`;
  const book = books.get(key) ?? (await openWorkbook(id, system));
  books.set(key, book);
  const places = new Map(inputsOf(to.pages(system)).map((input) => [input.key, input.called]));
  expect([...contents.keys()].filter((at) => !places.has(at))).toEqual([]);
  await book.set(
    Object.fromEntries([...contents].map(([at, content]) => [at, content as number | string])),
  );
  return book;
}

function planOf(system: UnitSystem, water: Water, typed: Typed): Plan {
  const { plan, obstacles } = proposed(system, water, typed);
  if (plan === undefined) throw new Error(JSON.stringify(obstacles));
  return plan;
}

const fields: readonly (readonly [string, UnitSystem, Water, Typed])[] = [
  ["the sample field", "US", "hydrant", {}],
  ["the sample field", "SI", "hydrant", {}],
  ["a small field", "US", "hydrant", { length: "200", width: "150", flow: "40" }],
  ["a small field", "SI", "hydrant", { length: "60", width: "45", flow: "9" }],
  ["too long for one line", "US", "hydrant", { length: "1400", flow: "300", running: "65" }],
  ["too long for one line", "SI", "hydrant", { length: "420", flow: "75", running: "450" }],
  ["low pressure", "US", "hydrant", { shut: "60", running: "52" }],
  ["high wind", "US", "hydrant", { wind: "12" }],
  ["high wind", "SI", "hydrant", { wind: "20" }],
  ["sandy soil", "US", "hydrant", { soil: "coarse sand", flow: "260", running: "65" }],
  ["clay with a smaller nozzle", "US", "hydrant", { soil: "clay", ...smallNozzle() }],
  ["uphill, on a slope", "US", "hydrant", { rise: "8", highest: "10", lowest: "4" }],
  ["downhill", "SI", "hydrant", { rise: "-2.5", highest: "1", lowest: "3" }],
  ["from a pump", "US", "pump", {}],
  ["from a pump", "SI", "pump", {}],
];

function smallNozzle(): Typed {
  return { flow1: "2.4", flow2: "2.7", flow3: "3", dayHours: "20" };
}

describe.each(fields)("%s, %s, %s", (_, system, water, typed) => {
  const plan = planOf(system, water, typed);

  test("what is proposed is what the workbook says once it is opened filled in, and passes", async () => {
    const book = await opened("line-layout", system, plan);
    const values = book.values();
    expect(plan.rows.filter(({ cell }) => cell !== undefined).length).toBeGreaterThan(12);
    for (const { cell, number } of plan.rows) {
      if (cell === undefined) continue;
      expect([cell, values[cell]]).toEqual([cell, expect.closeTo(number ?? NaN, 8)]);
    }
    expect(book.errors()).toEqual([]);
    expect(book.checks().filter(({ ok }) => !ok)).toEqual([]);
  });
});

test.each(["quote", "spacing-what-if", "season"])(
  "the plan stands in %s too, with what that asks beside it",
  async (id) => {
    const plan = planOf("US", "hydrant", { soil: "coarse sand", flow: "260", running: "65" });
    const book = await opened(id, "US", plan);
    const values = book.values();
    for (const name of ["Heads", "Spacing", "Move", "Texture", "Wetted", "FieldName", "Lowest"])
      if (name in values) expect([name, values[name]]).toEqual([name, plan.inputs.get(name)]);
    expect(values.Heads).toBe(plan.inputs.get("Heads"));
    if (id === "season") {
      expect(values.Positions).toBe(plan.inputs.get("Positions"));
      expect(values.RotationDays).toBe(plan.beside.get("RotationDays"));
      expect(values.Crop).toBe("clover hay");
    }
  },
);

test("the line is shorter than the largest that one line may be, and the reason for the cut is said", () => {
  const plan = planOf("US", "hydrant", { length: "1400", flow: "300", running: "65" });
  const heads = plan.rows.find(({ cell }) => cell === "Heads");
  expect(heads?.why.map(said).join(" ")).toContain("strips, each with its own row of positions");
  expect(heads?.why.map(said).join(" ")).toMatch(/limit is|are needed|take/);
});

test("more wind: narrower moves, more positions", () => {
  const calm = planOf("US", "hydrant", {});
  const windy = planOf("US", "hydrant", { wind: "12" });
  expect(Number(windy.inputs.get("Move"))).toBeLessThanOrEqual(0.45 * 92);
  expect(Number(windy.inputs.get("Positions"))).toBeGreaterThan(
    Number(calm.inputs.get("Positions")),
  );
});

describe("where no plan fits, the limit to move is said, and no number is proposed", () => {
  const obstacles = (typed: Typed) => {
    const { plan, obstacles: found = [] } = proposed("US", "hydrant", typed);
    expect(plan).toBeUndefined();
    return found.map(({ check, says, move }) => `${check}: ${said(says)} ${move ?? ""}`);
  };

  test("too little pressure", () => {
    const found = obstacles({ shut: "45", running: "38" });
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(/^Pump and lines: With \d+ lines? running there are \d/);
    expect(found[0]).toContain("Move: the water first");
  });

  test("too little water", () => {
    const [found] = obstacles({ flow: "60" });
    expect(found).toMatch(/take \d[\d.]* gpm together; there are 60.0 gpm/);
  });

  test("a soil that does not take the rate", () => {
    const [found] = obstacles({ soil: "clay", wind: "12", slope: "10" });
    expect(found).toContain("Rate and the soil");
    expect(found).toContain("smaller nozzle");
  });

  test("the pressure with the valve shut above what any wall bears: never a plan, whatever runs", () => {
    const found = obstacles({ shut: "400", running: "60" });
    expect(found.join("\n")).toContain("Static pressure and the rating");
    expect(found.join("\n")).toContain("pressure-reducing valve");
  });

  test("a field beyond the workbook's room", () => {
    expect(obstacles({ length: "5000", width: "5000", flow: "900" })[0]).toContain(
      "several fields",
    );
  });
});

test("the lowest point counts: a corner 40 ft deeper puts its column of water on the pipe", () => {
  const at = (lowest: string) => {
    const { inputs } = planOf("US", "hydrant", { lowest });
    const said = bookIn("US").ask(inputs, { shut: "=StaticPressure", rated: "=PipeRating" });
    return { shut: said.number("shut"), rated: said.number("rated") };
  };
  const level = at("0");
  const deep = at("40");
  // 2.31 ft of water to a psi: common practice, no source.
  expect(deep.shut - level.shut).toBeCloseTo(40 / 2.31, 1);
  expect(deep.rated).toBeGreaterThanOrEqual(level.rated);
});
