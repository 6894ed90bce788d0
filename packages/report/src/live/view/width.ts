/** Width that the section may take [px]. */
let measured = 0;

/** The width of the column that the section stands in; a guess until it is measured. */
export function widthOfPart(): number {
  return measured === 0 ? Math.min(innerWidth - 32, 760) : measured;
}

/** Whether the page has one column: the answer stands at the foot then. */
export function isOneColumn(): boolean {
  return innerWidth < TWO_COLUMNS_FROM;
}

/** Keeps the width up to date; draws again where it changes. */
export function watchWidth(draw: () => void): void {
  const measure = (): void => {
    const column = document.querySelector(".drawn");
    const width = Math.floor(column?.clientWidth ?? 0);
    if (width === 0 || width === measured) return;
    measured = width;
    draw();
  };
  addEventListener("resize", () => {
    draw();
    measure();
  });
  measure();
  new ResizeObserver(measure).observe(document.documentElement);
}

const TWO_COLUMNS_FROM = 960;
