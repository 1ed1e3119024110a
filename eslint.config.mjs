import js from "@eslint/js";
import prettier from "eslint-config-prettier";
import tseslint from "typescript-eslint";

/** The inner rooms may not look out: formulas, solver and tables know nothing of cells or Office. */
const inwardOnly = {
  files: ["src/formulas/**/*.ts", "src/solver/**/*.ts", "src/tables/**/*.ts"],
  rules: {
    "no-restricted-imports": [
      "error",
      {
        patterns: [
          {
            group: [
              "**/boundary/*",
              "**/functions/*",
              "**/sheets/*",
              "**/trial/*",
              "**/taskpane/*",
            ],
            message:
              "Formulas, solver and tables import nothing from the outer side of the boundary.",
          },
        ],
      },
    ],
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
  inwardOnly,
);
