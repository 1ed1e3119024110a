import type { ReadyMadeSheet } from "../../sheets/kit/definition";
import { screenSaid, spokenLanguage } from "../../words/spoken";
import { books, fetchAllBooks, shelves } from "../books";
import { make } from "../../screen/dom";
import { ask, say } from "../kept/ask";
import { carryPlan } from "../kept/carry";
import { noChanges, Unreadable } from "../kept/changes";
import { type Desk, usualName } from "../kept/desk";
import { placeOf } from "../kept/inputs";
import { writeRoute } from "../kept/route";
import type { Entry } from "../kept/work-bar";
import type { SheetValues } from "../sheet-values";

export interface Filing {
  readonly desk: Desk;
  readonly namespace: string;
  /** The page of the workbook that is in front. */
  page(): string;
  /** The values once everything has been worked out. */
  settled(): Promise<SheetValues>;
  tell(text: string): void;
}

/** What comes in and goes out: files, links, the ready-made workbooks. Nothing leaves unasked. */
export function filing(with_: Filing): Entry[] {
  return [
    { label: "Use this plan in…", act: () => usePlan(with_) },
    { label: "Save as .xlsx", act: () => save(with_, false) },
    { label: "Save a copy with values only", act: () => save(with_, true) },
    { label: "Open .xlsx…", act: () => open(with_) },
    { label: "Copy link", act: () => link(with_) },
    { label: "Ready-made workbooks…", act: () => downloads() },
    { label: "Print", act: () => window.print() },
  ];
}

/** The same field typed once: the plan goes into another workbook, in the units that it has. */
async function usePlan({ desk, settled, tell }: Filing): Promise<void> {
  await attempt("Carrying the plan over", async () => {
    desk.handOver();
    await fetchAllBooks();
    const values = await settled();
    const { sheet, system, pages, changes, piece } = desk.open;
    const others = books().filter(({ id }) => id !== sheet.id);
    const known = desk.store.list().pieces.filter((one) => one.system === system);
    const answer = await ask({
      title: "Use this plan in…",
      text: [
        "Every input that both workbooks have holds the same there: the line, its tubing, chart, main and pump, the field and the day. The rest of the other workbook stays as it is.",
      ],
      choices: others.flatMap(({ id, title }) => [
        { choice: `new ${id}`, label: `${title}: a new piece of work` },
        ...known
          .filter((one) => one.sheet === id)
          .slice(0, MOST_KNOWN)
          .map((one) => ({
            choice: one.id,
            label: `${title}: bring "${one.name}" up to this plan`,
          })),
      ]),
      otherwise: "Leave it",
    });
    if (answer === undefined) return;
    const existing = known.find(({ id }) => id === answer.choice);
    const target = others.find(({ id }) => id === existing?.sheet || answer.choice === `new ${id}`);
    if (target === undefined) return;
    const from = {
      pages,
      contents: changes.contents,
      shown: (key: string) => {
        const { value, error } = values.read(placeOf(key));
        return error === undefined ? value : undefined;
      },
    };
    if (existing === undefined) desk.openSample(target, system);
    else if (!desk.openPiece(existing.id)) return;
    const before = desk.open.changes;
    const { contents, left } = carryPlan(from, {
      pages: desk.open.pages,
      contents: before.contents,
    });
    if (existing === undefined)
      desk.begin(target, system, `${piece?.name ?? "Bluestem Flat"}: ${target.title}`, {
        ...noChanges,
        contents,
      });
    else {
      desk.change({ ...before, contents });
      desk.openPiece(existing.id);
    }
    tell(
      left.length === 0
        ? `The plan of "${piece?.name ?? "the sample"}" stands here now.`
        : `The plan stands here now, without what was in error there: ${left.join(", ")}.`,
    );
  });
}

/** Of each workbook, the pieces of work that are offered to bring up to the plan. */
const MOST_KNOWN = 3;

/** Told when something could not be done at all. */
async function attempt(what: string, act: () => Promise<void>): Promise<void> {
  try {
    await act();
  } catch (error) {
    console.error(error);
    await say(`${what} did not work`, error instanceof Error ? error.message : String(error));
  }
}

async function save({ desk, settled, namespace, tell }: Filing, valuesOnly: boolean) {
  await attempt("Saving the file", async () => {
    tell("The file is being written…");
    desk.handOver();
    const [{ saveWorkbook }, values] = await Promise.all([import("./save"), settled()]);
    const { sheet, system, pages, changes, piece } = desk.open;
    const name = piece?.name ?? (desk.open.given === undefined ? sheet.title : usualName(sheet));
    const bytes = await saveWorkbook({
      sheet,
      system,
      pages,
      changes,
      name,
      namespace,
      read: (place) => values.read(place),
      date: new Date(),
      valuesOnly,
      language: spokenLanguage(),
    });
    const file = `${fileNameOf(name)}${valuesOnly ? `, ${screenSaid("values only")}` : ""}.xlsx`;
    const address = URL.createObjectURL(
      new Blob([new Uint8Array(bytes)], {
        type: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
      }),
    );
    make("a", { href: address, download: file }).click();
    setTimeout(() => URL.revokeObjectURL(address), 60000);
    tell(
      valuesOnly
        ? `Saved as ${file}: numbers and words without formulas, for anyone. It cannot be opened here again.`
        : `Saved as ${file}. It opens here again, and in Excel with the add-in.`,
    );
  });
}

