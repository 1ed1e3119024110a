const base = require("./jest.config.js");

/** Drives Debian's Chromium; one worker, for the pages share a server and two cores. */
module.exports = {
  ...base,
  roots: ["<rootDir>/tests/browser"],
  testPathIgnorePatterns: ["/node_modules/"],
  testTimeout: 240000,
  maxWorkers: 1,
};
