import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import jsQR from "jsqr";
import { hallNotice, isBuilt, roomAddresses, terminalCode } from "../../build/hall";

const entry = { netmask: "", mac: "", cidr: null };
const v4 = (address: string, internal = false) => ({
  ...entry,
  address,
  family: "IPv4" as const,
  internal,
});

test("the room is told the addresses that others reach, not this machine's own", () => {
  expect(
    roomAddresses({
      lo: [v4("127.0.0.1", true)],
      docker0: [v4("172.17.0.1")],
      wifi: [
        { ...entry, address: "fe80::1", family: "IPv6", internal: false, scopeid: 2 },
        v4("192.168.7.20"),
      ],
      cable: [v4("169.254.10.9")],
    }),
  ).toEqual([
    { network: "wifi", address: "192.168.7.20" },
    { network: "docker0", address: "172.17.0.1" },
  ]);
});

/** What a camera sees of lines of half blocks: foreground white, the rest black. */
function readBlocks(text: string): string | undefined {
  const dots = 4;
  const lines = text.split("\n");
  const [width, height] = [lines[0].length * dots, lines.length * 2 * dots];
  const pixels = new Uint8ClampedArray(width * height * 4).fill(255);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const block = lines[Math.floor(y / dots / 2)][Math.floor(x / dots)];
      const upper = Math.floor(y / dots) % 2 === 0;
      const white = block === "█" || block === (upper ? "▀" : "▄");
      pixels.fill(white ? 255 : 0, (y * width + x) * 4, (y * width + x) * 4 + 3);
    }
  return jsQR(pixels, width, height, { inversionAttempts: "dontInvert" })?.data;
}

test("the terminal's code is read as dark on white, and has its own colors where there are any", () => {
  const address = "http://192.168.7.20:3000/workshop";
  expect(readBlocks(terminalCode(address, false))).toBe(address);
  for (const line of terminalCode(address, true).split("\n"))
    expect(line.startsWith("\x1b[38;5;231;48;5;16m") && line.endsWith("\x1b[0m")).toBe(true);
});

test("the notice has each address, and says so where there is none or more than one", () => {
  const wifi = { network: "wifi", address: "192.168.7.20" };
  const one = hallNotice([wifi], 3000, false);
  expect(one).toContain("http://192.168.7.20:3000/workshop");
  expect(one).toMatch(/firewall.*private networks/);
  expect(one).toContain("client isolation");
  expect(one).not.toContain("Several networks");
  const two = hallNotice([wifi, { network: "docker0", address: "172.17.0.1" }], 3000, false);
  expect(two).toContain("http://172.17.0.1:3000/workshop");
  expect(two).toContain("Several networks");
  expect(hallNotice([], 3000, false)).toContain("in no network yet");
});

test("a whole build is served as it is until anything that it is made from is newer", () => {
  const folder = mkdtempSync(join(tmpdir(), "hall-"));
  const dist = join(folder, "dist");
  try {
    for (const name of ["src", "build", "dist"]) mkdirSync(join(folder, name));
    for (const name of ["src/a.ts", "package-lock.json", "webpack.config.js"])
      writeFileSync(join(folder, name), "");
    const at = (name: string, seconds: number) => utimesSync(join(folder, name), seconds, seconds);
    for (const name of ["src/a.ts", "src", "build", "package-lock.json", "webpack.config.js"])
      at(name, 1000);
    expect(isBuilt(dist, folder)).toBe(false);
    writeFileSync(join(dist, "workshop.html"), "");
    expect(isBuilt(dist, folder)).toBe(false);
    writeFileSync(join(dist, "_headers"), "");
    at("dist/_headers", 2000);
    expect(isBuilt(dist, folder)).toBe(true);
    at("src/a.ts", 3000);
    expect(isBuilt(dist, folder)).toBe(false);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
