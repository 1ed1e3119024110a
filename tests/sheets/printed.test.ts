import { execFileSync } from "node:child_process";
import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { type CellObject, read as readBook, SSF } from "@e965/xlsx";
import { readyMadeSheets } from "../../src/sheets";
import { readAddress, readRange } from "../../src/sheets/kit/address";
import { builtSheets, hasCommand } from "../support/sheet-files";

/**
 * Prints the values-only copies with the narrowest and the widest body font that Debian has, the
 * only one that is there to be found each time, and reads the paper back.
 */
const FONTS = "/usr/share/fonts/truetype";
const faces = {
  narrowest: ["Regular", "Bold", "Italic", "BoldItalic"].map(
    (face) => `${FONTS}/liberation/LiberationSansNarrow-${face}.ttf`,
  ),
  widest: ["", "-Bold", "-Oblique", "-BoldOblique"].map(
    (face) => `${FONTS}/dejavu/DejaVuSans${face}.ttf`,
  ),
};

const canPrint =
  hasCommand("soffice", "--version") &&
  hasCommand("pdftotext", "-v") &&
  Object.values(faces)
    .flat()
    .every((path) => hasCommand("test", "-f", path));

const every = readyMadeSheets.flatMap((sheet) =>
  (["US", "SI"] as const).map((system) => ({
    name: `${sheet.id}-${system.toLowerCase()}-values`,
    pages: sheet.pages(system),
  })),
);

const bare = (text: string) => text.replace(/\s+/g, "");

/** What a cell may show: programs differ where a number lies between two roundings. */
function possibleTexts({ v, w = "", z = "General" }: CellObject): string[] {
  if (typeof v !== "number") return [w];
  return [v, v * (1 + 1e-9), v * (1 - 1e-9)].map((number) => SSF.format(z, number));
}

/** The sheets of paper of a printed workbook, as text without blanks. */
function paperOf(path: string): string[] {
  const text = execFileSync("pdftotext", ["-raw", path, "-"], {
    encoding: "utf8",
    maxBuffer: 2 ** 26,
  });
  return text.split("\f").slice(0, -1).map(bare);
}

(canPrint ? describe : describe.skip)("on paper (needs LibreOffice, poppler-utils, fonts)", () => {
  let scratch: string;
  let folder: string;
  beforeAll(() => {
    scratch = mkdtempSync(join(tmpdir(), "fieldsum-print-"));
    ({ folder } = builtSheets());
  }, 300000);
  afterAll(() => {
    for (const path of [scratch, folder]) rmSync(path, { recursive: true, force: true });
  });

  test.each(Object.entries(faces))(
    "%s font: each part on a sheet of its own, each row's labels and values on one",
    (width, files) => {
      const fonts = join(scratch, width);
      mkdirSync(fonts);
      for (const file of files) copyFileSync(file, join(fonts, basename(file)));
      const settings = join(scratch, `${width}.conf`);
      writeFileSync(
        settings,
        `<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig><dir>${fonts}</dir><cachedir>${fonts}</cachedir></fontconfig>`,
      );
      const printed = join(scratch, `${width}-printed`);
      execFileSync(
        "soffice",
        [
          `-env:UserInstallation=file://${join(scratch, `${width}-profile`)}`,
          "--headless",
          "--convert-to",
          "pdf",
          "--outdir",
          printed,
          ...every.map(({ name }) => join(folder, `${name}.xlsx`)),
        ],
        { stdio: "ignore", env: { ...process.env, FONTCONFIG_FILE: settings } },
      );
      // Not on the sheet of paper of its row, or cut off there.
      const lost: string[] = [];
      for (const { name, pages } of every) {
        const paper = paperOf(join(printed, `${name}.pdf`));
        const book = readBook(readFileSync(join(folder, `${name}.xlsx`)), { cellNF: true });
        const areas = (book.Workbook?.Names ?? []).filter((one) => one.Name === "_xlnm.Print_Area");
        const parts = areas.flatMap(({ Sheet = 0, Ref }) =>
          Ref.split(/,(?=')/).map((area) => ({
            page: book.SheetNames[Sheet],
            ...readRange(area.slice(area.lastIndexOf("!") + 1).replace(/\$/g, "")),
          })),
        );
        expect(new Set(parts.map(({ page }) => page)).size).toBe(pages.length);
        expect([name, paper.length]).toEqual([name, parts.length]);
        parts.forEach(({ page, row, rows, columns }, i) => {
          for (const [at, cell] of Object.entries(book.Sheets[page])) {
            if (at.startsWith("!")) continue;
            const place = readAddress(at);
            if (place.row < row || place.row >= row + rows) continue;
            if (place.column >= columns) continue;
            const found = possibleTexts(cell as CellObject).some((text) =>
              paper[i].includes(bare(text)),
            );
            if (!found) lost.push(`${name} ${page}!${at} ${(cell as CellObject).w ?? ""}`);
          }
        });
      }
      expect(lost).toEqual([]);
    },
    300000,
  );
});
