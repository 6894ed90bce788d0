let wanted: string | null = null;

/** Takes the focus to an element once the page is drawn again. */
export function focusOnceDrawn(selector: string): void {
  wanted = selector;
}

/** Called after each drawing. */
export function takeFocus(): void {
  if (wanted === null) return;
  document.querySelector<HTMLElement>(wanted)?.focus({ preventScroll: true });
  wanted = null;
}
