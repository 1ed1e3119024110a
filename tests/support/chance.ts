/** The same numbers for the same seed, in [0, 1): mulberry32, which is short and good enough to choose by. */
export class Chance {
  constructor(private state: number) {}

  next(): number {
    this.state = (this.state + 0x6d2b79f5) | 0;
    let t = Math.imul(this.state ^ (this.state >>> 15), 1 | this.state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  }

  whole(below: number): number {
    return Math.floor(this.next() * below);
  }

  pick<T>(list: readonly T[]): T {
    return list[this.whole(list.length)];
  }

  /** True with this probability. */
  happens(probability: number): boolean {
    return this.next() < probability;
  }
}
