import { existsSync, readdirSync, statSync } from "node:fs";
import { networkInterfaces } from "node:os";
import { join } from "node:path";
import { renderUnicodeCompact } from "uqr";
import { root } from "./settings";

/** An address under which other machines of the room reach this one, and the network it is in. */
export interface RoomAddress {
  readonly network: string;
  readonly address: string;
}

/** Networks inside this machine or to elsewhere, by the names that systems give them. */
const INNER = /^(docker|br-|veth|virbr|vmnet|vboxnet|utun|tun|tap|wg|ppp)|vEthernet|virtual|vpn/i;

/** The likeliest first; addresses that a machine gives itself where there is no network are none. */
export function roomAddresses(found = networkInterfaces()): RoomAddress[] {
  return Object.entries(found)
    .flatMap(([network, addresses]) => (addresses ?? []).map((one) => ({ network, ...one })))
    .filter(
      ({ family, internal, address }) =>
        family === "IPv4" && !internal && !address.startsWith("169.254."),
    )
    .map(({ network, address }) => ({ network, address }))
    .sort((one, other) => Number(INNER.test(one.network)) - Number(INNER.test(other.network)));
}

/** Lines of half blocks; on a terminal in white and black of their own, whatever its colors are. */
export function terminalCode(address: string, colored: boolean): string {
  const lines = renderUnicodeCompact(address, { border: 4 }).split("\n");
  if (!colored) return lines.join("\n");
  return lines.map((line) => `\x1b[38;5;231;48;5;16m${line}\x1b[0m`).join("\n");
}

const CAUTIONS = `Answers every machine in this network, for reading only, until Ctrl+C.
Where a phone does not get there:
- Is it in the same network as this computer? Phones leave a network without internet by
  themselves: stay in it, mobile data off.
- A firewall on this computer may ask: allow Node.js on private networks, not on public ones.
- Guest and hotel networks often keep their machines apart (client isolation): use this
  computer's hotspot, or a router of your own.
- Type http:// too: browsers try https first.`;

/** What the person at the laptop is told. */
export function hallNotice(rooms: readonly RoomAddress[], port: number, colored: boolean): string {
  if (rooms.length === 0)
    return "This computer is in no network yet: join one, or open its hotspot. Waiting …";
  const codes = rooms.map(({ network, address }) => {
    const link = `http://${address}:${port}/workshop`;
    return `Workshop: ${link}   (network ${network})\n\n${terminalCode(link, colored)}\n`;
  });
  const which =
    rooms.length === 1
      ? []
      : ["Several networks: the address that counts is the one of the phones' network."];
  return [
    ...codes,
    ...which,
    "Open that address on this computer too: then the trainer's page and the slides have its code.",
    CAUTIONS,
  ].join("\n");
}

/** What dist/ is made from. */
const SOURCES = ["src", "build", "package-lock.json", "webpack.config.js"];

/** Whether a whole build is there that is newer than all it is made from. */
export function isBuilt(dist: string, from = root): boolean {
  // Written last.
  const done = join(dist, "_headers");
  if (!existsSync(done) || !existsSync(join(dist, "workshop.html"))) return false;
  return SOURCES.every((name) => newest(join(from, name)) <= statSync(done).mtimeMs);
}

function newest(path: string): number {
  const found = statSync(path);
  if (!found.isDirectory()) return found.mtimeMs;
  return readdirSync(path).reduce(
    (latest, name) => Math.max(latest, newest(join(path, name))),
    // A file that was taken away makes its folder newer.
    found.mtimeMs,
  );
}