/** No sign that a file system takes for something else. */
function fileNameOf(name: string): string {
  // eslint-disable-next-line no-control-regex
  const plain = name.replace(/[\\/:*?"<>|\u0000-\u001f]/g, " ").replace(/\s+/g, " ");
  return (
    plain
      .trim()
      .replace(/^\.+|\.+$/g, "")
      .slice(0, 80) || "workbook"
  );
}

function spokenBook(sheet: ReadyMadeSheet): ReadyMadeSheet {
  return books().find(({ id }) => id === sheet.id) ?? sheet;
}

function open({ desk, namespace, tell }: Filing): void {
  const chooser = make("input", { type: "file", accept: ".xlsx", hidden: true });
  chooser.addEventListener("cancel", () => chooser.remove());
  chooser.addEventListener("change", () => {
    const file = chooser.files?.[0];
    chooser.remove();
    if (file === undefined) return;
    void attempt("Opening the file", async () => {
      const [{ openWorkbook }, { Refused }] = await Promise.all([
        import("./open"),
        import("./package"),
      ]);
      try {
        const bytes = new Uint8Array(await file.arrayBuffer());
        const opened = await openWorkbook(bytes, file.name, await shelves(), namespace);
        desk.begin(spokenBook(opened.sheet), opened.system, opened.name, opened.changes);
        tell(
          `Opened ${file.name} as a piece of work of its own, "${desk.open.piece?.name ?? ""}". Looks of cells are those of the ready-made workbook.`,
        );
      } catch (error) {
        if (!(error instanceof Refused)) throw error;
        await say(`${file.name} is not opened`, error.message);
      }
    });
  });
  document.body.append(chooser);
  chooser.click();
}

async function link({ desk, page, tell }: Filing): Promise<void> {
  await attempt("Making the link", async () => {
    desk.handOver();
    const { packContents, LONGEST } = await import("./link");
    const { sheet, system, changes } = desk.open;
    const given = packContents(changes.contents);
    if (given.length > LONGEST) {
      await say(
        "Too much for a link",
        "So many cells were changed that an address cannot carry them. Save as .xlsx and send the file.",
      );
      return;
    }
    const route = { cans: false, sheet: sheet.id, system, page: page() };
    const hash = writeRoute(changes.contents.size === 0 ? route : { ...route, given });
    const address = location.href.replace(/#.*$/, "") + hash;
    const without =
      changes.ownSheets.length + changes.formats.size === 0
        ? ""
        : " Pages of your own and looks of cells are not in it: for those, save as .xlsx.";
    try {
      await navigator.clipboard.writeText(address);
      tell(
        `The link is copied. It holds what you changed, in the address itself; nobody has it until you pass it on.${without}`,
      );
    } catch {
      await ask({
        title: "The link",
        text: [
          `Copy it from here. It holds what you changed, in the address itself; nobody has it until you pass it on.${without}`,
        ],
        line: { label: "Address", value: address },
        choices: [],
        otherwise: "Close",
      });
    }
  });
}

/** The changed cells of a link, or why they cannot be read. */
export async function readLink(given: string) {
  const { unpackContents } = await import("./link");
  try {
    return unpackContents(given);
  } catch (error) {
    if (error instanceof Unreadable) return undefined;
    throw error;
  }
}

async function downloads(): Promise<void> {
  const language = spokenLanguage();
  const edition = language === "en" ? "" : `-${language}`;
  const files = books().map(({ id, title }) =>
    make(
      "li",
      {},
      `${title}: `,
      ...(["us", "si"] as const).flatMap((system) =>
        (["", "-values"] as const).flatMap((kind) => [
          make(
            "a",
            { href: `sheets/${id}-${system}${edition}${kind}.xlsx`, download: true },
            `${system.toUpperCase()}${kind === "" ? "" : ", values only"}`,
          ),
          " ",
        ]),
      ),
    ),
  );
  await ask({
    title: "Ready-made workbooks",
    text: [
      "The sample as files. With formulas they need the add-in in Excel; with values only they open anywhere.",
    ],
    more: [make("ul", { class: "downloads" }, ...files)],
    choices: [],
    otherwise: "Close",
  });
}
