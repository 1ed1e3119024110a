import ts from "typescript";

/** What a value can be when the program runs, as far as the translation must know. */
export type Kind =
  | "number"
  | "string"
  | "boolean"
  | "bigint"
  | "nothing"
  | "array"
  | "map"
  | "set"
  | "regexp"
  | "function"
  | "object"
  | "anything";

const ARRAYS = new Set([
  "Array",
  "ReadonlyArray",
  "Float64Array",
  "Int32Array",
  "Uint32Array",
  "RegExpMatchArray",
  "ArrayLike",
]);

/** The kinds of an expression, from the checker's type of it. */
export class Kinds {
  private readonly known = new Map<ts.Type, ReadonlySet<Kind>>();

  constructor(private readonly checker: ts.TypeChecker) {}

  of(node: ts.Node): ReadonlySet<Kind> {
    return this.ofType(this.checker.getTypeAtLocation(node));
  }

  ofType(type: ts.Type): ReadonlySet<Kind> {
    const known = this.known.get(type);
    if (known !== undefined) return known;
    // A type that leads back to itself is an object of some kind.
    this.known.set(type, new Set(["anything"]));
    const kinds = this.compute(type);
    this.known.set(type, kinds);
    return kinds;
  }

  private compute(type: ts.Type): ReadonlySet<Kind> {
    const { flags } = type;
    if (type.isUnion()) return new Set(type.types.flatMap((part) => [...this.ofType(part)]));
    if (flags & ts.TypeFlags.NumberLike) return new Set(["number"]);
    if (flags & ts.TypeFlags.StringLike) return new Set(["string"]);
    if (flags & ts.TypeFlags.BooleanLike) return new Set(["boolean"]);
    if (flags & ts.TypeFlags.BigIntLike) return new Set(["bigint"]);
    if (flags & (ts.TypeFlags.Undefined | ts.TypeFlags.Null | ts.TypeFlags.Void)) {
      return new Set(["nothing"]);
    }
    if (flags & ts.TypeFlags.Never) return new Set();
    if (flags & ts.TypeFlags.TypeParameter) {
      const constraint = this.checker.getBaseConstraintOfType(type);
      return constraint === undefined || constraint === type
        ? new Set(["anything"])
        : this.ofType(constraint);
    }
    if (type.isIntersection()) {
      const parts = type.types.map((part) => this.ofType(part));
      return parts.find((kinds) => !kinds.has("object") && !kinds.has("anything")) ?? parts[0];
    }
    if (flags & ts.TypeFlags.Object) return new Set([this.ofObject(type)]);
    return new Set(["anything"]);
  }

  private ofObject(type: ts.Type): Kind {
    if (this.checker.isArrayType(type) || this.checker.isTupleType(type)) return "array";
    const name = type.symbol?.name ?? "";
    if (ARRAYS.has(name)) return "array";
    if (name === "Map" || name === "ReadonlyMap") return "map";
    if (name === "Set" || name === "ReadonlySet") return "set";
    if (name === "RegExp") return "regexp";
    if (type.getCallSignatures().length > 0) return "function";
    const members = type.getProperties().length + type.getStringIndexType.length;
    return members === 0 && type.isClassOrInterface() ? "anything" : "object";
  }
}

/** Whether a value is surely of these kinds and of no other. */
export function isOnly(kinds: ReadonlySet<Kind>, ...allowed: readonly Kind[]): boolean {
  return kinds.size > 0 && [...kinds].every((kind) => allowed.includes(kind));
}
