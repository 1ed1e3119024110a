/** Halving stops here, so that no integrand, however rough, is asked for more than 16 385 values. */
const DEEPEST = 12;

/**
 * Integral of a bounded function, by Simpson's rule on halves until two halves agree with their
 * whole to the tolerance. G. F. Kuncir (1962), Algorithm 103, Communications of the ACM 5; the
 * last correction is Richardson's, a fifteenth of the difference.
 */
export function integrate(
  f: (x: number) => number,
  from: number,
  to: number,
  relativeTolerance: number,
): number {
  const left = f(from);
  const middle = f((from + to) / 2);
  const right = f(to);
  const whole = simpson(to - from, left, middle, right);

  const refine = (
    a: number,
    b: number,
    fa: number,
    fm: number,
    fb: number,
    estimate: number,
    tolerance: number,
    depth: number,
  ): number => {
    const center = (a + b) / 2;
    const fLeft = f((a + center) / 2);
    const fRight = f((center + b) / 2);
    const first = simpson(center - a, fa, fLeft, fm);
    const second = simpson(b - center, fm, fRight, fb);
    const difference = first + second - estimate;
    // A difference that is not a number ends it too: more halves would not make it one.
    if (depth === DEEPEST || !(Math.abs(difference) > 15 * tolerance)) {
      return first + second + difference / 15;
    }
    return (
      refine(a, center, fa, fLeft, fm, first, tolerance / 2, depth + 1) +
      refine(center, b, fm, fRight, fb, second, tolerance / 2, depth + 1)
    );
  };
  return refine(from, to, left, middle, right, whole, relativeTolerance * Math.abs(whole), 0);
}

function simpson(width: number, left: number, middle: number, right: number): number {
  return (width / 6) * (left + 4 * middle + right);
}
