import { keepsTarget, type Row } from "./measure";

/** When and by what the rows of a group were measured. */
export interface Measured {
  readonly date: string;
  readonly node: string;
  readonly rows: readonly Row[];
}

const INTRODUCTION = `# Bench

Measured by hand, so each group says when. Each row is a ratio of two things measured in the same run:
the times differ from machine to machine, the ratios much less. To repeat, on a machine that does
nothing else: \`npm run build\`, then \`npm run bench\`. With \`-- --write\` it writes this page, with
\`-- plan page --write\` only these groups of it.
`;

/** One row in the terminal. */
export function line(row: Row): string {
  const { target } = row;
  const wanted = target === undefined ? "" : `, ${target.bound} ${target.value}`;
  const verdict = keepsTarget(row) ? "" : "  MISSED";
  return `${row.ratio.toFixed(2).padStart(8)}  ${row.what}${wanted} (${row.times})${verdict}`;
}

/** The page with these groups measured anew, all of them in the given order, the others as they stand. */
export function page(
  before: string,
  order: readonly string[],
  measured: ReadonlyMap<string, Measured>,
): string {
  const stands = new Map(
    before
      .split(/^(?=## )/m)
      .slice(1)
      .map((section) => [/^## (.*)$/m.exec(section)?.[1] ?? "", section.trim()]),
  );
  const sections = order.flatMap((group) => {
    const anew = measured.get(group);
    const section = anew === undefined ? stands.get(group) : sectionOf(group, anew);
    return section === undefined ? [] : [section];
  });
  return `${[INTRODUCTION, ...sections].join("\n\n")}\n`;
}

function sectionOf(group: string, { date, node, rows }: Measured): string {
  const cells = rows.map(({ what, ratio, target, times }) => {
    const wanted = target === undefined ? "" : `${target.bound} ${target.value}`;
    return `| ${ratio.toFixed(2)} | ${wanted} | ${what} | ${times} |`;
  });
  return [
    `## ${group}`,
    "",
    `Measured on ${date} with Node ${node} on a machine with two cores.`,
    "",
    "| ratio | wanted | what | measured |",
    "| ---: | --- | --- | --- |",
    ...cells,
  ].join("\n");
}
