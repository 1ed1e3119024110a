import { readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { root } from "../../settings";

/** A library whose script is translated along with ours, and how its exports are reached. */
interface Library {
  readonly file: string;
  /** A script that hands its exports to `module.exports`, instead of a module with exports. */
  readonly handsOver: boolean;
}

/** By the name that an import gives. A library that is not listed is refused. */
const LIBRARIES: Readonly<Record<string, Library>> = {
  "geographiclib-geodesic": {
    file: "geographiclib-geodesic/geographiclib-geodesic.js",
    handsOver: true,
  },
  delaunator: { file: "delaunator/index.js", handsOver: false },
  // The one test of it that the triangulation uses.
  "robust-predicates": { file: "robust-predicates/esm/orient2d.js", handsOver: false },
};

export interface Program {
  readonly checker: ts.TypeChecker;
  /** Every file that the entry needs, in the order in which a script engine runs them. */
  readonly files: readonly ts.SourceFile[];
  /** The file that an import or export leads to; undefined when it leads to types alone. */
  readonly fileOf: (specifier: ts.Expression) => ts.SourceFile | undefined;
  /** Whether the file is a library's that hands its exports over. */
  readonly handsOver: (file: ts.SourceFile) => boolean;
}

/** The folders of the packages whose scripts are translated. */
export function libraryFolders(): string[] {
  return Object.keys(LIBRARIES).map((name) => join(root, "node_modules", name));
}

function libraryPath(name: string): string {
  return join(root, "node_modules", LIBRARIES[name].file);
}

/** The typed syntax trees of the entry and of all that it needs. */
export function readProgram(entry: string): Program {
  const { config } = ts.readConfigFile(join(root, "tsconfig.json"), (path) =>
    readFileSync(path, "utf8"),
  ) as { config: { compilerOptions: object } };
  const { options } = ts.parseJsonConfigFileContent(
    { compilerOptions: config.compilerOptions, files: [] },
    ts.sys,
    root,
  );
  const names = Object.keys(LIBRARIES);
  const program = ts.createProgram([entry], {
    ...options,
    allowJs: true,
    maxNodeModuleJsDepth: 3,
    types: ["custom-functions-runtime"],
    // The script itself in place of its declarations.
    paths: Object.fromEntries(names.map((name) => [name, [libraryPath(name)]])),
  });
  const checker = program.getTypeChecker();
  const fileOf = (specifier: ts.Expression) => {
    const symbol = checker.getSymbolAtLocation(specifier);
    const declared = symbol?.declarations?.find(ts.isSourceFile);
    if (declared !== undefined) return declared;
    const library = ts.isStringLiteral(specifier) && names.includes(specifier.text);
    return library ? program.getSourceFile(libraryPath(specifier.text)) : undefined;
  };
  const first = program.getSourceFile(entry);
  if (first === undefined) throw new Error(`${entry} is not there`);
  const handing = new Set(names.filter((name) => LIBRARIES[name].handsOver).map(libraryPath));
  return {
    checker,
    files: inOrder(first, fileOf),
    fileOf,
    handsOver: ({ fileName }) => handing.has(fileName),
  };
}

/** What a file imports runs before the file itself. */
function inOrder(
  entry: ts.SourceFile,
  fileOf: (specifier: ts.Expression) => ts.SourceFile | undefined,
): ts.SourceFile[] {
  const files: ts.SourceFile[] = [];
  const seen = new Set<ts.SourceFile>();
  const visit = (file: ts.SourceFile) => {
    if (seen.has(file)) return;
    seen.add(file);
    for (const statement of file.statements) {
      if (!ts.isImportDeclaration(statement) && !ts.isExportDeclaration(statement)) continue;
      if (statement.moduleSpecifier === undefined || isForTypes(statement)) continue;
      const needed = fileOf(statement.moduleSpecifier);
      if (needed === undefined) {
        throw new Error(`${file.fileName}: ${statement.getText()}: no library that is known`);
      }
      visit(needed);
    }
    files.push(file);
  };
  visit(entry);
  return files;
}

/** Whether nothing of an import is left when the types are gone. */
export function isForTypes(statement: ts.ImportDeclaration | ts.ExportDeclaration): boolean {
  if (ts.isExportDeclaration(statement)) return statement.isTypeOnly;
  const clause = statement.importClause;
  if (clause === undefined) return false;
  if (clause.phaseModifier === ts.SyntaxKind.TypeKeyword) return true;
  const bindings = clause.namedBindings;
  return (
    clause.name === undefined &&
    bindings !== undefined &&
    ts.isNamedImports(bindings) &&
    bindings.elements.every((element) => element.isTypeOnly)
  );
}
