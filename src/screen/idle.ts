/** The longest that something waits for the browser to have nothing more urgent to do. */
const LONGEST_WAIT = 2000;

/** Resolves once what is due has been painted and the browser has time; some browsers do not tell. */
export function idle(): Promise<void> {
  return new Promise((resolve) => {
    if ("requestIdleCallback" in window)
      window.requestIdleCallback(() => resolve(), { timeout: LONGEST_WAIT });
    else setTimeout(resolve, 50);
  });
}
