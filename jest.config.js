/** Types are checked by `tsc --noEmit`; swc only strips them, about ten times faster. */
const transform = {
  "^.+\\.[jt]sx?$": ["@swc/jest", { jsc: { target: "es2022", parser: { syntax: "typescript" } } }],
};

const languageObjects =
  "Array Boolean Date Error Float64Array JSON Map Math Number Object Promise RegExp Set String Symbol WeakMap".split(
    " ",
  );

/** @type {import("jest").Config} */
module.exports = {
  testEnvironment: "node",
  // Room for a busy machine: speed is measured in the bench, never by a test.
  testTimeout: 400000,
  roots: ["<rootDir>/tests"],
  testMatch: ["**/*.test.ts"],
  testPathIgnorePatterns: ["/node_modules/", "<rootDir>/tests/browser/", "<rootDir>/tests/calc/"],
  setupFiles: ["<rootDir>/tests/support/property-seed.ts"],
  transform,
  // Names that a test's sandbox would look up anew each time they are met; as names of the module's
  // own they make arithmetic some three times as fast.
  sandboxInjectedGlobals: languageObjects,
  // Node loads none of these ES modules by require(), and jest has no other way to a package.
  transformIgnorePatterns: [
    "/node_modules/(?!.*(clipper2-ts|delaunator|robust-predicates|strip-bom|uuid)/)",
  ],
};
