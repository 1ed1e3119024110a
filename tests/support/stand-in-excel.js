/* A stand-in for the host's script, as far as the pane uses it: a workbook in memory behind the same
 * batch rules (a property can be read only after load and sync). Tests reach it as window.standIn. */
(() => {
  const settings = Object.assign(
    { platform: "PC", version: "16.0.19500.20000", background: "#FFFFFF", lambda: true, sets: {} },
    window.standInSettings,
  );
  const state = {
    sheets: [{ name: "Sheet1", cells: {}, look: {}, settings: {} }],
    names: [],
    active: "Sheet1",
    selection: { sheet: "Sheet1", address: "B4" },
    fail: undefined,
    settings,
  };
  window.standIn = state;

  const fail = (code, message) => Object.assign(new Error(message), { code });
  const sheetNamed = (name) => {
    const found = state.sheets.find((sheet) => sheet.name.toUpperCase() === name.toUpperCase());
    if (!found) throw fail("ItemNotFound", `The requested resource doesn't exist: ${name}`);
    return found;
  };
  const letters = (column) =>
    (column >= 26 ? letters(Math.floor(column / 26) - 1) : "") +
    String.fromCharCode(65 + (column % 26));
  const parse = (address) => {
    const part = (text) => {
      const match = /^\$?([A-Z]+)\$?(\d+)$/.exec(text);
      if (!match) throw fail("InvalidArgument", `The argument is invalid or missing: ${text}`);
      let column = 0;
      for (const letter of match[1]) column = column * 26 + letter.charCodeAt(0) - 64;
      return { row: Number(match[2]) - 1, column: column - 1 };
    };
    const [from, to = from] = address.split(":").map(part);
    return {
      row: from.row,
      column: from.column,
      rows: to.row - from.row + 1,
      columns: to.column - from.column + 1,
    };
  };
  const cellAt = (sheet, row, column) => sheet.cells[`${letters(column)}${row + 1}`];

  /** Reads are answered at sync; a property that was not loaded throws, as the host's does. */
  let pending = [];
  const loadable = (object, readers) => {
    const loaded = {};
    for (const name of Object.keys(readers)) {
      Object.defineProperty(object, name, {
        enumerable: true,
        configurable: true,
        get() {
          if (!(name in loaded))
            throw fail("PropertyNotLoaded", `The property '${name}' is not available.`);
          return loaded[name];
        },
        set(value) {
          object.write?.(name, value);
        },
      });
    }
    object.load = (wanted) => {
      const list = wanted.split(",").map((name) => name.trim().split("/")[0]);
      pending.push(() => {
        for (const name of new Set(list)) loaded[name] = readers[name]();
      });
      return object;
    };
    return object;
  };
  /** Takes anything that only changes looks, and remembers it. */
  const lookOf = (log, path = "") =>
    new Proxy(() => undefined, {
      get: (_, name) => lookOf(log, `${path}.${String(name)}`),
      set: (_, name, value) => {
        log[`${path}.${String(name)}`.slice(1)] = value;
        return true;
      },
      apply: (_, __, args) => {
        log[path.slice(1)] = args;
        return lookOf(log, path);
      },
    });

  const rangeOf = (sheet, address) => {
    const whole = /^[A-Z]+:[A-Z]+$|^\d+:\d+$/.test(address);
    const at = whole ? { row: 0, column: 0, rows: 1, columns: 1 } : parse(address);
    const grid = (read) =>
      Array.from({ length: at.rows }, (_, i) =>
        Array.from({ length: at.columns }, (_, j) =>
          read(cellAt(sheet, at.row + i, at.column + j)),
        ),
      );
    const log = (sheet.look[address] ??= {});
    const range = loadable(
      {
        format: lookOf(log, "format"),
        dataValidation: lookOf(log, "dataValidation"),
        merge: () => (log.merged = true),
        select: () => (state.selection = { sheet: sheet.name, address }),
        place: () => ({ sheet: sheet.name, address }),
        getSpillingToRange: () => range,
        getSurroundingRegion: () => rangeOf(sheet, sheet.region ?? address),
        write: (name, value) => {
          if (name !== "formulas") return void (log[name] = value);
          value.forEach((row, i) =>
            row.forEach((content, j) => {
              const key = `${letters(at.column + j)}${at.row + i + 1}`;
              if (content === "") delete sheet.cells[key];
              else sheet.cells[key] = { content, value: content };
            }),
          );
        },
      },
      {
        address: () =>
          /[^A-Za-z0-9]/.test(sheet.name)
            ? `'${sheet.name.replace(/'/g, "''")}'!${address}`
            : `${sheet.name}!${address}`,
        formulas: () => grid((cell) => cell?.content ?? ""),
        values: () => grid((cell) => cell?.value ?? ""),
        cellCount: () => at.rows * at.columns,
        rowIndex: () => at.row,
        columnIndex: () => at.column,
        isNullObject: () => false,
        numberFormat: () => [[]],
      },
    );
    return range;
  };
  const usedRange = (sheet) => {
    const keys = Object.keys(sheet.cells);
    if (keys.length === 0)
      return loadable(
        {},
        {
          isNullObject: () => true,
          formulas: () => [],
          values: () => [],
          rowIndex: () => 0,
          columnIndex: () => 0,
        },
      );
    const places = keys.map(parse);
    const low = (pick) => Math.min(...places.map(pick));
    const high = (pick) => Math.max(...places.map(pick));
    return rangeOf(
      sheet,
      `${letters(low((p) => p.column))}${low((p) => p.row) + 1}:${letters(high((p) => p.column))}${high((p) => p.row) + 1}`,
    );
  };
  const worksheet = (sheet) =>
    loadable(
      {
        getRange: (address) => {
          const named = state.names.find(
            (name) => name.name.toUpperCase() === address.toUpperCase() && name.range,
          );
          return named
            ? rangeOf(sheetNamed(named.range.sheet), named.range.address)
            : rangeOf(sheet, address.toUpperCase());
        },
        getUsedRangeOrNullObject: () => usedRange(sheet),
        activate: () => (state.active = sheet.name),
        delete: () => (state.sheets = state.sheets.filter((other) => other !== sheet)),
        freezePanes: lookOf(sheet.settings, "freezePanes"),
        pageLayout: lookOf(sheet.settings, "pageLayout"),
        charts: lookOf(sheet.settings, "charts"),
        write: (name, value) => (sheet.settings[name] = value),
      },
      { name: () => sheet.name, showGridlines: () => true, isNullObject: () => false },
    );
  const nothing = () => loadable({}, { isNullObject: () => true });
  const nameItem = (entry) =>
    loadable(
      { delete: () => (state.names = state.names.filter((name) => name !== entry)) },
      {
        isNullObject: () => false,
        value: () => entry.value,
        name: () => entry.name,
        formula: () => entry.formula,
        comment: () => entry.comment,
      },
    );
  const workbook = {
    getActiveCell: () =>
      rangeOf(sheetNamed(state.selection.sheet), state.selection.address.split(":")[0]),
    getSelectedRange: () => rangeOf(sheetNamed(state.selection.sheet), state.selection.address),
    worksheets: loadable(
      {
        getItem: (name) => worksheet(sheetNamed(name)),
        getItemOrNullObject: (name) =>
          state.sheets.some((sheet) => sheet.name.toUpperCase() === name.toUpperCase())
            ? worksheet(sheetNamed(name))
            : nothing(),
        getActiveWorksheet: () => worksheet(sheetNamed(state.active)),
        add: (name) => {
          if (state.sheets.some((sheet) => sheet.name.toUpperCase() === name.toUpperCase()))
            throw fail(
              "ItemAlreadyExists",
              "A resource with the same name or identifier already exists.",
            );
          state.sheets.push({ name, cells: {}, look: {}, settings: {} });
          return worksheet(sheetNamed(name));
        },
      },
      { items: () => state.sheets.map(({ name }) => ({ name })) },
    ),
    names: loadable(
      {
        getItem: (name) => {
          const entry = state.names.find(
            (other) => other.name.toUpperCase() === name.toUpperCase(),
          );
          if (!entry) throw fail("ItemNotFound", "The requested resource doesn't exist.");
          return nameItem(entry);
        },
        getItemOrNullObject: (name) => {
          const entry = state.names.find(
            (other) => other.name.toUpperCase() === name.toUpperCase(),
          );
          return entry ? nameItem(entry) : nothing();
        },
        add: (name, reference, comment = "") => {
          if (state.fail) throw fail("InvalidArgument", state.fail);
          if (state.names.some((other) => other.name.toUpperCase() === name.toUpperCase()))
            throw fail("ItemAlreadyExists", "A name of this kind already exists.");
          const isText = typeof reference === "string";
          const lambda = isText && /^=LAMBDA\(/i.test(reference);
          const entry = {
            name,
            comment,
            formula: isText ? reference : "=range",
            value: lambda && !settings.lambda ? "#NAME?" : "",
            range: isText ? undefined : reference.place?.(),
          };
          state.names.push(entry);
          return nameItem(entry);
        },
      },
      {
        items: () => state.names.map(({ name, formula, comment }) => ({ name, formula, comment })),
      },
    ),
  };

  window.Excel = {
    run: async (batch) => {
      pending = [];
      return batch({
        workbook,
        sync: async () => {
          const reads = pending;
          pending = [];
          for (const read of reads) read();
        },
      });
    },
  };
  window.Office = {
    HostType: { Excel: "Excel" },
    onReady: async () => ({ host: "Excel", platform: settings.platform }),
    context: {
      diagnostics: { platform: settings.platform, version: settings.version },
      officeTheme: { bodyBackgroundColor: settings.background },
      requirements: {
        isSetSupported: (set, version) => settings.sets[`${set} ${version}`] ?? true,
      },
    },
  };
})();
