import { cleanupOutdatedCaches, precacheAndRoute } from "workbox-precaching";
import { TAKE_OVER } from "../screen/offline";

/** The files to keep, each with a mark of its contents where its name has none: put in by the build. */
declare const KEPT_FILES: { readonly url: string; readonly revision: string | null }[];

declare const self: {
  addEventListener(type: "message", listener: (event: MessageEvent) => void): void;
  skipWaiting(): Promise<void>;
};

// One build's files are kept as a whole and answer as a whole: a page never gets parts of two builds.
cleanupOutdatedCaches();
precacheAndRoute(KEPT_FILES, {
  directoryIndex: "index.html",
  cleanURLs: true,
  // What stands behind the "?" is for the page's own script.
  ignoreURLParametersMatching: [/./],
});

self.addEventListener("message", ({ data }) => {
  if (data === TAKE_OVER) void self.skipWaiting();
});
