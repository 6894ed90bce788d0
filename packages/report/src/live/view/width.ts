/** Width that the section may take [px]. */
let measured = 0;
let isOnPaper = false;

/** The width of the column that the section stands in; a guess until it is measured. */
export function widthOfPart(): number {
  if (isOnPaper) return WIDTH_ON_PAPER;
  return measured === 0 ? Math.min(innerWidth - 32, 760) : measured;
}

/** Whether the page has one column: the answer stands at the foot then. */
export function isOneColumn(): boolean {
  return innerWidth < TWO_COLUMNS_FROM && !isOnPaper;
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

/** Draws for paper and back again, before and after it is printed. */
export function watchPrinting(draw: () => void): void {
  const turn = (onPaper: boolean) => (): void => {
    isOnPaper = onPaper;
    draw();
  };
  addEventListener("beforeprint", turn(true));
  addEventListener("afterprint", turn(false));
}

const TWO_COLUMNS_FROM = 960;
/** Beside it the answer has room on A4 [px]; as in the style sheet. */
const WIDTH_ON_PAPER = 430;
