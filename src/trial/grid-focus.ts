/** The grid's own, wherever it puts them: some of its parts hang at the end of the body. */
const OWN = '#grid, [data-u-comp], [data-react-aria-top-layer], [id^="__editor"]';

function isOwn(target: EventTarget | null): target is HTMLElement {
  return target instanceof HTMLElement && target.closest(OWN) !== null;
}

/**
 * The grid library takes the keyboard when it starts, and again with every calculation, wherever the
 * user is typing. Here it gets it by a press into the grid or by the Tab key, and in no other way.
 */
export function keepFocusWhereItIs(): void {
  let isInGrid = false;
  let isTabbing = false;
  let lastOutside: HTMLElement | undefined;
  document.addEventListener("pointerdown", ({ target }) => (isInGrid = isOwn(target)), true);
  document.addEventListener(
    "keydown",
    ({ key }) => {
      if (key !== "Tab") return;
      isTabbing = true;
      setTimeout(() => (isTabbing = false));
    },
    true,
  );
  document.addEventListener(
    "focusin",
    ({ target }) => {
      if (!isOwn(target)) {
        isInGrid = false;
        lastOutside = target instanceof HTMLElement ? target : undefined;
      } else if (isInGrid || isTabbing) isInGrid = true;
      else if (lastOutside?.isConnected === true) lastOutside.focus({ preventScroll: true });
      else target.blur();
    },
    true,
  );
  document.addEventListener(
    "focusout",
    ({ target, relatedTarget }) => {
      // Left for nothing: what comes next is no reason to go back there.
      if (!isOwn(target) && relatedTarget === null && document.hasFocus())
        setTimeout(() => {
          if (document.activeElement === document.body) lastOutside = undefined;
        });
    },
    true,
  );
}

const FOCUSABLE =
  'a[href], button:not(:disabled), input:not(:disabled), select:not(:disabled), textarea:not(:disabled), summary, [tabindex="0"]';

/** Escape and then Tab goes on behind the grid, Escape and then Shift and Tab before it. */
export function leaveByEscape(holder: HTMLElement): void {
  let isLeaving = false;
  // Before the library hears of it: in it Tab goes from cell to cell.
  window.addEventListener(
    "keydown",
    (event) => {
      if (!holder.contains(document.activeElement)) {
        isLeaving = false;
        return;
      }
      if (event.key === "Escape") isLeaving = true;
      else if (event.key === "Tab" && isLeaving) {
        isLeaving = false;
        const next = neighbor(holder, event.shiftKey);
        if (next === undefined) return;
        event.preventDefault();
        event.stopImmediatePropagation();
        next.focus();
      } else if (event.key !== "Shift") isLeaving = false;
    },
    true,
  );
}

function neighbor(holder: HTMLElement, isBefore: boolean): HTMLElement | undefined {
  const wanted = isBefore ? Node.DOCUMENT_POSITION_PRECEDING : Node.DOCUMENT_POSITION_FOLLOWING;
  const found = [...document.querySelectorAll<HTMLElement>(FOCUSABLE)].filter(
    (element) =>
      !holder.contains(element) &&
      (holder.compareDocumentPosition(element) & wanted) !== 0 &&
      element.getClientRects().length > 0,
  );
  return isBefore ? found.at(-1) : found[0];
}
