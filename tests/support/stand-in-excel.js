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
    /** A cell is being typed in. */
    editing: false,
    /** The workbook's structure is protected. */
    protected: false,
    /** Parts that this host refuses: "charts", "conditionalFormats", "dataValidation", "pageLayout". */
    refuses: [],
    settings,
    /** Syncs that wrote with calculation and screen suspended, and those that wrote without. */
    quietSyncs: 0,
    loudSyncs: 0,
    runs: [],
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

  /** What the host finds wrong it tells at the sync, and then nothing of that batch is read. */
  let refusals = [];
  const refuse = (code, message) => refusals.push(fail(code, message));
  const invalid = () =>
    refuse("InvalidArgument", "The argument is invalid or missing or has an incorrect format.");
  let isQuiet = { calculation: false, screen: false };
  let wrote = false;

  const MAY_SPILL = /\bIRRIG\.[A-Z.]+\(|\bINDEX\(|\bFILTER\(|\bHSTACK\(/i;
  const isMergedAt = (sheet, key) =>
    Object.entries(sheet.look).some(
      ([address, log]) => log.merged && address.split(":")[0] === key,
    );
  const valueOf = (sheet, key, content) => {
    if (typeof content !== "string") return content;
    if (content.startsWith("'")) return content.slice(1);
    if (!content.startsWith("=")) return content;
    // The least or most of a range is one value.
    const bare = content
      .replace(/"[^"]*"/g, '""')
      .replace(/\b(?:MIN|MAX)\(INDEX\(\w+, 0, \d+\)\)/g, "0");
    return isMergedAt(sheet, key) && MAY_SPILL.test(bare) ? "#SPILL!" : content;
  };
  const SHEET_NAME = /^(?!')[^[\]:*?/\\]{1,31}(?<!')$/;
  const NAME = /^[\p{L}_\\][\p{L}\p{N}_.\\?]{0,254}$/u;
  const isName = (name) =>
    NAME.test(name) && !/^[A-Z]{1,3}[1-9]\d*$|^(?:R\d*C\d*|[RC])$|^(?:TRUE|FALSE)$/i.test(name);
  /** The cells that ='Sheet'!$A$1:$A$9 leads to. */
  const lead = (formula) => {
    const match =
      /^=(?:'((?:[^']|'')+)'|([A-Za-z_]\w*))!(\$?[A-Z]+\$?\d+(?::\$?[A-Z]+\$?\d+)?)$/.exec(formula);
    if (!match) return undefined;
    const name = match[1]?.replace(/''/g, "'") ?? match[2];
    const sheet = state.sheets.find((one) => one.name.toUpperCase() === name.toUpperCase());
    return sheet && { sheet, address: match[3].replace(/\$/g, "") };
  };
  /** A typed list has 255 characters at most; a longer one leads to cells that are there. */
  const checkRule = (rule) => {
    const source = rule.list?.source;
    if (source === undefined) return;
    if (source.startsWith("=") ? !lead(source) : source.length > 255) invalid();
  };

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
  const lookOf = (log, path = "") => {
    const [part] = path.split(".");
    const checkPart = () => {
      if (state.refuses.includes(part)) invalid();
    };
    return new Proxy(() => undefined, {
      get: (_, name) => lookOf(log, `${path}.${String(name)}`),
      set: (_, name, value) => {
        checkPart();
        log[`${path}.${String(name)}`] = value;
        if (`${path}.${String(name)}` === "dataValidation.rule") checkRule(value);
        wrote = true;
        return true;
      },
      apply: (_, __, args) => {
        checkPart();
        log[path] = args;
        if (path === "pageLayout.setPrintArea") {
          const isArea = (part) => /^[A-Z]+[1-9]\d*:[A-Z]+[1-9]\d*$/.test(part);
          if (!args[0].split(",").every(isArea)) invalid();
        }
        return lookOf(log, path);
      },
    });
  };

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
        conditionalFormats: {
          add: () => {
            if (state.refuses.includes("conditionalFormats")) invalid();
            const rule = {};
            (sheet.rules ??= []).push({ address, rule });
            return { custom: lookOf(rule, "custom") };
          },
        },
        untrack: () => undefined,
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
              wrote = true;
              if (content === "") delete sheet.cells[key];
              else sheet.cells[key] = { content, value: valueOf(sheet, key, content) };
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
        text: () => grid((cell) => String(cell?.value ?? "")),
        rowCount: () => at.rows,
        columnCount: () => at.columns,
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
          rowCount: () => 0,
          columnCount: () => 0,
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
        getRangeByIndexes: (row, column, rows, columns) =>
          rangeOf(
            sheet,
            `${letters(column)}${row + 1}:${letters(column + columns - 1)}${row + rows}`,
          ),
        delete: () => (state.sheets = state.sheets.filter((other) => other !== sheet)),
        freezePanes: lookOf(sheet.settings, "freezePanes"),
        pageLayout: lookOf(sheet.settings, "pageLayout"),
        charts: { add: (...given) => chartOn(sheet, given) },
        write: (name, value) => (sheet.settings[name] = value),
      },
      {
        name: () => sheet.name,
        showGridlines: () => true,
        visibility: () => sheet.settings.visibility ?? "Visible",
        isNullObject: () => false,
      },
    );
  /** A chart whose series are named as the host names them: by a text, or by the cell that one leads to. */
  const chartOn = (sheet) => {
    if (state.refuses.includes("charts")) invalid();
    const drawn = { series: [], settings: {} };
    (sheet.charts ??= []).push(drawn);
    const seriesOf = () => {
      const one = { name: "" };
      drawn.series.push(one);
      const series = loadable(
        {
          write: (name, value) => (one[name] = value),
          setXAxisValues: (range) => (one.x = range.place()),
          setValues: (range) => (one.y = range.place()),
          format: lookOf(one, "format"),
        },
        {
          name: () => {
            const cell = settings.namesAreText ? undefined : lead(one.name);
            return cell ? String(cell.sheet.cells[cell.address]?.value ?? "") : one.name;
          },
          smooth: () => one.smooth,
        },
      );
      return series;
    };
    const look = lookOf(drawn.settings, "chart");
    return {
      title: look.title,
      axes: look.axes,
      legend: look.legend,
      plotArea: look.plotArea,
      setPosition: look.setPosition,
      series: { getItemAt: () => seriesOf(), add: () => seriesOf() },
    };
  };
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
    protection: loadable({}, { protected: () => state.protected }),
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
          if (!SHEET_NAME.test(name) || /^history$/i.test(name)) invalid();
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
          if (!isName(name)) throw fail("InvalidArgument", `The name is not valid: ${name}`);
          wrote = true;
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

  const application = {
    suspendApiCalculationUntilNextSync: () => (isQuiet.calculation = true),
    suspendScreenUpdatingUntilNextSync: () => (isQuiet.screen = true),
    calculate: () => (state.calculated = true),
  };
  const untilEdited = async () => {
    while (state.editing) await new Promise((resolve) => window.setTimeout(resolve, 20));
  };

  window.Excel = {
    run: async (...given) => {
      const batch = given.pop();
      const options = given[0] ?? {};
      state.runs.push(options);
      pending = [];
      refusals = [];
      return batch({
        workbook,
        application,
        sync: async () => {
          if (state.editing && !options.delayForCellEdit) {
            throw fail("InvalidOperationInCellEditMode", "Excel is in cell editing mode.");
          }
          await untilEdited();
          const reads = pending;
          const [refused] = refusals;
          if (wrote) state[isQuiet.calculation && isQuiet.screen ? "quietSyncs" : "loudSyncs"]++;
          pending = [];
          refusals = [];
          wrote = false;
          isQuiet = { calculation: false, screen: false };
          if (refused) throw refused;
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
