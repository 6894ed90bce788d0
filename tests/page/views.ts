import { howMany } from "../how-many.ts";

/** Widths of a telephone and of a desk [px]. */
export const PHONE = 390;
export const DESK = 1280;

/** Each width and each theme once, since no rule of the styles hangs on both; all of them where there is time. */
export const VIEWS: readonly (readonly [width: number, scheme: "light" | "dark"])[] = (
  [
    [PHONE, "light"],
    [DESK, "dark"],
    [PHONE, "dark"],
    [DESK, "light"],
  ] as const
).slice(0, howMany(2, 4));
