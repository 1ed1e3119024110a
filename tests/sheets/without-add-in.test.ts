import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { builtSheets, hasCommand } from "../support/sheet-files";

/**
 * What a program shows that has none of our functions: it works the file out by itself, and every
 * sentence that rests on one of them must then be an error, not words that read like a result.
 */
(hasCommand("soffice", "--version") ? describe : describe.skip)(
  "without the add-in (needs LibreOffice)",
  () => {
    let folder: string;
    let names: string[];
    let scratch: string;
    beforeAll(() => {
      scratch = mkdtempSync(join(tmpdir(), "fieldsum-without-"));
      ({ folder, names } = builtSheets());
      names = names.filter((name) => !name.endsWith("-values.xlsx"));
      execFileSync(
        "soffice",
        [
          `-env:UserInstallation=file://${join(scratch, "profile")}`,
          "--headless",
          "--convert-to",
          "csv",
          "--outdir",
          scratch,
          ...names.map((name) => join(folder, name)),
        ],
        { stdio: "ignore" },
      );
    }, 300000);
    afterAll(() => {
      for (const path of [scratch, folder]) rmSync(path, { recursive: true, force: true });
    });

    test("the first page's answers are errors, its notice and its inputs are there", () => {
      expect(names.length).toBeGreaterThan(0);
      for (const name of names) {
        const text = readFileSync(join(scratch, name.replace(".xlsx", ".csv")), "utf8");
        const answers = text
          .split("\n")
          .filter((line) => /^"?(?:How|Does|Which|What) [^"]*\?"?,/.test(line));
        expect([name, answers.length > 1]).toEqual([name, true]);
        for (const line of answers)
          expect([name, line]).toEqual([name, expect.stringContaining("#NAME?")]);
        expect(text).toContain("Needs the Fieldsum add-in; the values here were computed on");
        expect(text).not.toMatch(/Fix first|Fix the input|All \d+ checks pass/);
      }
    });
  },
);
