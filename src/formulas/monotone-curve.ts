/**
 * A smooth curve through points that never swings beyond them: a cubic on each piece, with the
 * slopes of Fritsch and Butland, so that a pump's curve read at a few points keeps its shape.
 *
 * Inner slopes are the weighted harmonic mean of the slopes d₁, d₂ of the two pieces beside the
 * point (widths h₁, h₂), and 0 where these differ in sign:
 *
 *     m = (w₁ + w₂) / (w₁/d₁ + w₂/d₂),   w₁ = 2h₂ + h₁,   w₂ = h₂ + 2h₁
 *
 * End slopes are the three-point formula, held to the shape of the end piece. Two points make a
 * straight line. Sources: Fritsch and Carlson (1980), SIAM Journal on Numerical Analysis 17;
 * Fritsch and Butland (1984), SIAM Journal on Scientific and Statistical Computing 5; end slopes
 * as in Moler (2004), Numerical Computing with MATLAB, chapter 3. Valid between the first and the
 * last point; nothing is said beyond them.
 */
export interface MonotoneCurve {
  /** Rising. */
  readonly x: readonly number[];
  readonly y: readonly number[];
  /** dy/dx at each point. */
  readonly slope: readonly number[];
}

/** The curve through two or more points whose x rises. */
export function monotoneCurve(x: readonly number[], y: readonly number[]): MonotoneCurve {
  const last = x.length - 1;
  const width = x.slice(1).map((right, i) => right - x[i]);
  const secant = width.map((h, i) => (y[i + 1] - y[i]) / h);
  const slope = x.map((_, i) => {
    if (last === 1) return secant[0];
    if (i === 0) return endSlope(width[0], width[1], secant[0], secant[1]);
    if (i === last) {
      return endSlope(width[last - 1], width[last - 2], secant[last - 1], secant[last - 2]);
    }
    return innerSlope(width[i - 1], width[i], secant[i - 1], secant[i]);
  });
  return { x, y, slope };
}

function innerSlope(h1: number, h2: number, d1: number, d2: number): number {
  if (d1 * d2 <= 0) return 0;
  const w1 = 2 * h2 + h1;
  const w2 = h2 + 2 * h1;
  return (w1 + w2) / (w1 / d1 + w2 / d2);
}

/** `h1`, `d1` belong to the end piece, `h2`, `d2` to its neighbor. */
function endSlope(h1: number, h2: number, d1: number, d2: number): number {
  const threePoint = ((2 * h1 + h2) * d1 - h1 * d2) / (h1 + h2);
  if (threePoint * d1 <= 0) return 0;
  if (d1 * d2 <= 0 && Math.abs(threePoint) > 3 * Math.abs(d1)) return 3 * d1;
  return threePoint;
}

/** Index of the piece that holds an x within the curve's range. */
export function pieceOf(curve: MonotoneCurve, x: number): number {
  let piece = 0;
  while (piece < curve.x.length - 2 && x >= curve.x[piece + 1]) piece++;
  return piece;
}

/** Height of the curve at an x within its range. */
export function curveValue(curve: MonotoneCurve, x: number): number {
  const piece = pieceOf(curve, x);
  const [c0, c1, c2, c3] = pieceCubic(curve, piece);
  const t = x - curve.x[piece];
  return c0 + t * (c1 + t * (c2 + t * c3));
}

/** Slope of the curve at an x within its range. */
export function curveSlope(curve: MonotoneCurve, x: number): number {
  const piece = pieceOf(curve, x);
  const [, c1, c2, c3] = pieceCubic(curve, piece);
  const t = x - curve.x[piece];
  return c1 + t * (2 * c2 + 3 * t * c3);
}

/** Coefficients of a piece in powers of (x − left end), the constant first. */
export function pieceCubic(
  { x, y, slope }: MonotoneCurve,
  piece: number,
): [number, number, number, number] {
  const h = x[piece + 1] - x[piece];
  const secant = (y[piece + 1] - y[piece]) / h;
  const left = slope[piece];
  const right = slope[piece + 1];
  return [
    y[piece],
    left,
    (3 * secant - 2 * left - right) / h,
    (left + right - 2 * secant) / (h * h),
  ];
}
