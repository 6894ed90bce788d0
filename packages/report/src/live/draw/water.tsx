import type { SectionResult } from "@warmside/core";
import { grams } from "../../numbers.ts";
import { monthAt } from "./curves.ts";
import { Label } from "./label.tsx";
import { edges } from "./layers.tsx";
import { alongAt, type Layout } from "./layout.ts";
import type { Drawn } from "./section.tsx";

interface Column {
  node: number;
  along: number;
  long: number;
  isGrowing: boolean;
  words: string;
}

/** A column where water lies, as long as its amount; a drop at its head while more comes. */
export function Water({ section, month, layout }: Drawn & { section: SectionResult }) {
  const [start] = edges(layout);
  return (
    <>
      {columnsOf(section, month, layout).map(({ node, along, long, isGrowing }) => (
        <g key={node} class="water">
          {layout.lies ? (
            <rect x={start} y={along - HALF} width={long} height={2 * HALF} rx="2" />
          ) : (
            <rect x={along - HALF} y={start - long} width={2 * HALF} height={long} rx="2" />
          )}
          {isGrowing ? (
            <path d={layout.lies ? drop(start + long + 12, along - 11) : drop(along, start - long - 24)} />
          ) : null}
        </g>
      ))}
    </>
  );
}

/** The amounts, over the lines. */
export function WaterWords({ section, month, layout }: Drawn & { section: SectionResult }) {
  const [start] = edges(layout);
  return (
    <>
      {columnsOf(section, month, layout).map(({ node, along, long, isGrowing, words }) => {
        if (words === "") return null;
        if (layout.lies)
          return (
            <Label
              key={node}
              x={start + long + (isGrowing ? 24 : 6)}
              y={along + (layout.direction === -1 ? 17 : -9)}
              text={words}
              kind="water-words"
            />
          );
        const isFar = along > layout.width * 0.6;
        return (
          <Label
            key={node}
            x={along + (isFar ? -11 : 11)}
            y={start - Math.max(long, 12) - 4}
            anchor={isFar ? "end" : "start"}
            text={words}
            kind="water-words"
          />
        );
      })}
    </>
  );
}

function columnsOf(section: SectionResult, month: number, layout: Layout): Column[] {
  const now = monthAt(section, month);
  const most = Math.max(FULL, ...section.months.map(({ planes }) => planes.reduce((sum, { held }) => sum + held, 0)));
  const [start, end] = edges(layout);
  return now.planes
    .filter(({ held, change }) => held > 0 || change > 0)
    .map(({ node, held, change }) => ({
      node,
      along: alongAt(layout, now.nodes[node]?.depth ?? 0),
      long: Math.max(LEAST, (held / most) * Math.abs(end - start) * LONGEST),
      isGrowing: change > 0,
      words: held > 0 ? `${grams(held)} g/m²` : "",
    }));
}

function drop(x: number, y: number): string {
  return `M${x} ${y}c2.2 5.5 7.5 9 7.5 15a7.5 7.5 0 1 1 -15 0c0 -6 5.3 -9.5 7.5 -15z`;
}

const HALF = 6;
const LEAST = 3;
/** The longest column takes this share of the section's breadth. */
const LONGEST = 0.6;
/** A column is as long as it gets from this amount on [kg/m²], so that little water looks little. */
const FULL = 1;
