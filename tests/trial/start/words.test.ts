import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { screens } from "../../../src/words/es/screens";
import { start } from "../../../src/words/es/start";

const FOLDER = join(__dirname, "../../../src/trial/start");
const spanish: Readonly<Record<string, string>> = { ...start, ...screens };

/** Sentences and titles among the texts of a file: with a capital at first, and a small letter. */
function textsOf(file: string): string[] {
  const source = ts.createSourceFile(
    file,
    readFileSync(join(FOLDER, file), "utf8"),
    ts.ScriptTarget.Latest,
    true,
  );
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isThrowStatement(node) || ts.isImportDeclaration(node)) return;
    if (
      ts.isStringLiteral(node) &&
      /^[A-Z{].*[a-z]/.test(node.text) &&
      / |^[A-Z][a-z]+$/.test(node.text)
    )
      found.push(node.text);
    node.forEachChild(visit);
  };
  visit(source);
  return found;
}

/** Names of cells and checks, by which the workbook is asked: it says them in its own language. */
const ASKED = new Set(
  (
    "Heads Spacing First Rise Move Positions Lines Changeover Lowest Wetted Texture Slope Drop Lift Area Crop " +
    "Width Units Currency Inputs Suction Wind Variation Limit Speed Rate Efficiency Intake"
  ).split(" "),
);

test("every text of the start has its Spanish, with the same places in braces", () => {
  const checks =
    /^(Pump and lines|Pressure along the line|Highest pressure and the chart|Velocity in|Static pressure|With surge|Rate and|Spacing and|Set and|Days and|Lowest pressure|Size \(mm\)|From the inlet:|After the changeover:|Main, for all lines:|Feeder, one each:|SDR, row|Pump curve|InletThereIs, )/;
  const files = readdirSync(FOLDER).filter((file) => file.endsWith(".ts"));
  const texts = files.flatMap(textsOf).filter((text) => !checks.test(text) && !ASKED.has(text));
  expect(texts.length).toBeGreaterThan(90);
  expect(texts.filter((text) => !(text in spanish))).toEqual([]);
  const places = (text: string) => (text.match(/\{\w+\}/g) ?? []).sort();
  for (const [english, other] of Object.entries(start))
    expect([english, places(other)]).toEqual([english, places(english)]);
});
