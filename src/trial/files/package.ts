import { strFromU8, unzipSync, zipSync } from "fflate";

/** Why a file is not opened, in words for the one who chose it. */
export class Refused extends Error {}

const MOST_BYTES = 8e6;
const MOST_UNPACKED = 80e6;
const MOST_PARTS = 500;

/**
 * Looks into a file before anything reads it: nothing that unpacks to more than a workbook of ours
 * ever would, no macros, no definitions of entities. Gives the same parts, packed anew.
 */
export function checkedPackage(bytes: Uint8Array): Uint8Array {
  if (bytes.length > MOST_BYTES)
    throw new Refused("The file is larger than 8 MB; a workbook of these pages is far smaller.");
  if (bytes[0] !== 0x50 || bytes[1] !== 0x4b)
    throw new Refused(
      "The file is no .xlsx workbook. One that is protected by a password is not opened either.",
    );
  let unpacked = 0;
  let count = 0;
  let parts: Record<string, Uint8Array>;
  try {
    parts = unzipSync(bytes, {
      filter: ({ originalSize, name }) => {
        unpacked += originalSize;
        count += 1;
        if (unpacked > MOST_UNPACKED || count > MOST_PARTS)
          throw new Refused("The file unpacks to far more than a workbook of these pages.");
        return /\.(xml|rels)$/i.test(name) || /vbaProject/i.test(name);
      },
    });
  } catch (error) {
    if (error instanceof Refused) throw error;
    throw new Refused("The file is damaged: it cannot be unpacked.");
  }
  const kept = new Map<string, Uint8Array>();
  for (const [name, part] of Object.entries(parts)) {
    if (/vbaProject/i.test(name)) throw new Refused("The file holds macros; it is not opened.");
    if (/<!(?:DOCTYPE|ENTITY)/i.test(strFromU8(part)))
      throw new Refused("The file defines entities, which no workbook does; it is not opened.");
    kept.set(name, part);
  }
  if (!kept.has("xl/workbook.xml")) throw new Refused("The file holds no workbook.");
  return zipSync(Object.fromEntries(kept), { level: 0 });
}
