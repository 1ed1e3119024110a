import { strFromU8, strToU8, unzipSync, type Zippable, zipSync } from "fflate";
import { writeXlsx } from "hucre";
import { BUILD_DATE } from "./settings";
import { type FileParts, mendChart, squareFrame } from "../src/sheets/file/workbook-file";

const APPLICATION = "Fieldsum";

export interface PackageOptions {
  readonly title: string;
  readonly description: string;
}

/** Writes the workbook's package and mends what its writer does not let one say. */
export async function writePackage(
  parts: FileParts,
  { title, description }: PackageOptions,
): Promise<Uint8Array> {
  const written = await writeXlsx({
    sheets: parts.sheets,
    namedRanges: parts.namedRanges,
    defaultFont: { name: "Arial", size: 10 },
    properties: {
      title,
      description,
      creator: APPLICATION,
      lastModifiedBy: APPLICATION,
      created: BUILD_DATE,
      modified: BUILD_DATE,
    },
  });
  const entries = unzipSync(written);
  const mended: Zippable = {};
  for (const [path, bytes] of Object.entries(entries)) {
    const mend = mends.find(({ matches }) => matches.test(path))?.mend;
    mended[path] = [
      mend === undefined ? bytes : strToU8(mend(strFromU8(bytes), parts)),
      { level: 9, mtime: BUILD_DATE },
    ];
  }
  return zipSync(mended);
}

const mends: readonly {
  readonly matches: RegExp;
  readonly mend: (xml: string, parts: FileParts) => string;
}[] = [
  // A full calculation on load would throw the stored values away before the functions are there.
  {
    matches: /^xl\/workbook\.xml$/,
    mend: (xml) => xml.replace(/<calcPr[^>]*\/>/, '<calcPr calcId="191029"/>'),
  },
  {
    matches: /^xl\/charts\/chart\d+\.xml$/,
    mend: (xml, { chartValues }) => mendChart(xml, chartValues),
  },
  {
    matches: /^xl\/drawings\/drawing\d+\.xml$/,
    mend: (xml, { frames }) => squareFrame(xml, frames),
  },
  // The size of a font stands before its colour.
  {
    matches: /^xl\/styles\.xml$/,
    mend: (xml) => xml.replace(/(<color [^>]*\/>)(<sz [^>]*\/>)/g, "$2$1"),
  },
  {
    matches: /^docProps\/app\.xml$/,
    mend: (xml) =>
      xml.replace(/<Application>[^<]*<\/Application>/, `<Application>${APPLICATION}</Application>`),
  },
];
