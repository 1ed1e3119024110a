import { PNG } from "pngjs";
import { drawIcon, drawMark, ICON_SIZES } from "../../build/icons";

test("the mark of the pages is the drawing of the icons", () => {
  const size = 128;
  const picture = PNG.sync.read(drawIcon(size));
  const svg = drawMark();
  const groups = [...svg.matchAll(/<g fill="#(\w{6})">(.*?)<\/g>/g)];
  expect(groups).toHaveLength(2);
  for (const [, color, shapes] of groups) {
    const dots = [...shapes.matchAll(/cx="([\d.]+)" cy="([\d.]+)"/g)];
    expect(dots).toHaveLength(3);
    for (const [, x, y] of dots) {
      const [column, row] = [x, y].map((place) => Math.floor((Number(place) / 100) * size));
      const at = 4 * (row * size + column);
      expect(picture.data.subarray(at, at + 3).toString("hex")).toBe(color);
    }
  }
});

test.each([...ICON_SIZES])("%i pixels: clear corners, a filled middle", (size) => {
  const { width, height, data } = PNG.sync.read(drawIcon(size));
  expect([width, height]).toEqual([size, size]);
  expect(data[3]).toBeLessThan(128);
  expect(data[4 * (Math.floor(size / 2) * size + Math.floor(size / 2)) + 3]).toBe(255);
});
