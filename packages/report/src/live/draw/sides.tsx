import { pushOf, sidesOf } from "../view/sides-in-words.ts";
import { curvesOf, monthAt, shareOf } from "./curves.ts";
import { Label } from "./label.tsx";
import { edges } from "./layers.tsx";
import type { Drawn } from "./section.tsx";

/** What stands on both sides, which of them is warm, and which way vapour is pushed. */
export function Sides(drawn: Drawn) {
  const { result, section, layout, month } = drawn;
  const { room, far } = sidesOf(result);
  const push = section === null ? null : pushOf(monthAt(section, month));
  const [, end] = edges(layout);
  if (layout.lies) {
    const isRoomAbove = layout.direction === 1;
    const [above, below] = isRoomAbove ? [room, far] : [far, room];
    const body = [layout.face, layout.outerFace] as const;
    const words = ({ name, side }: typeof room): string => (side === null ? name : `${name}, ${side}`);
    const isUp = push !== null && (push === "out") !== isRoomAbove;
    const row = isUp ? Math.max(...body) + 36 : Math.min(...body) - 26;
    return (
      <>
        <Label {...freeSide(drawn, above === room)} y={Math.min(...body) - 8} text={words(above)} kind="side" />
        <Label {...freeSide(drawn, below === room)} y={Math.max(...body) + 17} text={words(below)} kind="side" />
        {push === null ? null : (
          <>
            <path d={isUp ? arrow(end - 7, row + 2, 0, -30) : arrow(end - 7, row - 12, 0, 30)} class="push" />
            <Label x={end - 16} y={row} anchor="end" text={`vapour pushes ${push}`} kind="push-words" />
          </>
        )}
      </>
    );
  }
  const top = end;
  const widest = layout.bands.reduce((one, other) => (other.to - other.from > one.to - one.from ? other : one));
  const middle = (widest.from + widest.to) / 2;
  const long = Math.min(Math.max(widest.to - widest.from - 24, 40), 190);
  return (
    <>
      {[room, far].map(({ name, side }, index) => (
        <g key={index}>
          <Label
            x={index === 0 ? 3 : layout.width - 3}
            y={top - 27}
            anchor={index === 0 ? "start" : "end"}
            text={name}
            kind="side"
          />
          {side === null ? null : (
            <Label
              x={index === 0 ? 3 : layout.width - 3}
              y={top - 12}
              anchor={index === 0 ? "start" : "end"}
              text={side}
              kind={side === "warm side" ? "of-limit end" : "of-held end"}
            />
          )}
        </g>
      ))}
      {push === null ? null : (
        <>
          <path
            d={
              push === "out" ? arrow(middle - long / 2, top - 8, long, 0) : arrow(middle + long / 2, top - 8, -long, 0)
            }
            class="push"
          />
          <Label x={middle} y={top - 14} anchor="middle" text={`vapour pushes ${push}`} kind="push-words" />
        </>
      )}
    </>
  );
}

/** Where the lines of a side leave room for its name. */
function freeSide({ section, month, lens, layout }: Drawn, isRoom: boolean): { x: number; anchor: "start" | "end" } {
  const [start, end] = edges(layout);
  if (section === null) return { x: start, anchor: "start" };
  const curves = curvesOf(section, month, lens);
  const { limit, held } = isRoom ? curves.room : curves.far;
  const isLow = shareOf(curves, limit) + shareOf(curves, held) < 1;
  return isLow ? { x: end, anchor: "end" } : { x: start, anchor: "start" };
}

/** An arrow from a point over a distance. */
function arrow(x: number, y: number, dx: number, dy: number): string {
  const back = 8;
  const head =
    dx === 0
      ? `m-5 ${-Math.sign(dy) * back}l5 ${Math.sign(dy) * back}l5 ${-Math.sign(dy) * back}`
      : `m${-Math.sign(dx) * back} -5l${Math.sign(dx) * back} 5l${-Math.sign(dx) * back} 5`;
  return `M${x} ${y}l${dx} ${dy}${head}`;
}
