import type { Box } from "../../src/trial/kept/store";

/** A browser's storage, in memory. */
export class MemoryBox implements Box {
  readonly held = new Map<string, string>();
  full = false;

  get length(): number {
    return this.held.size;
  }

  key(index: number): string | null {
    return [...this.held.keys()][index] ?? null;
  }

  getItem(key: string): string | null {
    return this.held.get(key) ?? null;
  }

  setItem(key: string, value: string): void {
    if (this.full) throw new Error("full");
    this.held.set(key, value);
  }

  removeItem(key: string): void {
    this.held.delete(key);
  }
}
