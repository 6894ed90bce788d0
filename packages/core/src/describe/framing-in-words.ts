import type { Element, Framing } from "../project/types.ts";
import { formatQuantity } from "../quantities/format-quantity.ts";

/** The origin of a framing's share, with its numbers. */
export function framingOriginInWords({ origin, share }: Framing): string {
  const percent = (value: number): string => formatQuantity(value, "share of the area");
  const millimetres = (value: number): string => formatQuantity(value, "width");
  if (origin.kind === "fraction") return `${percent(share)} as stated in the file`;
  if (origin.kind === "channel") {
    const { sheet, flange, lip } = origin.channel;
    const lips = lip === 0 ? "" : `, lips ${millimetres(lip)}`;
    return `channels of ${formatQuantity(sheet, "thickness of sheet metal")} sheet, flanges ${millimetres(flange)}${lips}, at ${millimetres(origin.spacing)}: the webs take ${percent(share)}`;
  }
  const own = origin.width / origin.spacing;
  const other = origin.otherTimberByDefault ? "usual for such an element, common practice" : "as stated in the file";
  return (
    `${millimetres(origin.width)} / ${millimetres(origin.spacing)} = ${percent(own)}, and ${percent(origin.otherTimber)} ` +
    `for rails, plates, noggins and corners (${other}): ${percent(share)}`
  );
}

/** The usual share of timber in such an element. Source: common practice. */
export function usualFraming(element: Element): string {
  return USUAL[element];
}

const USUAL: Readonly<Record<Element, string>> = {
  wall: "usual: 15 % for studs at 600 mm with rails and corners, 11.8 % for dry-lining battens (common practice)",
  partition: "usual: 15 % for studs at 600 mm with rails (common practice)",
  "flat roof": "usual: 12 % for joists at 400 mm (common practice)",
  "pitched roof": "usual: 8 % for rafters, 9 % for ceiling joists (common practice)",
  floor: "usual: 12 % for joists at 400 mm (common practice)",
};
