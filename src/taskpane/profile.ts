/** Reads a table of LATERAL.PROFILE back by its headers, wherever its columns stand. */
export interface Profile {
  readonly pressureUnit: string;
  readonly flowUnit: string;
  readonly lengthUnit: string;
  readonly diameterUnit: string;
  readonly heads: readonly ProfileHead[];
}

export interface ProfileHead {
  readonly head: number;
  readonly distance: number;
  readonly elevation: number;
  readonly bore: number;
  readonly linePressure: number;
  readonly nozzlePressure: number;
  readonly headFlow: number;
  readonly segmentFlow: number;
}

const COLUMNS = {
  head: /^head$/i,
  distance: /^distance/i,
  elevation: /^elevation/i,
  bore: /^inside diameter/i,
  linePressure: /^line pressure/i,
  nozzlePressure: /^(nozzle pressure|pressure at the nozzle)/i,
  headFlow: /^head flow/i,
  segmentFlow: /^segment flow/i,
} as const;

type Key = keyof typeof COLUMNS;

/** The profile in a block of cells; undefined where no row holds its headers. */
export function readProfile(values: readonly (readonly unknown[])[]): Profile | undefined {
  const headerRow = values.findIndex((row) => row.some((cell) => COLUMNS.head.test(String(cell))));
  if (headerRow < 0) return undefined;
  const headers = values[headerRow].map(String);
  const places = Object.fromEntries(
    Object.entries(COLUMNS).map(([key, pattern]) => [
      key,
      headers.findIndex((header) => pattern.test(header)),
    ]),
  ) as Record<Key, number>;
  if (Object.values(places).some((place) => place < 0)) return undefined;
  const heads: ProfileHead[] = [];
  for (const row of values.slice(headerRow + 1)) {
    const cells = Object.fromEntries(
      Object.entries(places).map(([key, place]) => [key, row[place]]),
    );
    // Anything below the table ends it.
    if (Object.values(cells).some((cell) => typeof cell !== "number")) break;
    heads.push(cells as unknown as ProfileHead);
  }
  return {
    pressureUnit: unitOf(headers[places.nozzlePressure]),
    flowUnit: unitOf(headers[places.segmentFlow]),
    lengthUnit: unitOf(headers[places.distance]),
    diameterUnit: unitOf(headers[places.bore]),
    heads,
  };
}

/** "psi" of "nozzle pressure (psi)". */
function unitOf(header: string): string {
  return /\(([^)]+)\)\s*$/.exec(header)?.[1] ?? "";
}
