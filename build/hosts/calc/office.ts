import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { dist } from "../../settings";

export const EXTENSION = join(dist, "hosts", "fieldsum.oxt");

/** The folder of the workbooks for this program. */
export const WORKBOOKS = join(dist, "hosts", "calc");

/** Debian's own Python is the one that has the office's modules. */
export const OFFICE_PYTHON = "/usr/bin/python3";

export function hasOffice(): boolean {
  return (
    spawnSync("soffice", ["--version"]).status === 0 &&
    spawnSync(OFFICE_PYTHON, ["-c", "import uno"]).status === 0
  );
}
