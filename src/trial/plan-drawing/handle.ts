import { makeSvg } from "../../screen/dom";
import type { Point } from "../../screen/chart";
import { screenSaid } from "../../words/spoken";

/** What a handle tells of. */
export interface HandleEvents {
  readonly chosen: () => void;
  /** On its way, and not yet meant. */
  readonly moved: (by: Move) => void;
  /** Where it is now is where it shall be. */
  readonly dropped: () => void;
  /** Back to where it was. */
  readonly takenBack: () => void;
  readonly typing: () => void;
}

/** To a point of the picture, or by steps of the field. */
export type Move = { readonly to: readonly [number, number] } | { readonly steps: Point };

const ARROWS: Readonly<Record<string, Point>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: 1 },
  ArrowDown: { x: 0, y: -1 },
};
const LARGER = 10;

/** After the last arrow key, before the sheet is worked out anew. */
const KEY_PAUSE = 600;

/** Pixels that a finger may tremble. */
const TREMBLE = 3;

/** A place of the field that is moved with mouse, finger or arrow keys. */
export class Handle {
  readonly element: SVGElement;
  private readonly grip: SVGElement;
  private readonly reach: SVGElement;
  private waiting: number | undefined;

  constructor(
    look: "corner" | "obstacle",
    private readonly svg: SVGSVGElement,
    private readonly events: HandleEvents,
  ) {
    this.reach = makeSvg("circle", { class: "handle-reach", cx: 0, cy: 0 });
    this.grip = makeSvg("circle", { class: "handle-grip", cx: 0, cy: 0 });
    this.element = makeSvg(
      "g",
      { class: `handle handle-${look}`, role: "button", tabindex: 0 },
      this.reach,
      this.grip,
    );
    this.element.addEventListener("pointerdown", (event) => this.drag(event as PointerEvent));
    this.element.addEventListener("keydown", (event) => this.press(event as KeyboardEvent));
    this.element.addEventListener("focus", () => events.chosen());
    this.element.addEventListener("blur", () => this.drop());
  }

  /** `dot` is how much of the picture a pixel of the screen is. */
  show([x, y]: readonly [number, number], name: string, dot: number): void {
    this.element.setAttribute("transform", `translate(${x.toFixed(2)} ${y.toFixed(2)})`);
    this.element.setAttribute("aria-label", screenSaid(name));
    this.grip.setAttribute("r", (7 * dot).toFixed(2));
    // As large as a finger.
    this.reach.setAttribute("r", (20 * dot).toFixed(2));
  }

  private drag(down: PointerEvent): void {
    if (down.button !== 0) return;
    down.preventDefault();
    this.element.focus();
    this.element.setPointerCapture(down.pointerId);
    let isDragged = false;
    const move = (event: PointerEvent) => {
      isDragged ||=
        Math.hypot(event.clientX - down.clientX, event.clientY - down.clientY) > TREMBLE;
      if (isDragged) this.events.moved({ to: this.place(event) });
    };
    const end = (isMeant: boolean) => {
      this.element.removeEventListener("pointermove", move as EventListener);
      this.element.removeEventListener("pointerup", up);
      this.element.removeEventListener("pointercancel", cancel);
      this.element.removeEventListener("keydown", escape as EventListener);
      if (this.element.hasPointerCapture(down.pointerId))
        this.element.releasePointerCapture(down.pointerId);
      if (!isDragged) return;
      if (isMeant) this.events.dropped();
      else this.events.takenBack();
    };
    const up = () => end(true);
    const cancel = () => end(false);
    const escape = (event: KeyboardEvent) => {
      if (event.key !== "Escape") return;
      event.stopImmediatePropagation();
      end(false);
    };
    this.element.addEventListener("pointermove", move as EventListener);
    this.element.addEventListener("pointerup", up);
    this.element.addEventListener("pointercancel", cancel);
    this.element.addEventListener("keydown", escape as EventListener, { capture: true });
  }

  private place({ clientX, clientY }: PointerEvent): [number, number] {
    const matrix = this.svg.getScreenCTM();
    if (matrix === null) return [0, 0];
    const { x, y } = new DOMPoint(clientX, clientY).matrixTransform(matrix.inverse());
    return [x, y];
  }

  private press(event: KeyboardEvent): void {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const arrow = ARROWS[event.key];
    if (arrow !== undefined) {
      event.preventDefault();
      const times = event.shiftKey ? LARGER : 1;
      this.events.moved({ steps: { x: arrow.x * times, y: arrow.y * times } });
      window.clearTimeout(this.waiting);
      this.waiting = window.setTimeout(() => this.drop(), KEY_PAUSE);
    } else if (event.key === "Escape") {
      event.preventDefault();
      window.clearTimeout(this.waiting);
      this.waiting = undefined;
      this.events.takenBack();
    } else if (event.key === "Enter" || event.key === " ") {
      event.preventDefault();
      this.events.typing();
    }
  }

  private drop(): void {
    if (this.waiting === undefined) return;
    window.clearTimeout(this.waiting);
    this.waiting = undefined;
    this.events.dropped();
  }
}
