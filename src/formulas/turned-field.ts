import { noDistance, type Point } from "./polygon";

/** A circle that lines and heads keep out of, m. */
export interface Obstacle extends Point {
  readonly radius: number;
}

/** A field as lines are laid in it, SI. */
export interface Field {
  /** Either way round; already known to bound a field (requireField). */
  readonly corners: readonly Point[];
  readonly obstacles: readonly Obstacle[];
  /** Least distance of a line and its heads from every edge, m. */
  readonly setback: number;
}

/** A field turned so that its lines lie level: `along` a line, `across` from line to line. */
export interface TurnedField {
  readonly corners: readonly Turned[];
  readonly obstacles: readonly TurnedObstacle[];
  readonly setback: number;
  /** The least and the most across of any corner. */
  readonly nearest: number;
  readonly farthest: number;
  /** What counts as no distance on this field, m. */
  readonly tolerance: number;
  /** Back to the plane. */
  readonly place: (along: number, across: number) => Point;
}

export interface Turned {
  readonly along: number;
  readonly across: number;
}

export interface TurnedObstacle extends Turned {
  readonly radius: number;
}

/**
 * Turns a field for lines of a bearing in degrees, clockwise from true north. A line begins at its
 * near end and runs along the bearing; positions advance to its left, as flags for positions do.
 * Reckoned from the first corner, so that coordinates of a survey grid cost no digits.
 */
export function turnField(field: Field, bearing: number): TurnedField {
  const [east, north] = direction(bearing);
  const origin = field.corners[0];
  const turn = ({ x, y }: Point): Turned => ({
    along: (x - origin.x) * east + (y - origin.y) * north,
    across: (y - origin.y) * east - (x - origin.x) * north,
  });
  const corners = field.corners.map(turn);
  const across = corners.map((corner) => corner.across);
  return {
    corners,
    obstacles: field.obstacles.map((obstacle) => ({ ...turn(obstacle), radius: obstacle.radius })),
    setback: field.setback,
    nearest: Math.min(...across),
    farthest: Math.max(...across),
    tolerance: noDistance(field.corners),
    place: (along, across) => ({
      x: origin.x + along * east - across * north,
      y: origin.y + along * north + across * east,
    }),
  };
}

/** East and north of one step along a bearing; the four quarters exactly, so that they stay square. */
export function direction(bearing: number): readonly [number, number] {
  const whole = ((bearing % 360) + 360) % 360;
  const quarter = whole / 90;
  if (Number.isInteger(quarter)) return QUARTERS[quarter % 4];
  const angle = (whole * Math.PI) / 180;
  return [Math.sin(angle), Math.cos(angle)];
}

const QUARTERS: readonly (readonly [number, number])[] = [
  [0, 1],
  [1, 0],
  [0, -1],
  [-1, 0],
];
