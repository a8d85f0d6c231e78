/** Makes the browser ask before it closes the window; for `beforeunload`. */
export function askBeforeClosing(event: BeforeUnloadEvent): void {
  event.preventDefault();
  // Chromium before 119 asks only if this is set.
  event.returnValue = true;
}
