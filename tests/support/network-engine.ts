import { NodeProperty, LinkProperty, Project, Workspace } from "epanet-js";
import type { DischargeLaw } from "../../src/formulas/discharge-law";
import type { FrictionLaw } from "../../src/formulas/friction";
import { WATER_WEIGHT } from "../../src/ground/constants";

/**
 * A line of heads built and solved in an independent pipe-network engine (EPANET 2.3, public domain,
 * compiled to WebAssembly), with its constants stated so that a comparison can match them.
 */
export interface NetworkLine {
  /** Head at the inlet, ft above its level. */
  readonly inletHead: number;
  /** ft */
  readonly segmentLength: readonly number[];
  /** in */
  readonly bore: readonly number[];
  /** ft above the inlet */
  readonly elevation: readonly number[];
  /** q = K p^x, gpm and psi */
  readonly coefficient: number;
  readonly exponent: number;
  readonly friction: { readonly c: number } | { readonly roughnessFeet: number };
}

export interface NetworkAnswer {
  /** Pressure head at each head, ft. */
  readonly pressureHead: number[];
  /** gpm */
  readonly headFlow: number[];
  readonly segmentFlow: number[];
}

export interface Engine {
  solve(line: NetworkLine): NetworkAnswer;
  /** Runs a whole network text; `read` is asked while it is open and solved. */
  run<T>(network: string, read: (project: Project) => T): T;
}

export async function networkEngine(): Promise<Engine> {
  const workspace = new Workspace();
  await workspace.loadModule();
  const run = <T>(network: string, read: (project: Project) => T): T => {
    const project = new Project(workspace);
    workspace.writeFile("line.inp", network);
    project.open("line.inp", "line.rpt", "line.out");
    try {
      project.solveH();
      return read(project);
    } finally {
      project.close();
    }
  };
  return {
    run,
    solve: (line) =>
      run(networkText(line), (project) => {
        const each = <T>(ask: (i: number) => T) => line.bore.map((_, i) => ask(i + 1));
        return {
          pressureHead: each(
            (i) =>
              project.getNodeValue(project.getNodeIndex(`J${i}`), NodeProperty.Head) -
              line.elevation[i - 1],
          ),
          headFlow: each((i) =>
            project.getNodeValue(project.getNodeIndex(`J${i}`), NodeProperty.Demand),
          ),
          segmentFlow: each((i) =>
            project.getLinkValue(project.getLinkIndex(`P${i}`), LinkProperty.Flow),
          ),
        };
      }),
  };
}

export function optionsText(exponent: number, headLoss: "H-W" | "D-W"): string {
  return `[OPTIONS]
Units GPM
Headloss ${headLoss}
Emitter Exponent ${exponent}
Viscosity 1
Specific Gravity 1
Trials 500
Accuracy 0.00001
HeadError 0.000001
FlowChange 0.0000001
[END]
`;
}

export function networkText(line: NetworkLine): string {
  const { friction } = line;
  const hazenWilliams = "c" in friction;
  // Roughness of Darcy–Weisbach is in thousandths of a foot.
  const rough = hazenWilliams ? friction.c : friction.roughnessFeet * 1000;
  const rows = (row: (i: number) => string) => line.bore.map((_, i) => row(i)).join("\n");
  return `[RESERVOIRS]
R ${line.inletHead}
[JUNCTIONS]
${rows((i) => `J${i + 1} ${line.elevation[i]} 0`)}
[PIPES]
${rows((i) => `P${i + 1} ${i === 0 ? "R" : `J${i}`} J${i + 1} ${line.segmentLength[i]} ${line.bore[i]} ${rough} 0 Open`)}
[EMITTERS]
${rows((i) => `J${i + 1} ${line.coefficient}`)}
${optionsText(line.exponent, hazenWilliams ? "H-W" : "D-W")}`;
}

/** The engine's own constants. */
export const FOOT = 0.3048;
export const PSI_PER_FOOT = 0.4333;
export const GPM_PER_CFS = 448.831;
/** m³/s in one of its gpm. */
export const GPM = FOOT ** 3 / GPM_PER_CFS;
const VISCOSITY = 1.1e-5; // ft²/s
const GRAVITY = 32.2; // ft/s²

/** The engine's friction as a law of ours: the same equations, written from its manual. */
export function engineFriction(friction: NetworkLine["friction"]): FrictionLaw {
  return {
    law: "given",
    gradient: (flow, bore) => {
      const cfs = flow / FOOT ** 3;
      const feet = bore / FOOT;
      if ("c" in friction) return (4.727 * (cfs / friction.c) ** 1.852) / feet ** 4.871;
      const speed = cfs / ((Math.PI / 4) * feet ** 2);
      const factor = engineFactor((speed * feet) / VISCOSITY, friction.roughnessFeet / feet);
      return (factor * speed ** 2) / (2 * GRAVITY * feet);
    },
  };
}

/** Hagen–Poiseuille below 2000, Swamee–Jain above 4000, Dunlop's cubic between. */
function engineFactor(reynolds: number, roughness: number): number {
  if (reynolds <= 2000) return 64 / reynolds;
  const inside = roughness / 3.7 + 5.74 / reynolds ** 0.9;
  if (reynolds >= 4000) return 0.25 / Math.log10(inside) ** 2;
  const y3 = -0.86859 * Math.log(roughness / 3.7 + 5.74 / 4000 ** 0.9);
  const fa = y3 ** -2;
  const fb = fa * (2 - 0.00514215 / (inside * y3));
  const r = reynolds / 2000;
  return (
    7 * fa -
    fb +
    r *
      (0.128 -
        17 * fa +
        2.5 * fb +
        r * (-0.128 + 13 * fa - 2 * fb + r * (0.032 - 3 * fa + 0.5 * fb)))
  );
}

/** The engine's emitter, q = K p^x in gpm and its psi, as a law of ours: the same flow at the same head. */
export function engineDischarge(coefficient: number, exponent: number): DischargeLaw {
  const psiPerPascal = PSI_PER_FOOT / (FOOT * WATER_WEIGHT);
  return {
    breaks: [],
    coefficients: [coefficient * GPM * psiPerPascal ** exponent],
    exponents: [exponent],
    lowest: 0,
    highest: Infinity,
  };
}

/** Our psi is 2.311 ft of water; the engine takes 0.4333 psi a foot. */
export const OUR_PSI_PER_FOOT = (WATER_WEIGHT * FOOT) / 6894.757293168;

/** The C with which the handbook form gives the engine's loss at its C, in one bore (in). */
export function matchedC(c: number, bore: number): number {
  const engineLoss = (4.727 * (1 / GPM_PER_CFS / c) ** 1.852) / (bore / 12) ** 4.871;
  const handbookLoss = ((1050 / 100) * (1 / c) ** 1.852) / bore ** 4.87;
  return c * (handbookLoss / engineLoss) ** (1 / 1.852);
}

/** The K of our psi that gives the flow of the engine's K at the same height of water. */
export function matchedK(k: number, exponent: number): number {
  return k / (OUR_PSI_PER_FOOT / PSI_PER_FOOT) ** exponent;
}
