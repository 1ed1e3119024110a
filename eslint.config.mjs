import { readFileSync } from "node:fs";
import js from "@eslint/js";
import prettier from "eslint-config-prettier";
import tseslint from "typescript-eslint";

/** The rooms of the house, from the inside out, and what each may import: no other arrow is drawn. */
const rooms = JSON.parse(readFileSync(`${import.meta.dirname}/build/rooms.json`, "utf8"));

const FILES = ["catalogue", "cautions", "palette", "reference"];

/** What an import of a room looks like in another: "../../sheets/kit/look", and "../kit/look" beside it. */
function importOf(room, here) {
  const up = "(?:\\.\\./)+";
  if (room === "sheets")
    return here.startsWith("sheets/") ? `${up}index$` : `${up}sheets(?:/index)?$`;
  if (FILES.includes(room)) return `${up}${room}$`;
  if (here === "sheets" && room.startsWith("sheets/")) return room.replace("sheets/", "\\./") + "/";
  return `${up}${here.startsWith("sheets/") ? room.replace("sheets/", "") : room}/`;
}

const arrows = Object.entries(rooms).map(([room, imported]) => {
  const others = Object.keys(rooms).filter((other) => other !== room && !imported.includes(other));
  const regex = `^(?:${others.map((other) => importOf(other, room)).join("|")})`;
  const message = `${room} imports nothing of that room: build/rooms.json has the arrows.`;
  const selector = `:matches(ImportExpression, TSImportType) Literal[value=/${regex.replaceAll("/", "\\/")}/]`;
  return {
    files: [`src/${room}.ts`, room === "sheets" ? "src/sheets/*.ts" : `src/${room}/**/*.ts`],
    rules: {
      "no-restricted-imports": ["error", { patterns: [{ regex, message }] }],
      "no-restricted-syntax": ["error", { selector, message }],
    },
  };
});

/** The inner rooms know nothing of cells or Office. */
const inwardOnly = {
  files: ["src/formulas/**/*.ts", "src/solver/**/*.ts", "src/tables/**/*.ts"],
  rules: {
    "no-restricted-globals": ["error", "CustomFunctions", "Office", "Excel", "document", "window"],
  },
};

export default tseslint.config(
  {
    ignores: [
      "tests/build/fixtures/",
      "dist/",
      "node_modules/",
      "coverage/",
      "reports/",
      ".stryker-tmp/",
    ],
  },
  js.configs.recommended,
  ...tseslint.configs.recommended,
  prettier,
  {
    rules: {
      eqeqeq: ["error", "always"],
      "no-console": "off",
    },
  },
  {
    // A cell can hand over anything: the sheet-facing functions are declared `any`, as the metadata needs.
    files: ["src/functions/**/*.ts"],
    rules: {
      "@typescript-eslint/no-explicit-any": "off",
    },
  },
  {
    files: ["*.js", "*.cjs"],
    languageOptions: {
      sourceType: "commonjs",
      globals: {
        require: "readonly",
        module: "writable",
        process: "readonly",
        __dirname: "readonly",
        console: "readonly",
      },
    },
    rules: { "@typescript-eslint/no-require-imports": "off" },
  },
  {
    // Stands in for the host's script in a page.
    files: ["tests/support/stand-in-excel.js"],
    languageOptions: { globals: { window: "readonly" } },
  },
  ...arrows,
  inwardOnly,
);
