import { screenSaid } from "../../words/spoken";
import type { Page, ReadyMadeSheet, UnitSystem } from "../../sheets/kit/definition";
import { type Changes, isUnchanged, noChanges } from "./changes";
import { moved, placesOf, shapeOf } from "./inputs";
import type { Piece } from "./piece";
import type { Store } from "./store";

/** What lies open: the sample as it is, or a piece of work. */
export interface Open {
  readonly sheet: ReadyMadeSheet;
  readonly system: UnitSystem;
  readonly pages: readonly Page[];
  /** undefined for the sample, which is nobody's. */
  readonly piece?: Piece;
  readonly changes: Changes;
  /** What came with the address, of something that is looked at and not yet kept. */
  readonly given?: string;
  /** What an earlier edition's cells held for which this one has no place. */
  readonly lost: readonly string[];
}

/** Opens, keeps and names pieces of work. Nothing is written over, nothing is lost by opening. */
export class Desk {
  private opened: Open | undefined;
  private trouble = "";
  private readonly openedListeners: (() => void)[] = [];
  private readonly keptListeners: (() => void)[] = [];
  private leave: () => void = () => undefined;

  constructor(
    private readonly sheets: readonly ReadyMadeSheet[],
    readonly store: Store,
  ) {}

  get open(): Open {
    return this.now;
  }

  /** Until something was opened, the first sample. */
  private get now(): Open {
    return (this.opened ??= this.sample(this.sheets[0], "US"));
  }

  private set now(open: Open) {
    this.opened = open;
  }

  /** Why the work could not be kept, or an empty text. */
  get notKept(): string {
    return this.trouble;
  }

  /** Called when something else has been opened. */
  onOpened(listener: () => void): void {
    this.openedListeners.push(listener);
  }

  /** Called when what lies open has been kept, or has another name. */
  onKept(listener: () => void): void {
    this.keptListeners.push(listener);
  }

  /** Called before something else is opened: the last moment to hand over what was just typed. */
  beforeLeaving(hand: () => void): void {
    this.leave = hand;
  }

  /** Takes in what was just typed, at once. */
  handOver(): void {
    this.leave();
  }

  openSample(sheet: ReadyMadeSheet, system: UnitSystem): void {
    this.leave();
    this.take(this.sample(sheet, system));
  }

  /** false where there is no such piece, or none that can be read. */
  openPiece(id: string): boolean {
    this.leave();
    const piece = this.store.read(id);
    const sheet = this.sheets.find((one) => one.id === piece?.sheet);
    if (piece === undefined || sheet === undefined) return false;
    const pages = sheet.pages(piece.system);
    const fits = piece.shape === shapeOf(pages);
    const { contents, lost } = fits
      ? { contents: piece.changes.contents, lost: [] }
      : moved(piece.changes.contents, piece.places, pages);
    const changes = { ...piece.changes, contents };
    this.take({ sheet, system: piece.system, pages, piece, changes, lost });
    return true;
  }

  /** What was open last of this workbook, in these units where they matter; else its sample. */
  openLast(sheet: ReadyMadeSheet, system: UnitSystem): void {
    const id = this.store.last().get(sheet.id);
    if (id === undefined || id === "" || !this.openPiece(id)) this.openSample(sheet, system);
  }

  /** What was open when the page was left; false where that was nothing of the user's. */
  openWhereLeft(): boolean {
    const newest = [...this.store.last()].at(-1);
    return newest !== undefined && newest[1] !== "" && this.openPiece(newest[1]);
  }

  /** A new piece of work, kept at once. */
  begin(sheet: ReadyMadeSheet, system: UnitSystem, name: string, changes: Changes): void {
    this.leave();
    const pages = sheet.pages(system);
    const open = { sheet, system, pages, changes, lost: [] };
    this.take({ ...open, piece: this.keep(this.fresh(open, this.freeName(name))) });
  }

