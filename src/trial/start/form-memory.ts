import type { UnitSystem } from "../../sheets/kit/definition";
import type { Box } from "../kept/store";
import { type Key, KEYS, type Typed, type Water } from "./given";

/** The form as it was left. */
export interface FormState {
  readonly system: UnitSystem;
  readonly water: Water;
  readonly name: string;
  readonly typed: Typed;
}

const KEY = "fieldsum:start";

/** Keeps in the browser what was typed into the form; whatever cannot be read is as if it were not. */
export class FormMemory {
  constructor(
    private readonly box: Box | undefined,
    private readonly system: UnitSystem,
  ) {}

  read(): FormState {
    const none: FormState = { system: this.system, water: "hydrant", name: "", typed: {} };
    let plain: unknown;
    try {
      plain = JSON.parse(this.box?.getItem(KEY) ?? "null");
    } catch {
      return none;
    }
    if (typeof plain !== "object" || plain === null) return none;
    const { system, water, name, typed } = plain as Record<string, unknown>;
    if (typeof typed !== "object" || typed === null) return none;
    const texts = KEYS.flatMap((key): [Key, string][] => {
      const text = (typed as Record<string, unknown>)[key];
      return typeof text === "string" ? [[key, text]] : [];
    });
    return {
      system: system === "US" || system === "SI" ? system : none.system,
      water: water === "pump" ? "pump" : "hydrant",
      name: typeof name === "string" ? name : "",
      typed: Object.fromEntries(texts),
    };
  }

  write(state: FormState): void {
    try {
      this.box?.setItem(KEY, JSON.stringify(state));
    } catch {
      // Full or shut: the form works without.
    }
  }
}

/** The invented field of the workbooks, as a dealer would describe it. */
export function sampleField(system: UnitSystem, water: Water): Typed {
  const us = system === "US";
  const field: Typed = us
    ? { length: "630", width: "700", wind: "4", cropUse: "0.2" }
    : { length: "196", width: "210", wind: "6", cropUse: "5" };
  const ground: Typed = us
    ? { rise: "0", highest: "3", lowest: "10" }
    : { rise: "0", highest: "1", lowest: "3" };
  const hydrant: Typed = us
    ? { shut: "70", running: "60", flow: "130" }
    : { shut: "480", running: "415", flow: "30" };
  const pump: Typed = us
    ? {
        shutHead: "168",
        middleFlow: "120",
        middleHead: "150",
        mostFlow: "200",
        mostHead: "117",
        lift: "18",
        main: "520",
      }
    : {
        shutHead: "52",
        middleFlow: "27",
        middleHead: "47",
        mostFlow: "45",
        mostHead: "36.5",
        lift: "5.5",
        main: "160",
      };
  return {
    ...field,
    ...ground,
    soil: "silt loam",
    slope: "2",
    crop: "clover hay",
    ...(water === "pump" ? pump : hydrant),
  };
}
