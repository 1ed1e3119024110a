const base = require("./jest.config.js");

/** The edition for LibreOffice Calc, against the add-in; needs Python, and the office where it is there. */
module.exports = {
  ...base,
  roots: ["<rootDir>/tests/calc"],
  testPathIgnorePatterns: ["/node_modules/"],
  globalSetup: "<rootDir>/tests/calc/started-office.ts",
  globalTeardown: "<rootDir>/tests/calc/ended-office.ts",
  testTimeout: 300000,
  maxWorkers: 1,
};
