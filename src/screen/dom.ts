import { screenSaid } from "../words/spoken";

type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;
type Child = Node | string;

/** What of an element is read out or shown as text. */
const SPOKEN = new Set(["aria-label", "alt", "label", "placeholder", "title"]);

/**
 * Text only ever becomes text nodes: what a cell holds is never read as markup. The screen's own
 * words are said in the page's language.
 */
export function make<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  attributes: Attributes = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[Tag] {
  const element = document.createElement(tag);
  dress(element, attributes);
  element.append(...children.map(said));
  return element;
}

export function makeSvg<Tag extends keyof SVGElementTagNameMap>(
  tag: Tag,
  attributes: Attributes = {},
  ...children: readonly Child[]
): SVGElementTagNameMap[Tag] {
  const element = document.createElementNS("http://www.w3.org/2000/svg", tag);
  dress(element, attributes);
  element.append(...children.map(said));
  return element;
}

function said(child: Child): Child {
  return typeof child === "string" ? screenSaid(child) : child;
}

function dress(element: Element, attributes: Attributes): void {
  for (const [name, value] of Object.entries(attributes)) {
    if (value === undefined || value === false) continue;
    const text = value === true ? "" : String(value);
    element.setAttribute(name, SPOKEN.has(name) ? screenSaid(text) : text);
  }
}

/** The element of the page's own markup with this id. */
export function part(id: string): HTMLElement {
  const element = document.getElementById(id);
  if (element === null) throw new Error(`the page has no part "${id}"`);
  return element;
}

let names = 0;

/** An id for an element that a label or a description points to. */
export function freshId(stem: string): string {
  names += 1;
  return `${stem}-${names}`;
}
