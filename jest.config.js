/** Types are checked by `tsc --noEmit`; swc only strips them, about ten times faster. */
const transform = {
  "^.+\\.[jt]sx?$": ["@swc/jest", { jsc: { target: "es2022", parser: { syntax: "typescript" } } }],
};

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
  // Node loads none of these ES modules by require(), and jest has no other way to a package.
  transformIgnorePatterns: [
    "/node_modules/(?!.*(clipper2-ts|delaunator|robust-predicates|strip-bom|uuid)/)",
  ],
};
