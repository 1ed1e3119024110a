import type { FunctionHelp } from "../../src/reference";

/** Help of a function as far as a test needs it. */
export function helpFor(
  name: string,
  args: readonly string[],
  more: Partial<FunctionHelp> = {},
): FunctionHelp {
  return {
    id: name.replace(/\./g, "_"),
    name,
    family: name.split(".")[0],
    short: "",
    arguments: args.map((argument) => ({
      name: argument.replace(/[[\]]/g, ""),
      help: "",
      optional: argument.startsWith("["),
      range: false,
    })),
    returns: "",
    spills: false,
    remarks: "",
    source: "",
    errors: "",
    cautions: [],
    task: "",
    example: "",
    page: "",
    ...more,
  };
}

export const frictionHelp = helpFor(
  "PIPE.FRICTION",
  ["flow", "inside", "length", "[units]", "[friction]"],
  {
    short: "Pressure lost to friction in one pipe segment.",
    task: "how much pressure does a pipe lose?",
  },
);
