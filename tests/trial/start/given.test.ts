import { readGiven, type Typed } from "../../../src/trial/start/given";
import { said } from "../../../src/trial/start/say";
import { typedIn } from "./asked";

function faults(other: Typed, water: "hydrant" | "pump" = "hydrant"): Record<string, string> {
  const read = readGiven(typedIn("US", water, other), { system: "US", water, name: "" });
  return Object.fromEntries([...(read.faults ?? [])].map(([key, fault]) => [key, said(fault)]));
}

test("what is right has no fault, and the other kind of water is not asked for", () => {
  expect(faults({})).toEqual({});
  expect(faults({ shutHead: "nonsense", lift: "" })).toEqual({});
  expect(faults({}, "pump")).toEqual({});
  expect(faults({ shut: "" }, "pump")).toEqual({});
});

test("each wrong or blank field says so in words, by its name", () => {
  expect(faults({ length: "x" })).toEqual({
    length: 'Length along the lines: "x" is not a number. One from 20 to 20000 is due.',
  });
  expect(faults({ width: " " }).width).toBe(
    "Width across the lines: blank. A number from 5 to 20000 is due.",
  );
  expect(faults({ wind: "-3" }).wind).toBe("Wind: -3 is not from 0 to 200.");
  expect(faults({ soil: "" }).soil).toBe("Soil: choose one.");
  expect(faults({ crop: "moss" }).crop).toBe("Crop: choose one.");
  expect(faults({ flow: "1,500" }).flow).toContain("can be read in two ways");
});

test("a pressure that rises while water runs, or heights that cannot be, are refused", () => {
  expect(faults({ running: "80" }).running).toContain("cannot be above");
  expect(faults({ rise: "-20", highest: "3", lowest: "10" }).highest).toContain("wrong");
  expect(faults({ mostFlow: "100" }, "pump").mostFlow).toContain("above the flow");
  expect(faults({ mostHead: "151" }, "pump").mostHead).toContain("second point");
  expect(faults({ middleHead: "170" }, "pump").middleHead).toContain("no flow");
});
