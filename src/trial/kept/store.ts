import { Unreadable } from "./changes";
import { type Piece, readPiece, writePiece } from "./piece";

/** The part of the browser's storage that is used. */
export type Box = Pick<Storage, "getItem" | "setItem" | "removeItem" | "key" | "length">;

export type Kept =
  | { readonly kind: "kept" }
  /** Another window wrote this piece since; nothing was written over. */
  | { readonly kind: "conflict" }
  | { readonly kind: "refused"; readonly why: string };

const PIECE = "fieldsum:work:";
const LAST = "fieldsum:last";

/** The pieces of work in this browser's storage. */
export class Store {
  constructor(private readonly box: Box | undefined) {}

  /** Newest first. What cannot be read stays where it is, and is counted. */
  list(): { readonly pieces: readonly Piece[]; readonly unreadable: number } {
    const { box } = this;
    const pieces: Piece[] = [];
    let unreadable = 0;
    for (let i = 0; i < (box?.length ?? 0); i++) {
      const key = box?.key(i) ?? "";
      if (!key.startsWith(PIECE)) continue;
      const piece = this.read(key.slice(PIECE.length));
      if (piece === undefined) unreadable += 1;
      else pieces.push(piece);
    }
    pieces.sort((one, two) => (one.written < two.written ? 1 : -1));
    return { pieces, unreadable };
  }

  read(id: string): Piece | undefined {
    const text = this.box?.getItem(PIECE + id) ?? undefined;
    if (text === undefined) return undefined;
    try {
      return readPiece(text);
    } catch (error) {
      if (error instanceof Unreadable) return undefined;
      throw error;
    }
  }

  /** Writes the piece unless another window did so after this one read it. */
  write(piece: Piece): Kept {
    if (this.box === undefined)
      return { kind: "refused", why: "This browser keeps nothing for this page." };
    const before = this.box.getItem(PIECE + piece.id);
    if (before !== null) {
      const stored = this.read(piece.id);
      if (stored === undefined || stored.revision !== piece.revision - 1)
        return { kind: "conflict" };
    } else if (piece.revision !== 1) {
      // Deleted in another window: what stands here is written anew.
      return { kind: "conflict" };
    }
    try {
      this.box.setItem(PIECE + piece.id, writePiece(piece));
      return { kind: "kept" };
    } catch {
      return { kind: "refused", why: "This browser's storage for this page is full or shut." };
    }
  }

  remove(id: string): void {
    this.box?.removeItem(PIECE + id);
  }

  /** What was open last: of each workbook the piece's id, "" for the sample. */
  last(): ReadonlyMap<string, string> {
    try {
      const plain: unknown = JSON.parse(this.box?.getItem(LAST) ?? "[]");
      if (!Array.isArray(plain)) return new Map();
      return new Map(
        plain.filter(
          (pair): pair is [string, string] =>
            Array.isArray(pair) &&
            pair.length === 2 &&
            pair.every((one) => typeof one === "string"),
        ),
      );
    } catch {
      return new Map();
    }
  }

  /** The newest stands last. */
  setLast(sheet: string, id: string): void {
    const last = new Map(this.last());
    last.delete(sheet);
    last.set(sheet, id);
    try {
      this.box?.setItem(LAST, JSON.stringify([...last]));
    } catch {
      // Where it was open last is a comfort; the work itself says when it cannot be kept.
    }
  }
}

/** The browser's storage, where it may be used at all. */
export function browserBox(): Box | undefined {
  try {
    const box = window.localStorage;
    box.getItem(LAST);
    return box;
  } catch {
    return undefined;
  }
}
