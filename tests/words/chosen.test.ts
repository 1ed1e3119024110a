import { localeFor, withPoint } from "../../src/words/chosen";

function speaking(...languages: string[]): void {
  Object.defineProperty(globalThis, "navigator", { value: { languages }, configurable: true });
}

test("Spanish numbers are written as the reader's own country writes them", () => {
  speaking("en-US", "es-AR");
  expect(localeFor("es")).toBe("es-AR");
  speaking("es-MX");
  expect(localeFor("es")).toBe("es-MX");
  speaking("en-US");
  expect(localeFor("es")).toBe("es-419");
  expect(localeFor("en")).toBe("en-US");
});

test("a decimal comma is read where the reader writes one, and nowhere else", () => {
  expect(withPoint("52,5", "es-AR")).toBe("52.5");
  expect(withPoint("-0,25", "es-ES")).toBe("-0.25");
  expect(withPoint("52.5", "es-AR")).toBe("52.5");
  expect(withPoint("{1,2;3,4}", "es-AR")).toBe("{1,2;3,4}");
  expect(withPoint('"a,b"', "es-AR")).toBe('"a,b"');
  expect(withPoint("52,5", "es-MX")).toBe("52,5");
  expect(withPoint("52,5", "en-US")).toBe("52,5");
});
