import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { LIMITS } from "../../src/solver/plan-problem";
import { messagesIn } from "../../src/words/load";
import * as spanish from "../../src/words/es/messages";
import { messageReader } from "../../src/words/message-reader";
import { outcomeOf, sampleArguments, withCell } from "../support/samples";

const { error: inSpanish, said: saidInSpanish } = messageReader(spanish);

const places = (text: string) => (text.match(/\{\w+\}/g) ?? []).sort();

test.each(Object.entries(spanish))("%s: the same places in both languages", (_, messages) => {
  const differing = Object.entries(messages).filter(
    ([english, said]) => places(english).join() !== places(said).join(),
  );
  expect(differing).toEqual([]);
});

/** Words that no Spanish message has; names of arguments and quoted texts are taken out before. */
const ENGLISH = /\b(must|got|missing|takes|above|at least|with|whole|than|the|and|or more)\b/;
const bare = (text: string) => text.replace(/"[^"]*"/g, "");

test("whatever a function says of a wrong argument is said in Spanish", () => {
  const wrong = [
    null,
    "no such entry",
    NaN,
    true,
    -1,
    0,
    0.5,
    7,
    501,
    1e11,
    [
      [1, 2, 3],
      ["", 5, 6],
    ],
  ];
  const untold = new Set<string>();
  let seen = 0;
  for (const [, { help, cells }, , place] of sampleArguments) {
    for (const cell of wrong) {
      const { error } = outcomeOf(help.name, withCell(cells, place, cell));
      if (error === undefined) continue;
      seen += 1;
      const said = inSpanish(error.message);
      if (said === error.message || ENGLISH.test(bare(said)))
        untold.add(`${error.message} → ${said}`);
    }
  }
  expect(seen).toBeGreaterThan(1000);
  expect([...untold]).toEqual([]);
});

/** The text of a message as the source writes it, with a mark in every place; undefined if it is not written there. */
function textOf(node: ts.Node): string | undefined {
  if (ts.isStringLiteralLike(node)) return node.text;
  if (ts.isParenthesizedExpression(node)) return textOf(node.expression);
  if (ts.isTemplateExpression(node))
    return (
      node.head.text + node.templateSpans.map((span, i) => `70${i}${span.literal.text}`).join("")
    );
  if (ts.isBinaryExpression(node)) {
    const sides = [textOf(node.left), textOf(node.right)];
    return sides.includes(undefined) ? undefined : sides.join("");
  }
  return undefined;
}

function sourceMessages(): string[] {
  const src = join(__dirname, "..", "..", "src");
  const found: string[] = [];
  for (const folder of ["boundary", "formulas", "solver", "tables"]) {
    for (const file of readdirSync(join(src, folder)).filter((name) => name.endsWith(".ts"))) {
      const text = readFileSync(join(src, folder, file), "utf8");
      const visit = (node: ts.Node): void => {
        if (
          ts.isNewExpression(node) &&
          /^(InvalidInput|NoAnswer)$/.test(node.expression.getText())
        ) {
          const said = node.arguments?.[0] && textOf(node.arguments[0]);
          if (said !== undefined) found.push(said);
        }
        ts.forEachChild(node, visit);
      };
      visit(ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true));
    }
  }
  return found;
}

test("every message that stands whole in the source is known, and keeps what is in its places", () => {
  const messages = sourceMessages();
  expect(messages.length).toBeGreaterThan(80);
  const marks = (text: string) => [...new Set(text.match(/70\d/g) ?? [])].sort().join();
  const wrong = messages.filter((message) => {
    const said = inSpanish(message);
    // "700: 701" only names the argument before a message that is told by itself.
    if (/^[^:]+: 70\d$/.test(message)) return false;
    return said === message || marks(said) !== marks(message);
  });
  expect(wrong).toEqual([]);
});

test("messages as the functions give them", () => {
  const says = (english: string, said: string) => expect(inSpanish(english)).toBe(said);
  says("inside must be above 0 in; got -1", "inside debe ser mayor que 0 in; recibió -1");
  says(
    "tubing row 3 number of segments must be a whole number from 1 to 500; got a blank",
    "tubing fila 3, número de tramos debe ser un número entero de 1 a 500; recibió una celda en blanco",
  );
  says(
    "pressure runs out at head 9 of 14: raise the inlet pressure, use larger tubing or fewer heads",
    "la presión se acaba en el aspersor 9 de 14: suba la presión de entrada, use tubería mayor o menos aspersores",
  );
  says(
    "bill is missing: it must be two or three columns, item, quantity and unit",
    "falta bill: debe ser dos o tres columnas: artículo, cantidad y unidad",
  );
  says("inside has 3 values for 14 segments", "inside tiene 3 valores para 14 tramos");
  says(
    "discharge must be two columns, pressure (psi) and flow (gpm); got a range of 2 rows and 1 column",
    "discharge debe ser dos columnas: presión (psi) y caudal (gpm); recibió un rango de 2 filas y 1 columna",
  );
  expect(inSpanish("nothing known")).toBe("nothing known");
});

test("headers, labels and verdicts", () => {
  expect(saidInSpanish("nozzle pressure (psi)")).toBe("presión en la boquilla (psi)");
  expect(saidInSpanish("OK")).toBe("OK");
  // Every limit of a plan, as PLAN.LIMITS and PLAN.SEARCH name it.
  for (const limit of LIMITS) expect(saidInSpanish(limit)).not.toBe(limit);
  expect(saidInSpanish("day hours (h)")).toBe("horas del día (h)");
  expect(
    saidInSpanish(
      "Velocity is 6.1 ft/s; the limit is 5 ft/s. Use larger tubing, or send less flow through it.",
    ),
  ).toBe(
    "La velocidad es 6.1 ft/s; el límite es 5 ft/s. Use tubería mayor, o lleve menos caudal por ella.",
  );
});

test("English messages come as they are", async () => {
  const { error, said } = await messagesIn("en");
  expect(error("inside must be above 0 in; got -1")).toBe("inside must be above 0 in; got -1");
  expect(said("nozzle pressure (psi)")).toBe("nozzle pressure (psi)");
});
