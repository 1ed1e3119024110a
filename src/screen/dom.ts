type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;
type Child = Node | string;

/** Text only ever becomes text nodes: what a cell holds is never read as markup. */
export function make<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  attributes: Attributes = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[Tag] {
  const element = document.createElement(tag);
  dress(element, attributes);
  element.append(...children);
  return element;
}

export function makeSvg<Tag extends keyof SVGElementTagNameMap>(
  tag: Tag,
  attributes: Attributes = {},
  ...children: readonly Child[]
): SVGElementTagNameMap[Tag] {
  const element = document.createElementNS("http://www.w3.org/2000/svg", tag);
  dress(element, attributes);
  element.append(...children);
  return element;
}

function dress(element: Element, attributes: Attributes): void {
  for (const [name, value] of Object.entries(attributes)) {
    if (value === undefined || value === false) continue;
    element.setAttribute(name, value === true ? "" : String(value));
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
