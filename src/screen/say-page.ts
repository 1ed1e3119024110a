import { screenSaid } from "../words/spoken";

/** Says what stands in the page's own markup in the page's language. */
export function sayPage(root: HTMLElement): void {
  const texts = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
  for (let node = texts.nextNode(); node !== null; node = texts.nextNode()) {
    const text = (node.nodeValue ?? "").replace(/\s+/g, " ").trim();
    const said = screenSaid(text);
    if (said !== text) node.nodeValue = said;
  }
  for (const element of root.querySelectorAll("[aria-label]")) {
    const label = element.getAttribute("aria-label") ?? "";
    element.setAttribute("aria-label", screenSaid(label));
  }
}
