import { cautions } from "../src/cautions";

const DEFERS =
  /\b(codes?|authority|instructions|maker's|manual|licensed|rules|utility|label|law)\b/;

describe.each(Object.entries(cautions))("%s", (_, { title, points }) => {
  test("has a title and several plain sentences", () => {
    expect(title).toMatch(/^[A-Z].*[^.]$/);
    expect(points.length).toBeGreaterThanOrEqual(3);
    for (const point of points) expect(point).toMatch(/^[A-Z].*\.$/);
    expect(new Set(points).size).toBe(points.length);
  });

  test("ends by deferring to codes, instructions or licensed practice", () => {
    expect(points[points.length - 1]).toMatch(DEFERS);
  });
});
