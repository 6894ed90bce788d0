import type { BuildUpResult, SectionResult } from "@warmside/core";
import type { State } from "../state/state.ts";
import { Layers } from "./layers.tsx";
import type { Layout } from "./layout.ts";
import { Lines } from "./lines.tsx";
import { Sides } from "./sides.tsx";
import { Water, WaterWords } from "./water.tsx";

/** What is drawn. */
export interface Drawn {
  result: BuildUpResult;
  /** The heat-flow path whose lines are drawn; null where moisture was not worked out. */
  section: SectionResult | null;
  layout: Layout;
  /** 0 to below 12; a fraction lies between two months. */
  month: number;
  lens: State["lens"];
  /** Index of the layer that is taken up. */
  layer: number | null;
}

/** The build-up to scale with what heat and vapour do in it; `before` stays faint while something is dragged. */
export function Section(drawn: Drawn & { before: Drawn | null; isDrawn: readonly boolean[] }) {
  const { layout, section, before, isDrawn } = drawn;
  const { width, height } = layout;
  return (
    <svg class="section" width={width} height={height} viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
      {[...layout.flags, ...layout.tabs].map(({ leader }, index) =>
        leader === null ? null : <path key={index} d={leader} class={isDrawn[index] ? "leader is-drawn" : "leader"} />,
      )}
      <Layers {...drawn} />
      {section === null ? null : (
        <>
          <Water {...drawn} section={section} />
          {before?.section ? <Lines {...before} layout={layout} section={before.section} isBefore /> : null}
          <Lines {...drawn} section={section} isBefore={false} />
          <WaterWords {...drawn} section={section} />
        </>
      )}
      <Sides {...drawn} />
    </svg>
  );
}
