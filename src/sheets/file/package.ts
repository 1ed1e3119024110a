import { strFromU8, strToU8, unzipSync, type Zippable, zipSync } from "fflate";
import { writeXlsx } from "hucre";
import { type FileParts, mendChart, squareFrame } from "./workbook-file";

const APPLICATION = "Fieldsum";

export interface PackageOptions {
  readonly title: string;
  readonly description: string;
  readonly date: Date;
  /** Texts for the page that opens the file again. */
  readonly custom?: Readonly<Record<string, string>>;
}

/** Writes the workbook's package and mends what its writer does not let one say. */
export async function writePackage(
  parts: FileParts,
  { title, description, date, custom }: PackageOptions,
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
      created: date,
      modified: date,
      ...(custom !== undefined && { custom }),
    },
  });
  const entries = unzipSync(written);
  const mended: Zippable = {};
  for (const [path, bytes] of Object.entries(entries)) {
    const mend = mends.find(({ matches }) => matches.test(path))?.mend;
    mended[path] = [
      mend === undefined ? bytes : strToU8(mend(strFromU8(bytes), parts)),
      { level: 9, mtime: date },
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
  // What a formula gives is an error there, and not a text that reads like one.
  {
    matches: /^xl\/worksheets\/sheet\d+\.xml$/,
    mend: (xml) =>
      xml.replace(
        /(<c [^>]*)t="str"([^>]*>(?:<f[^>]*\/>|<f[^>]*>[^<]*<\/f>)<v>#(?:VALUE!|N\/A|NAME\?|DIV\/0!|REF!|NUM!|NULL!|SPILL!|CALC!)<\/v>)/g,
        '$1t="e"$2',
      ),
  },
  {
    matches: /^xl\/drawings\/drawing\d+\.xml$/,
    mend: (xml, { frames }) => squareFrame(xml, frames),
  },
  // The size of a font stands before its color.
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
