import type { BuildUpResult, SectionResult } from "@warmside/core";
import { layoutOf } from "../draw/layout.ts";
import { type Drawn, Section } from "../draw/section.tsx";
import { show, state } from "../state/store.ts";
import { dragOf, endDrag, pull, remember, take } from "./drag.ts";
import { EdgeHandle } from "./edge-handle.tsx";
import { Figures } from "./figures.tsx";
import { Flags } from "./flags.tsx";
import type { Known } from "./page.tsx";
import { placesNow } from "./places-now.ts";
import { Tabs } from "./tabs.tsx";
import { widthOfPart } from "./width.ts";

/** The section that is the form: drawn, and taken hold of. */
export function SectionPart({
  result,
  section,
  known,
}: {
  result: BuildUpResult;
  section: SectionResult | null;
  known: Known;
}) {
  const drag = dragOf();
  const { places = null, names = [] } = known.beside ?? {};
  const fitting = places === null ? null : placesNow(places, names, result);
  const layout = layoutOf(result, fitting, widthOfPart(), drag?.kind === "edge" ? drag.pixelsPerMetre : null);
  const drawn: Drawn = {
    result,
    section,
    layout,
    month: monthShown(section),
    lens: state().lens,
    layer: state().layer,
  };
  remember(drawn);
  const isDrawn = fitting?.places.map((place) => place.isDrawn) ?? [];
  return (
    <section class="section-part" aria-label="Section, to scale">
      {fitting === null ? null : <FlagsHead name={fitting.own === null ? null : fitting.name} sheet={fitting.name} />}
      <div class="stage" style={{ width: `${layout.width}px`, height: `${layout.height}px` }} data-lies={layout.lies}>
        <div class="grab" onPointerDown={take} onPointerMove={pull} onPointerUp={endDrag} onPointerCancel={endDrag}>
          <Section {...drawn} before={drag?.isMoving ? drag.before : null} isDrawn={isDrawn} />
        </div>
        {fitting === null ? null : <Flags places={fitting} result={result} layout={layout} isFresh={known.isFresh} />}
        <Tabs result={result} layout={layout} />
        <EdgeHandle result={result} layout={layout} />
      </div>
      <Lens result={result} section={section} />
      {section === null ? null : <Figures section={section} month={monthShown(section)} />}
    </section>
  );
}

/** The month that is shown: the one chosen, else the one that decides. */
export function monthShown(section: SectionResult | null): number {
  const { month } = state();
  if (month !== null) return month;
  return Math.max(0, section?.months.findIndex((one) => one.month === section.decidingMonth) ?? 0);
}

function FlagsHead({ name, sheet }: { name: string | null; sheet: string }) {
  return (
    <p class="flags-head" id="flags-head">
      {name === null ? `A vapour layer (${sheet}) put here gives:` : `The ${name}, if it lay here:`}
    </p>
  );
}

/** Which lines are drawn, and along which heat-flow path. */
function Lens({ result, section }: { result: BuildUpResult; section: SectionResult | null }) {
  const paths = result.moisture?.sections ?? [];
  if (section === null) return null;
  return (
    <div class="lens">
      <fieldset>
        <legend>Lines in</legend>
        {(["temperature", "pressure"] as const).map((lens) => (
          <label key={lens}>
            <input type="radio" name="lens" checked={state().lens === lens} onChange={() => show({ lens })} />
            {lens === "temperature" ? "°C" : "Pa"}
          </label>
        ))}
      </fieldset>
      {paths.length < 2 ? null : (
        <fieldset>
          <legend>Path</legend>
          {paths.map((path, index) => (
            <label key={index}>
              <input
                type="radio"
                name="path"
                checked={path.index === section.index}
                onChange={() => show({ path: index })}
              />
              {path.name}
            </label>
          ))}
        </fieldset>
      )}
    </div>
  );
}
