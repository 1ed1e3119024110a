import { isOlderThanLambdas } from "../../src/taskpane/builds";

test.each([
  ["PC", "16.0.19327.20000", true],
  ["PC", "16.0.19328.20158", false],
  ["Mac", "16.101.1", true],
  ["Mac", "16.102", false],
  ["OfficeOnline", "0.0.0.0", false],
  ["PC", "", false],
])("%s %s: older is %p", (platform, version, older) => {
  expect(isOlderThanLambdas(platform, version)).toBe(older);
});
