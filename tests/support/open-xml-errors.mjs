/* global console, process */
// What the Open XML SDK's validator finds in the workbooks named, as JSON: {path: [error, …]}. A
// process of its own: the validator is a module of the newer kind, and holds a runtime that ends with it.
import { readFileSync } from "node:fs";
import validate from "@ooxml-tools/validate";

const found = {};
for (const path of process.argv.slice(2)) {
  const errors = await validate(readFileSync(path), "xlsx", "Microsoft365");
  found[path] = errors.map(
    ({ id, description, path: place }) =>
      `${place?.partUri ?? ""} ${place?.xpath ?? ""} ${id}: ${description}`,
  );
}
console.log(JSON.stringify(found));
process.exit(0);
