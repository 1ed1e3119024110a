/** The words of the static pages: list of functions, a function's page, support. */
export const reference = {
  /** Said on every page of a translation; nothing in English. */
  notice: "",
  nav: {
    label: "Pages",
    trial: "Trial sheets",
    functions: "Functions",
    sources: "Sources",
    support: "Support and privacy",
  },
  list: {
    title: "Fieldsum: functions",
    description: "Every cell function, by family and by what it answers.",
    heading: (count: number) => `${count} functions`,
    question: "What do you want to know?",
    placeholder: "how long do I run a set?",
    none: "No function answers to that. Try fewer words, or a unit such as gpm.",
    found: (some: number, all: number) => `${some} of ${all} functions`,
  },
  page: {
    caution: (title: string) => `Caution: ${title}`,
    tryIt: "Try it",
    optional: "(optional)",
    blank: "blank",
    arguments: "Arguments",
    argument: "argument",
    whatItIs: "what it is",
    mayBeBlank: "May be blank.",
    takesRange: "Takes a range.",
    oneOf: (choices: string) => `One of ${choices}.`,
    method: "Method and limits",
    source: "Source:",
    checked: "How it is checked",
    errors: "Errors",
    family: "Of the same family",
    result: "Result",
    notLoaded: "The functions could not be loaded, so the example stands still.",
    howToWrite:
      "Write a number, a text in double quotes, TRUE or FALSE, or rows in braces: {35,3.7;45,4.2}",
  },
} as const;
