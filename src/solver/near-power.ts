/** Within this share of a known point a power is had from the known one by a series. */
export const NEAR = 1 / 64;

/** The greatest exponent for which the series is good. */
export const STEEPEST = 3;

/**
 * (1 + x)^n − 1 for small x: the first six terms of the binomial series. For exponents from 0 to
 * STEEPEST it is off by less than 4e-15 within NEAR.
 *
 * A walk differs little from the one before it, and a head from its neighbor. Their powers are then
 * a few sums and products, in a tenth of the time of a logarithm.
 */
export class NearPower {
  private readonly c1: number;
  private readonly c2: number;
  private readonly c3: number;
  private readonly c4: number;
  private readonly c5: number;
  private readonly c6: number;

  constructor(exponent: number) {
    this.c1 = exponent;
    this.c2 = (this.c1 * (exponent - 1)) / 2;
    this.c3 = (this.c2 * (exponent - 2)) / 3;
    this.c4 = (this.c3 * (exponent - 3)) / 4;
    this.c5 = (this.c4 * (exponent - 4)) / 5;
    this.c6 = (this.c5 * (exponent - 5)) / 6;
  }

  less1(x: number): number {
    // The even and the odd powers side by side: neither waits for the other.
    const square = x * x;
    const odd = this.c1 + square * (this.c3 + square * this.c5);
    const even = this.c2 + square * (this.c4 + square * this.c6);
    return x * odd + square * even;
  }
}
