import type { Callables } from "../../reference";
import { make } from "../../screen/dom";
import type { FunctionHost } from "../../screen/host";
import { books } from "../books";
import { noChanges } from "../kept/changes";
import type { Desk } from "../kept/desk";
import type { StartPart } from "../kept/route";
import { browserBox } from "../kept/store";
import { FieldPage } from "./field-page";
import { FormMemory } from "./form-memory";
import { type KnownLine, LinePage } from "./line-page";
import type { Opening } from "./opening";

const PARTS: readonly { readonly part: StartPart; readonly hash: string; readonly text: string }[] =
  [
    { part: "field", hash: "#start", text: "A new field" },
    { part: "line", hash: "#start/line", text: "My line" },
  ];

const PURPOSES: Readonly<Record<StartPart, string>> = {
  field:
    "Say what the field and its water are like. A plan is proposed with the reason for each number, and opens in the workbook filled in.",
  line: "Change what you know or wonder about. The answers stay in sight; nothing here changes your work.",
};

/** The first page for someone who comes with a field, or with a line, and not with a workbook. */
export class Start {
  private field: HTMLElement[] | undefined;

  constructor(
    private readonly host: FunctionHost,
    private readonly callables: Callables,
    private readonly desk: Desk,
    /** Brings the workbook to the front, before something is opened in it. */
    private readonly toSheet: () => void,
  ) {}

  build(part: StartPart): HTMLElement[] {
    return [
      make("h1", { id: "start-title" }, "Start"),
      make(
        "nav",
        { "aria-label": "Where to start" },
        ...PARTS.map((one) =>
          make(
            "a",
            { href: one.hash, "aria-current": one.part === part ? "page" : undefined },
            one.text,
          ),
        ),
      ),
      make("p", { class: "purpose" }, PURPOSES[part]),
      ...(part === "field" ? this.fieldPage() : this.linePage()),
    ];
  }

  /** Stays as it was left while the page lives. */
  private fieldPage(): HTMLElement[] {
    const memory = new FormMemory(browserBox(), this.desk.open.system);
    this.field ??= new FieldPage(this.host, this.callables, memory, this.opening()).build();
    return this.field;
  }

  private linePage(): HTMLElement[] {
    return new LinePage(this.host, this.callables, this.knownLine(), this.opening()).build();
  }

  private opening(): Opening {
    return (sheet, system, name, contents) => {
      this.toSheet();
      this.desk.begin(sheet, system, name, { ...noChanges, contents });
      window.scrollTo(0, 0);
    };
  }

  private knownLine(): KnownLine {
    const { store, open } = this.desk;
    const [layout] = books();
    if (open.sheet.id === layout.id)
      return { system: open.system, name: open.piece?.name, contents: open.changes.contents };
    const piece = store.read(store.last().get(layout.id) ?? "");
    return piece === undefined
      ? { system: open.system, contents: new Map() }
      : { system: piece.system, name: piece.name, contents: piece.changes.contents };
  }
}
