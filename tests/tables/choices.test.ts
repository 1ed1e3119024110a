import { join } from "node:path";
import { readDocComments } from "../../build/doc-comments";
import { spelling } from "../../src/boundary/choices";
import { crops, cropSpellings, stages, stageSpellings } from "../../src/tables/crops";
import { HOUR, INCH } from "../../src/ground/unit-factors";
import {
  COVERS,
  largestApplicationRate,
  profileOfTexture,
  profileSpellings,
  soilProfiles,
} from "../../src/tables/intake";
import { availableWaterCapacity, soilTextures, textureSpellings } from "../../src/tables/soils";

/** The functions that read a table, with the argument that chooses the entry. */
const readers: readonly [file: string, id: string, argument: string, entries: readonly string[]][] =
  [
    ["soil.ts", "SOIL_AWC", "texture", soilTextures],
    ["soil.ts", "SOIL_PROFILE", "texture", soilTextures],
    ["soil.ts", "SOIL_INTAKE", "profile", soilProfiles],
    ["crop.ts", "CROP_ROOT", "crop", crops],
    ["crop.ts", "CROP_DEPLETION", "crop", crops],
    ["crop.ts", "CROP_KC", "crop", crops],
    ["crop.ts", "CROP_KC", "stage", stages],
  ];

function helpOf(file: string, id: string) {
  const path = join(__dirname, "../../src/functions", file);
  const found = readDocComments(path).functions.find((help) => help.id === id);
  if (found === undefined) throw new Error(`no ${id} in ${file}`);
  return found;
}

test.each(readers)(
  "%s: %s offers the %s entries of its table, in order",
  (file, id, name, entries) => {
    const argument = helpOf(file, id).arguments.find((candidate) => candidate.name === name);
    expect(argument?.choices?.map((choice) => choice.value)).toEqual(entries);
    expect(argument?.choices?.every((choice) => choice.help !== "")).toBe(true);
  },
);

test.each(readers)("%s: the help of %s lists every %s", (file, id, name, entries) => {
  const help = helpOf(file, id);
  const argument = help.arguments.find((candidate) => candidate.name === name)?.help ?? "";
  const text = `${argument} ${help.remarks}`;
  expect(entries.filter((entry) => !text.includes(entry))).toEqual([]);
});

test.each([
  ["textures", soilTextures, textureSpellings],
  ["profiles", soilProfiles, profileSpellings],
  ["crops", crops, cropSpellings],
  ["stages", stages, stageSpellings],
] as const)("a further spelling of %s names one entry and hides none", (_, entries, aliases) => {
  const known = entries.map(spelling);
  expect(new Set(known).size).toBe(entries.length);
  const also = Object.keys(aliases).map(spelling);
  expect(also.filter((alias) => known.includes(alias))).toEqual([]);
  expect(also.filter((alias, i) => also.indexOf(alias) !== i)).toEqual([]);
  for (const target of Object.values(aliases)) expect(entries).toContain(target);
});

test("the help states each printed range of a texture", () => {
  // The enum's own text: "holds 1.50 to 2.30 in/ft".
  const choices = helpOf("soil.ts", "SOIL_AWC").arguments[0].choices ?? [];
  expect(
    choices.map((choice) => /holds (\d\.\d\d) to (\d\.\d\d) in\/ft$/.exec(choice.help)?.slice(1)),
  ).toEqual([
    ["0.40", "0.75"],
    ...Array(3).fill(["0.75", "1.25"]),
    ...Array(2).fill(["1.25", "1.75"]),
    ...Array(3).fill(["1.50", "2.30"]),
    ...Array(3).fill(["1.75", "2.50"]),
    ...Array(3).fill(["1.60", "2.50"]),
    ["2.00", "3.00"],
  ]);
});

test("the help of SOIL.AWC states the average of each texture", () => {
  const { remarks } = helpOf("soil.ts", "SOIL_AWC");
  const printed = [...remarks.matchAll(/([a-z ,]+) (\d\.\d\d) \(\d\.\d\d–\d\.\d\d\)/g)].flatMap(
    ([, textures, average]) =>
      textures
        .split(",")
        .map((texture) => texture.trim())
        .filter((texture) => texture !== "")
        .map((texture) => [texture, Number(average)]),
  );
  const inTable = soilTextures.map((texture) => [
    texture,
    Math.round(availableWaterCapacity(texture) * 12 * 100) / 100,
  ]);
  expect(printed).toEqual(inTable);
});

test("the help of SOIL.INTAKE states every rate of its table", () => {
  const { remarks } = helpOf("soil.ts", "SOIL_INTAKE");
  const rows = [...remarks.matchAll(/([a-z ]+) ((?:[\d.]+, ){3}[\d.]*\d)/g)];
  let uniform = "";
  const printed = rows.map(([, words, rates]) => {
    const row = words.trim();
    // "over compact" alone is of the soil before it.
    const profile = row === "over compact" ? `${uniform} ${row}` : row;
    uniform = profile;
    return [profile, ...rates.split(", ").map(Number)];
  });
  const inTable = COVERS.flatMap((cover) =>
    soilProfiles.map((profile) => [
      profile,
      ...[0.05, 0.08, 0.12, 0.16].map(
        (slope) =>
          Math.round(((largestApplicationRate(profile, slope, cover) * HOUR) / INCH) * 1000) / 1000,
      ),
    ]),
  );
  expect(printed).toEqual(inTable);
});

test("the help of SOIL.PROFILE states the class of each texture", () => {
  const { remarks } = helpOf("soil.ts", "SOIL_PROFILE");
  const printed = [...remarks.matchAll(/([a-z ,]+): "([a-z ]+)"/g)].flatMap(([, words, profile]) =>
    words.split(",").map((texture) => [texture.trim(), profile]),
  );
  const classed = soilTextures.filter((texture) => texture !== "peat");
  expect(printed).toEqual(classed.map((texture) => [texture, profileOfTexture(texture, false)]));
});
