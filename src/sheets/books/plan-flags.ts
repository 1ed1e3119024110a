import { type PageBuilder, unitText } from "../kit/builder";
import type { PagePlan } from "../kit/workbook";
import type { Field } from "../parts/bluestem-flat";
import { MOST_HYDRANTS, MOST_RUNS } from "./plan-room";

/** Near ends, far ends, hydrants: a row each. */
const FLAGS = 2 * MOST_RUNS + MOST_HYDRANTS;

/** The flags of the row chosen, and the map file that holds them. */
export function planFlagsPage(field: Field): PagePlan {
  return {
    name: "Flags",
    title: { text: "Flags", formula: '="Flags: "&FieldName' },
    purpose:
      "Near and far end of every run, and the hydrants. For a map file, type latitude and longitude of the place x 0, y 0 on the page Field; then copy the lines at the right into an empty plain text file and save it, in UTF-8, under a name that ends in .gpx, .kml or .geojson.",
    widths: [28, 11, 11, 3, 100, 10, 10],
    landscape: true,
    write: (page) => flags(page, field),
  };
}

function flags(page: PageBuilder, field: Field): void {
  page.safety("buried lines", "overhead wires", "plan on the ground");
  page.gap();
  const block = page.block("A", 1);
  block.input("Format of the map file", "GPX", {
    name: "Format",
    allowed: { list: ["GPX", "KML", "GeoJSON"] },
    note: "GPX for receivers, KML or GeoJSON for maps.",
  });
  page.below(block);
  const headers = ["Flag", "x", "y"].map((header, i) =>
    page.put(i + 1, page.row, {
      role: "header",
      ...(i === 0 ? { value: header } : { formula: `="${header} ("&${unitText("length")}&")"` }),
    }),
  );
  const lines = page.put(5, page.row, {
    role: "header",
    value: "Lines of the map file",
    span: 3,
  });
  page.row++;
  const top = page.row;
  const there = 'FILTER(FlagRows, INDEX(FlagRows, 0, 1)<>"")';
  page.spill("A", `=IF(ChosenLines>0, ${there})`, {
    rows: 2 * field.positions + field.lines,
    reserved: FLAGS,
    headed: false,
    headers,
    columns: [{ format: "General" }, "length", "length"],
  });
  page.row = top;
  page.spill(
    "E",
    `=IF(OR(Latitude="", Longitude=""), "Type latitude and longitude of x 0, y 0 on the page Field.", IRRIG.STAKE.MAP(${there}, Format, Latitude, Longitude, Units))`,
    {
      rows: 1,
      reserved: FLAGS + 10,
      headed: false,
      headers: [lines],
      columns: [{ format: "General" }],
    },
  );
  page.nameRange("MapFile", `E${top}:E${top + FLAGS + 9}`);
}

/** Every flag that there may be, blank rows between; at `column` of the next free row. */
export function flagRows(page: PageBuilder, column: string): void {
  const run = (row: number, at: number) => `INDEX(Runs, ${row}, ${at})`;
  const ends = Array.from({ length: MOST_RUNS }, (_, i) => {
    const n = i + 1;
    const known = `IF(${run(n, 1)}="", "", `;
    const end = (what: string, at: number) => [
      `=${known}"position "&${run(n, 1)}&IF(${run(n, 2)}>1, ", run "&${run(n, 2)}, "")&", ${what}")`,
      `=${known}${run(n, at)})`,
      `=${known}${run(n, at + 1)})`,
    ];
    return [end("near end", 3), end("far end", 5)];
  });
  const hydrants = Array.from({ length: MOST_HYDRANTS }, (_, i) => {
    const known = `IF(INDEX(Hydrants, ${i + 1}, 1)="", "", `;
    return [
      `=${known}"hydrant "&INDEX(Hydrants, ${i + 1}, 1))`,
      `=${known}INDEX(Hydrants, ${i + 1}, 2))`,
      `=${known}INDEX(Hydrants, ${i + 1}, 3))`,
    ];
  });
  const rows = [...ends.flat(), ...hydrants];
  const [names, , ys] = page.table(column, [
    { header: "Flag", role: "result", format: "General", rows: rows.map(([name]) => name) },
    { header: "x", unit: "length", role: "result", rows: rows.map(([, x]) => x) },
    { header: "y", unit: "length", role: "result", rows: rows.map(([, , y]) => y) },
  ]);
  page.nameRange("FlagRows", `${names.split(":")[0]}:${ys.split(":")[1]}`);
}