  /** Something of another hand, looked at: it is kept once it is worked on. */
  look(sheet: ReadyMadeSheet, system: UnitSystem, changes: Changes, given: string): void {
    this.leave();
    this.take({ sheet, system, pages: sheet.pages(system), changes, given, lost: [] });
  }

  /** What stands there now. The sample becomes a piece of work of the user's. */
  change(changes: Changes): void {
    const { piece, sheet } = this.now;
    if (piece === undefined && isUnchanged(changes)) return;
    this.now = { ...this.now, changes, given: undefined };
    const next =
      piece === undefined
        ? this.fresh(this.now, this.freeName(usualName(sheet)))
        : { ...piece, revision: piece.revision + 1 };
    this.now = { ...this.now, piece: this.keep(this.filled(next, this.now)) };
    this.store.setLast(sheet.id, this.now.piece?.id ?? "");
    this.tell();
  }

  rename(name: string): void {
    const { piece } = this.now;
    const wanted = name.trim();
    if (piece === undefined || wanted === "" || wanted === piece.name) return;
    const renamed = {
      ...piece,
      name: this.freeName(wanted, piece.id),
      revision: piece.revision + 1,
    };
    this.now = { ...this.now, piece: this.keep(this.filled(renamed, this.now)) };
    this.tell();
  }

  /** Whoever calls this has asked. The sample is open afterwards. */
  remove(): void {
    const { piece, sheet, system } = this.now;
    if (piece === undefined) return;
    this.leave();
    this.store.remove(piece.id);
    this.take(this.sample(sheet, system));
  }

  /** A name that no piece of work has yet. */
  freeName(wanted: string, except?: string): string {
    const others = this.store
      .list()
      .pieces.filter(({ id }) => id !== except)
      .map(({ name }) => name);
    if (!others.includes(wanted)) return wanted;
    let number = 2;
    while (others.includes(`${wanted} ${number}`)) number += 1;
    return `${wanted} ${number}`;
  }

  private sample(sheet: ReadyMadeSheet, system: UnitSystem): Open {
    return { sheet, system, pages: sheet.pages(system), changes: noChanges, lost: [] };
  }

  private take(open: Open): void {
    this.now = open;
    this.trouble = open.piece === undefined ? "" : this.trouble;
    this.store.setLast(open.sheet.id, open.piece?.id ?? "");
    for (const listener of this.openedListeners) listener();
  }

  private fresh({ sheet, system, changes, pages }: Open, name: string): Piece {
    return this.filled(
      {
        id: freshPieceId(),
        name,
        sheet: sheet.id,
        system,
        shape: "",
        places: {},
        changes,
        revision: 1,
        written: "",
      },
      { sheet, system, changes, pages, lost: [] },
    );
  }

  private filled(piece: Piece, { pages, changes }: Open): Piece {
    return {
      ...piece,
      changes,
      shape: shapeOf(pages),
      places: placesOf(pages, changes.contents),
      written: new Date().toISOString(),
    };
  }

  /** What another window wrote stays; this window's work goes on under another name. */
  private keep(piece: Piece): Piece {
    const kept = this.store.write(piece);
    this.trouble = kept.kind === "refused" ? kept.why : "";
    if (kept.kind !== "conflict") return piece;
    const apart = {
      ...piece,
      id: freshPieceId(),
      name: this.freeName(screenSaid(`${piece.name} (this window)`)),
      revision: 1,
    };
    const again = this.store.write(apart);
    this.trouble = again.kind === "refused" ? again.why : "";
    return apart;
  }

  private tell(): void {
    for (const listener of this.keptListeners) listener();
  }
}

export function usualName({ title }: ReadyMadeSheet): string {
  return screenSaid(`My ${title.charAt(0).toLowerCase()}${title.slice(1)}`);
}

function freshPieceId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(9));
  return [...bytes].map((byte) => byte.toString(36).padStart(2, "0")).join("");
}
