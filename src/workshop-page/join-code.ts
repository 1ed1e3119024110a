import { encode } from "uqr";
import { makeSvg } from "../screen/dom";

/** Modules of white around a code, as its standard asks for. */
const QUIET = 4;

/** An address as a QR code, dark on white in every color scheme: only so does every camera read it. */
export function joinCode(address: string, title: string): SVGElement {
  const { data, size } = encode(address, { ecc: "M", border: 0 });
  const dark = data.flatMap((row, y) =>
    row.flatMap((on, x) => (on ? [`M${x + QUIET} ${y + QUIET}h1v1h-1z`] : [])),
  );
  const side = size + 2 * QUIET;
  return makeSvg(
    "svg",
    {
      viewBox: `0 0 ${side} ${side}`,
      role: "img",
      "aria-label": title,
      class: "join-code",
      "shape-rendering": "crispEdges",
    },
    makeSvg("rect", { class: "join-light", width: side, height: side }),
    makeSvg("path", { class: "join-dark", d: dark.join("") }),
  );
}

/** Whether other machines reach this address too. */
export function reachedFromElsewhere({ hostname, protocol }: Location | URL): boolean {
  return protocol !== "file:" && !/^(localhost|127\.[\d.]+|\[::1\])$/.test(hostname);
}
