import { hasOffice } from "../../build/hosts/calc/office";

const isThere = hasOffice();

/** A test in the real program, where it is there. Without it this is said, and nothing of it is claimed. */
export function withOffice(name: string, run: () => void | Promise<void>): void {
  if (isThere) test(name, async () => run());
  else console.log(`no LibreOffice here: ${name}`);
}
