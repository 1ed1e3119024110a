/** Resolves when what stands there now has been painted; at once where nobody looks. */
export function painted(): Promise<void> {
  return new Promise((resolve) => {
    if (document.visibilityState === "hidden") resolve();
    // A task after the frame: its own callbacks still come before the paint.
    else requestAnimationFrame(() => setTimeout(resolve));
  });
}
