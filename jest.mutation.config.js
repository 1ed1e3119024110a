const base = require("./jest.config.js");

/**
 * Mutants live in the sources, so tests of the built files, of the build and of the pages cannot
 * meet them; they would only make each mutant slower.
 */
module.exports = {
  ...base,
  roots: ["boundary", "formulas", "functions", "published", "solver", "tables", "generic"]
    .map((room) => `<rootDir>/tests/${room}`)
    .filter((folder) => require("node:fs").existsSync(folder.replace("<rootDir>", __dirname))),
  testPathIgnorePatterns: [
    ...base.testPathIgnorePatterns,
    "<rootDir>/tests/generic/bundle",
    "<rootDir>/tests/generic/released",
  ],
};
