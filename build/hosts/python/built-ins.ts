import type { Kind } from "./kinds";

/** Methods by the kind they belong to: the runtime's function that stands for each, or a piece of Python. */
export interface Method {
  /** The runtime's function, which takes the receiver first. */
  readonly runtime: string;
  /** Set where the first argument is a function that may take up to so many arguments. */
  readonly gives?: number;
  /** Where the count of what that function takes is handed over: behind this many arguments. */
  readonly countBehind?: number;
}

const visits = (runtime: string): Method => ({ runtime, gives: 3, countBehind: 1 });
const plain = (runtime: string): Method => ({ runtime });

const table = <T>(entries: Readonly<Record<string, T>>): ReadonlyMap<string, T> =>
  new Map(Object.entries(entries));

const LIST = table({
  map: visits("_map"),
  filter: visits("_filter"),
  some: visits("_some"),
  every: visits("_every"),
  find: visits("_find"),
  findIndex: visits("_findIndex"),
  forEach: visits("_forEach"),
  flatMap: visits("_flatMap"),
  reduce: { runtime: "_reduce", gives: 4, countBehind: 2 },
  reduceRight: { runtime: "_reduceRight", gives: 4, countBehind: 2 },
  flat: plain("_flat"),
  slice: plain("_slice"),
  subarray: plain("_slice"),
  splice: plain("_splice"),
  push: plain("_push"),
  pop: plain("_pop"),
  shift: plain("_shift"),
  unshift: plain("_unshift"),
  join: plain("_join"),
  reverse: plain("_reverse"),
  sort: { runtime: "_sort", gives: 2 },
  fill: plain("_fill"),
  concat: plain("_concat"),
  includes: plain("_includes"),
  indexOf: plain("_indexOf"),
  lastIndexOf: plain("_lastIndexOf"),
  at: plain("_from_end"),
  entries: plain("_pairs"),
  keys: plain("_keys"),
  values: plain("_values"),
});

const TEXT = table({
  toLowerCase: plain("str.lower"),
  toUpperCase: plain("str.upper"),
  trim: plain("_trim"),
  trimEnd: plain("_trimEnd"),
  trimStart: plain("_trimStart"),
  startsWith: plain("str.startswith"),
  endsWith: plain("str.endswith"),
  includes: plain("str.__contains__"),
  indexOf: plain("str.find"),
  lastIndexOf: plain("str.rfind"),
  slice: plain("_text_slice"),
  split: plain("_split"),
  match: plain("_match"),
  replace: { runtime: "_replace", gives: 9, countBehind: 2 },
  codePointAt: plain("_codePointAt"),
  padStart: plain("_padStart"),
  padEnd: plain("_padEnd"),
  repeat: plain("_repeat"),
  localeCompare: plain("_localeCompare"),
  toString: plain("_str"),
});

const NUMBER = table({
  toFixed: plain("_toFixed"),
  toPrecision: plain("_toPrecision"),
  toExponential: plain("_toExponential"),
  toString: plain("_str"),
});

const MAP = table({
  get: plain("dict.get"),
  set: plain("_map_set"),
  has: plain("dict.__contains__"),
  delete: plain("_drop"),
  clear: plain("_clear"),
  keys: plain("_keys"),
  values: plain("_values"),
  entries: plain("_pairs"),
  forEach: { runtime: "_for_each_pair", gives: 3, countBehind: 1 },
});

const SET = table({
  add: plain("_set_add"),
  has: plain("dict.__contains__"),
  delete: plain("_drop"),
  clear: plain("_clear"),
  keys: plain("_keys"),
  values: plain("_values"),
});

const PATTERN = table({ test: plain("_test") });

export const METHODS: Partial<Readonly<Record<Kind, ReadonlyMap<string, Method>>>> = {
  array: LIST,
  string: TEXT,
  number: NUMBER,
  map: MAP,
  set: SET,
  regexp: PATTERN,
};

/** Objects of the language itself; their members stand in the runtime as _Math_max and so on. */
export const NAMESPACES = new Set(["Math", "Number", "Array", "Object", "JSON"]);

/** Functions and values of the language itself. */
export const GLOBALS = table({
  undefined: "None",
  NaN: "_nan",
  Infinity: "_inf",
  Number: "_Number",
  String: "_String",
  Boolean: "_Boolean",
  BigInt: "_BigInt",
  isFinite: "_isFinite",
  isNaN: "_isNaN",
  Error: "_Error",
  TypeError: "_Error",
  RangeError: "_Error",
});

/** What is made with `new`. */
export const CONSTRUCTORS = table({
  Map: "_Map",
  Set: "_Set",
  Array: "_array_of",
  Float64Array: "_typed_array",
  Int32Array: "_typed_array",
  Uint32Array: "_typed_array",
  Error: "_Error",
  TypeError: "_Error",
  RangeError: "_Error",
});

/**
 * Functions that the runtime has in its own way, by file and name: what they do with the bits of a
 * number has no place in Python. The names that only they use are left out with them.
 */
export const STAND_INS: Readonly<
  Record<string, { readonly file: string; readonly leftOut: readonly string[] }>
> = {
  hashOf: { file: "src/boundary/memory.ts", leftOut: ["double", "halves", "hashFrom", "mixed"] },
};
