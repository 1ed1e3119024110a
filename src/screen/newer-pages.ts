import "./newer-pages.css";
import { make } from "./dom";
import { keepOffline } from "./offline";

/** Between the start of a page and what has time: fetching the files to keep. */
const PATIENCE = 5000;

/** Keeps this page for later, once it has had time to start, and offers newer files when there are. */
export function keepThisPage(): void {
  const worker = new URL("offline.js", document.baseURI);
  const begin = () => window.setTimeout(() => keepOffline(worker.href, offerNewer), PATIENCE);
  if (document.readyState === "complete") begin();
  else window.addEventListener("load", begin, { once: true });
}

function offerNewer(load: () => void): void {
  const now = make("button", { type: "button" }, "Load it");
  const later = make("button", { type: "button" }, "Later");
  const bar = make(
    "div",
    { class: "newer-pages", role: "status" },
    make("p", {}, "There is a newer version of this page."),
    now,
    later,
  );
  now.addEventListener("click", load);
  later.addEventListener("click", () => bar.remove());
  document.body.append(bar);
}
