/** What the worker takes over when it is told to. */
export const TAKE_OVER = "take over";

/**
 * Keeps the files of these pages for the next visit, which then needs no network. A page goes on with
 * the files that it began with; when newer ones have come, `onNewer` gets what loads them. Nothing is
 * fetched ahead for who asked the browser to save data, nor where a browser keeps no files.
 */
export function keepOffline(worker: string, onNewer: (load: () => void) => void): void {
  if (!("serviceWorker" in navigator) || savesData()) return;
  const { serviceWorker } = navigator;
  const tell = (waiting: ServiceWorker) =>
    onNewer(() => {
      serviceWorker.addEventListener("controllerchange", () => location.reload(), { once: true });
      waiting.postMessage(TAKE_OVER);
    });
  const start = async () => {
    const registration = await serviceWorker.register(worker);
    if (registration.waiting !== null) tell(registration.waiting);
    registration.addEventListener("updatefound", () => {
      const { installing } = registration;
      installing?.addEventListener("statechange", () => {
        // The first one to be installed is not newer than the page.
        if (installing.state === "installed" && serviceWorker.controller !== null) tell(installing);
      });
    });
  };
  // A visit without it is a visit as before.
  start().catch((error: unknown) => console.warn("The pages are not kept for later:", error));
}

function savesData(): boolean {
  const { connection } = navigator as { connection?: { readonly saveData?: boolean } };
  return connection?.saveData === true;
}
