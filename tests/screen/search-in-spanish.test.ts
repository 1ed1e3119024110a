import { spanishEdition } from "../../build/editions";
import { functionSearch } from "../../src/screen/search";
import { searchWords } from "../../src/words/es/search-words";
import { builtReference } from "../support/built";

const { functions } = builtReference();
const inEnglish = functionSearch(functions);
const inSpanish = functionSearch(spanishEdition(functions).functions);
const names = (search: typeof inEnglish, query: string) => search(query).map(({ name }) => name);

/** Words and questions as a grower types them, and a function that must be among the first five. */
const QUESTIONS: readonly (readonly [query: string, wanted: string])[] = [
  ["presión aspersor", "SPRINKLER.PRESSURE"],
  ["presion aspersor", "SPRINKLER.PRESSURE"],
  ["caudal del aspersor", "SPRINKLER.FLOW"],
  ["bomba motor", "PUMP.POWER"],
  ["viento a 2 m", "ET.WIND2M"],
  ["rollos de tubería", "BILL.ROLLS"],
  ["¿cuántos hidrantes necesito?", "FEEDER.HYDRANTS"],
  ["golpe de ariete", "PIPE.SURGE"],
  ["¿cuánto tiempo riego en cada posición?", "SET.TIME"],
  ["estanque días", "SOURCE.DAYS"],
  ["lámina neta suelo", "SOIL.NET"],
];

test.each(QUESTIONS)("in the Spanish edition %s finds %s", (query, wanted) => {
  expect(names(inSpanish, query).slice(0, 5)).toContain(wanted);
});

test.each([
  ["presión", "LATERAL.PRESSURE"],
  ["caudal", "SPRINKLER.FLOW"],
  ["aspersor", "SPRINKLER.FLOW"],
  ["bomba", "PUMP.POWER"],
  ["tubería", "PIPE.FRICTION"],
  ["viento", "ET.WIND2M"],
  ["rollos", "BILL.ROLLS"],
  ["hidrante", "FEEDER.HYDRANTS"],
  ["estanque", "SOURCE.DAYS"],
  ["presi", "LATERAL.PRESSURE"],
])("on the English pages %s finds %s too", (query, wanted) => {
  expect(names(inEnglish, query)).toContain(wanted);
});

test.each([
  ["pressure", "LATERAL.PRESSURE"],
  ["pump", "PUMP.POWER"],
  ["LATERAL.PRESSURE", "LATERAL.PRESSURE"],
  ["sprinkler", "SPRINKLER.FLOW"],
])("in the Spanish edition the English %s finds %s", (query, wanted) => {
  expect(names(inSpanish, query)).toContain(wanted);
});

test("an English question finds what it found before there was Spanish", () => {
  expect(names(inEnglish, "how long do I run a set?")[0]).toBe("SET.TIME");
  expect(names(inEnglish, "how big should my pump be").slice(0, 5)).toContain("PUMP.POWER");
});

test("every word of the list finds something in English", () => {
  const lost = Object.keys(searchWords).filter((word) => inEnglish(word).length === 0);
  expect(lost).toEqual([]);
});

test("nothing of the kind", () => {
  expect(names(inSpanish, "zebra")).toEqual([]);
});
