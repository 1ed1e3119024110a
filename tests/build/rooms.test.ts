import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, sep } from "node:path";
import ts from "typescript";
import table from "../../build/rooms.json";

const root = join(__dirname, "../..");
const source = join(root, "src");
const rooms = new Map<string, readonly string[]>(Object.entries(table));

/** "sheets/kit" of a file of the kit, "trial" of one of the trial page, "cautions" of a file by itself. */
function roomOf(file: string): string {
  const [first, second, ...rest] = relative(source, file)
    .replace(/(\.d)?\.ts$/, "")
    .split(sep);
  return first === "sheets" && rest.length > 0 ? `${first}/${second}` : first;
}

function importsOf(file: string): string[] {
  const { importedFiles } = ts.preProcessFile(readFileSync(file, "utf8"), true, true);
  return importedFiles
    .map(({ fileName }) => fileName)
    .filter((name) => name.startsWith("."))
    .map((name) => join(dirname(file), name));
}

const files = readdirSync(source, { recursive: true, encoding: "utf8" })
  .filter((name) => name.endsWith(".ts") && name !== "styles.d.ts")
  .map((name) => join(source, name));

const drawn = new Map<string, Set<string>>();
for (const file of files) {
  const room = roomOf(file);
  const arrows = drawn.get(room) ?? new Set<string>();
  for (const target of importsOf(file)) {
    // A folder stands for its index.
    const isFolder = files.includes(join(target, "index.ts"));
    const other = roomOf(isFolder ? join(target, "index.ts") : `${target}.ts`);
    if (other !== room) arrows.add(other);
  }
  drawn.set(room, arrows);
}

test("every file of the source stands in a room, and every room has files", () => {
  expect([...drawn.keys()].sort()).toEqual([...rooms.keys()].sort());
});

test.each([...rooms.keys()])("%s imports what the table says, and all of it", (room) => {
  expect([...(drawn.get(room) ?? [])].sort()).toEqual([...(rooms.get(room) ?? [])].sort());
});

test("every arrow points to a room that stands before it: no circle", () => {
  const order = [...rooms.keys()];
  const back = [...rooms].flatMap(([room, imported]) =>
    imported.filter((other) => order.indexOf(other) >= order.indexOf(room)),
  );
  expect(back).toEqual([]);
});

test("the four screens stand side by side", () => {
  const screens = ["reference-pages", "workshop-page", "taskpane", "trial"];
  const imported = [...rooms.values()].flat();
  expect(imported.filter((room) => screens.includes(room))).toEqual([]);
});

test("the drawing of the developers' page is the table", () => {
  const width = Math.max(...[...rooms.keys()].map((room) => room.length));
  const drawing = [...rooms].map(([room, imported]) =>
    imported.length === 0 ? room : `${room.padEnd(width)} → ${imported.join(", ")}`,
  );
  expect(readFileSync(join(root, "DEVELOPERS.md"), "utf8")).toContain(drawing.join("\n"));
});
