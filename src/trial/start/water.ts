import type { AskedBook, Inputs } from "./asked-book";
import type { Given } from "./given";
import { rounded } from "./layout";

/** So little beyond the flow that was measured, a hydrant is taken to give nothing more. */
const BEYOND = 1.02;

/**
 * The water as the workbook takes it, a pump's curve of six points. A hydrant under pressure is one
 * whose head falls in a straight line from the pressure with the valve shut to that with the water
 * running: a real one lies above the line in between. Beyond the flow that was measured nothing is
 * known, so the head falls to nothing there. Points in between are PUMP.CURVE's.
 */
export function waterInputs(book: AskedBook, given: Given): Inputs {
  return given.water === "pump" ? pumpInputs(book, given) : hydrantInputs(book, given);
}

type Point = readonly [flow: number, head: number];

function pumpInputs(book: AskedBook, given: Given): Inputs {
  const { middleFlow: middle, mostFlow: most } = given;
  const third = (most - middle) / 3;
  const points: Point[] = [
    [0, given.shutHead],
    [middle, given.middleHead],
    [most, given.mostHead],
  ];
  const flows = [0, middle / 2, middle, middle + third, middle + 2 * third, most];
  return new Map([...curveOf(along(book, points, flows)), ["Lift", given.lift]]);
}

function hydrantInputs(book: AskedBook, given: Given): Inputs {
  const { flow } = given;
  const points: Point[] = [
    [0, headOf(book, given.shut, given)],
    [flow, headOf(book, given.running, given)],
  ];
  const flows = [0, flow / 4, flow / 2, (flow * 3) / 4, flow];
  // A hydrant's gauge is read behind pump, filter and suction.
  const behind = ["Lift", "SuctionLift", "SuctionLoss", "FilterLoss"];
  return new Map([
    ...curveOf([...along(book, points, flows), [flow * BEYOND, 0]]),
    ...behind.map((called): [string, number] => [called, 0]),
  ]);
}

function along(book: AskedBook, points: readonly Point[], flows: readonly number[]): Point[] {
  const curve = points.map((point) => point.join(",")).join(";");
  const heads = book.ask(
    new Map(),
    Object.fromEntries(
      flows.map((flow, index) => [String(index), `=IRRIG.PUMP.CURVE({${curve}}, ${flow})`]),
    ),
  );
  return flows.map((flow, index) => [flow, heads.number(String(index))]);
}

function curveOf(points: readonly Point[]): [string, number][] {
  return points.flatMap(([flow, head], index): [string, number][] => [
    [`Pump curve, flow, row ${index + 1}`, rounded(flow)],
    [`Pump curve, head, row ${index + 1}`, rounded(head)],
  ]);
}

function headOf(book: AskedBook, pressure: number, { system }: Given): number {
  const [from, to] = system === "US" ? ["psi", "ft of water"] : ["kPa", "m of water"];
  return book
    .ask(new Map(), { head: `=IRRIG.UNIT.CONVERT(${pressure}, "${from}", "${to}")` })
    .number("head");
}
