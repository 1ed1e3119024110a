/**
 * What another language's words must have: every key of the English ones, a text for a text, and
 * for a text with places to fill a function of the same places.
 */
export type Words<T> = T extends string
  ? string
  : T extends (...given: infer Given) => string
    ? (...given: Given) => string
    : { readonly [Key in keyof T]: Words<T[Key]> };
