import type { UnitSystem } from "../../sheets/kit/definition";

export type StartPart = "field" | "line";

/** What an address of the page leads to. */
export interface Route {
  readonly cans: boolean;
  /** Where someone starts who has no workbook yet. */
  readonly start?: StartPart;
  /** Id of a ready-made workbook. */
  readonly sheet?: string;
  readonly system?: UnitSystem;
  readonly page?: string;
  /** Id of a piece of work in this browser. */
  readonly piece?: string;
  /** Changed inputs that came with the address. */
  readonly given?: string;
}

/** "#quote/us/Prices", behind it a piece of work or inputs that came along; "#cans"; "#start"; "#sheet". */
export function readRoute(hash: string): Route {
  const [path, given] = hash.replace(/^#/, "").split("?with=");
  if (path === "cans") return { cans: true };
  if (path === "start") return { cans: false, start: "field" };
  if (path === "start/line") return { cans: false, start: "line" };
  const [sheet = "", units = "", page = "", piece = ""] = path.split("/").map(decoded);
  if (sheet === "" || sheet === "sheet") return { cans: false };
  const system = units.toUpperCase();
  return {
    cans: false,
    sheet,
    ...((system === "US" || system === "SI") && { system }),
    ...(page !== "" && { page }),
    ...(piece !== "" && { piece }),
    ...(given !== undefined && { given }),
  };
}

export function writeRoute({ cans, sheet, system = "US", page = "", piece, given }: Route): string {
  if (cans) return "#cans";
  if (sheet === undefined) return "#sheet";
  const parts = [sheet, system.toLowerCase(), page, ...(piece === undefined ? [] : [piece])];
  return `#${parts.map(encodeURIComponent).join("/")}${given === undefined ? "" : `?with=${given}`}`;
}

function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return "";
  }
}
