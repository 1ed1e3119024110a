/** The words of the pane. Functions' help comes from their comments. */
export const pane = {
  /** Said on every screen of a translation; nothing in English. */
  notice: "",
  language: "Language",
  title: "Fieldsum",
  tabs: {
    functions: "Functions",
    sheets: "Sheets",
    own: "Names",
    check: "Check",
    picture: "Picture",
  },
  loading: "Loading the functions…",
  loadFailed:
    "The functions could not be loaded. Check the connection to where the add-in is hosted, then close and open this pane.",
  outside:
    "This pane is not open in Excel, so nothing can be put into a workbook from here. The functions' help and examples work.",
  lacks: (what: readonly string[]) => `This Excel is too old for: ${what.join("; ")}.`,
  lacking: {
    functions:
      "the functions themselves (they need Microsoft 365, Excel on the web or a current Mac version)",
    cells: "reading and writing cells from this pane",
    validation: "lists and limits on the input cells of a new sheet",
    printing: "print settings of a new sheet",
    spills: "following a table that one formula fills",
  },
  hostError: (message: string) => `Excel says: ${message}`,
  errors: {
    cellEdit:
      "A cell is still being typed in. Press Enter or Escape there, then press the button again.",
    protectedSheet:
      "The sheet is protected. Choose Review, Unprotect Sheet, or go to another sheet, then try again.",
    accessDenied:
      "Excel allows no change here. Is the workbook read-only, in Protected View or protected? Choose Enable Editing, or save a copy, then try again.",
    WorkbookProtected:
      "The workbook's structure is protected, so no worksheet can be added. Choose Review, Protect Workbook to lift that, or open a new workbook.",
    SheetThere: "A worksheet of that name has just been added. Press the button again.",
    TooLarge: "That is more cells than a line has. Select the table itself.",
  },
  search: {
    label: "Search functions",
    placeholder: "A word, a unit or a task",
    count: (count: number) => (count === 1 ? "1 function" : `${count} functions`),
    none: "No function matches. Try another word: friction, pressure, hours, drain.",
  },
  page: {
    back: "All functions",
    example: "Try it",
    exampleHint:
      'Type values as in a formula: 50, "SI", {35,3.7;45,4.2}. In Excel a cell or a name such as B4 works too.',
    leftOut: "left out",
    result: "Result",
    cannotCompute: "This can't be worked out here. Insert it, and the sheet will.",
    unknownReference: (text: string) => `${text} is no cell or name of this sheet.`,
    insert: "Insert in the selected cell",
    arguments: "Arguments",
    optional: "optional",
    required: "required",
    gives: "Gives",
    how: "How it is worked out",
    source: "Source",
    errors: "Errors",
    cautions: "Before you work with this",
    choices: "Choices",
  },
  insert: {
    filled: (cell: string, content: string) => `${cell} already holds ${content}. Replace it?`,
    replace: "Replace",
    keep: "Keep what is there",
    done: (cell: string) => `Put into ${cell}.`,
    spills:
      "It fills cells below and to the right. Excel shows #SPILL! there instead of overwriting anything.",
    undo: "Undo",
    undone: (cell: string) => `${cell} is as it was.`,
    changedSince: (cell: string) => `${cell} has been changed since, so it was left alone.`,
  },
  sheets: {
    intro: "Each becomes new worksheets in this workbook. Nothing that is there is changed.",
    system: "Units of the sheet",
    us: "US units",
    si: "Metric units",
    add: "Add to this workbook",
    added: (names: readonly string[]) => `Added: ${names.join(", ")}.`,
    parts: {
      charts: "charts",
      checks: "colors of checks",
      limits: "lists and limits",
      printing: "print settings",
      frozenRows: "frozen rows",
    },
    refusedParts: (parts: readonly string[]) =>
      `The numbers are all there, but this Excel did not take: ${parts.join("; ")}.`,
    refused: (names: readonly string[]) =>
      `This Excel took none of these function names, and the Names page shows #NAME? in their place: ${names.join(", ")}.`,
  },
  own: {
    intro:
      "Fix some arguments of a function once and give the rest a short name of your own. The name is stored in this workbook.",
    untried: "Names made with LAMBDA need a current Microsoft 365 Excel.",
    oldBuild: (build: string) =>
      `This build of Excel (${build}) is older than those known to take the functions inside LAMBDA. It may refuse the name.`,
    noLambda:
      "This Excel has no LAMBDA, so it can't hold function names of your own. The name was not stored.",
    list: "Names in this workbook",
    empty: "None yet.",
    choose: "Function",
    fix: "Arguments to fix",
    fixHint: "Leave empty what you want to give each time. Text stands in quotes.",
    name: "Name",
    description: "Description",
    formula: "Formula of the name",
    use: "Use",
    save: "Store the name",
    change: "Change",
    remove: "Delete",
    cancel: "Cancel",
    removeSure: (name: string) => `Delete ${name}? Cells that use it will show #NAME?.`,
    stored: (name: string) => `${name} is stored.`,
    removed: (name: string) => `${name} is deleted.`,
    allFixed: "Leave at least one argument open.",
    badFixed: (argument: string) =>
      `${argument}: this is neither a number, a text in quotes, nor a cell.`,
    faults: {
      empty: "Give it a name.",
      "too long": "A name has at most 255 characters.",
      "first character": "A name begins with a letter, an underscore or a backslash.",
      characters: "A name holds letters, digits, periods and underscores only, no spaces.",
      "cell address": "This reads as the address of a cell. Choose another name.",
      "true or false": "TRUE and FALSE can't be names.",
      taken: "The workbook already has this name.",
      namespace: "Names under the add-in's own prefix are its functions.",
    },
  },
  check: {
    run: "Check this sheet",
    intro:
      "Finds the cells of the active sheet that use the functions, and lists those with an error or a check that is not OK.",
    none: (sheet: string) => `No cell of ${sheet} uses the functions.`,
    clean: (sheet: string, count: number) =>
      `${sheet}: ${count === 1 ? "1 cell uses" : `${count} cells use`} the functions. No errors, and every check is OK.`,
    found: (sheet: string, using: number, errors: number, warnings: number) =>
      `${sheet}: ${using} using the functions, ${errors} with an error, ${warnings} with a check that is not OK.`,
    errors: "Errors",
    warnings: "Checks that are not OK",
    goTo: (address: string) => `Go to ${address}`,
    ownMark: "Its message stands at the cell's own error mark.",
    differs: "Worked out again from its arguments it gives no error: recalculate the sheet.",
    spill: "Something stands where its table would go. Clear those cells.",
    name: "Excel does not know the function here yet. Enter these cells again with the button above; if that does not help, choose Home, Add-ins, Fieldsum, then try once more.",
    reenter: (count: number) =>
      count === 1 ? "Enter this cell again" : `Enter these ${count} cells again`,
    reentered: (count: number) =>
      count === 1 ? "1 cell was entered again." : `${count} cells were entered again.`,
    stillUnknown: (count: number) =>
      `${count === 1 ? "1 cell still shows" : `${count} cells still show`} #NAME?. Choose Home, Add-ins, Fieldsum, then try once more.`,
  },
  picture: {
    intro: "Select the table that LATERAL.PROFILE fills, or one cell of it.",
    draw: "Draw the selected line",
    notProfile: "The selection is not a table of LATERAL.PROFILE: its header row is missing.",
    noHeads: "The table has no heads.",
    copy: "Copy as image",
    copied: "The picture is on the clipboard.",
    copyFailed: "The picture could not be copied. Excel may not allow it here.",
    pressure: "Pressure along the line",
    flow: "Flow along the line",
    ground: "Ground",
    distance: "distance",
    pressureAxis: "pressure",
    flowAxis: "flow",
    linePressure: "line pressure",
    atNozzle: "at the nozzle",
    inTubing: "in the tubing",
    ofHead: "of each head",
    head: "head",
    line: "line",
    nozzle: "nozzle",
    table: "The numbers",
    describe: (heads: number, lowest: string, where: string, highest: string) =>
      `${heads} heads; nozzle pressure from ${lowest} at head ${where} to ${highest}.`,
  },
} as const;
