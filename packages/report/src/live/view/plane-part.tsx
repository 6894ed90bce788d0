import type { BuildUpResult, PlaneResult } from "@warmside/core";
import { planeDrawing } from "../../drawing/plane-drawing.ts";
import { planeInWords } from "../../plane-words.ts";

/**
 * What straight sections do not see, as a picture: isotherms and water over a section along the build-up. It is drawn
 * anew once for each assessment, when what is worked out beside the page has come: no gesture waits for it.
 */
export function PlanePart({ result, isFresh }: { result: BuildUpResult; isFresh: boolean }) {
  const { plane } = result;
  if (plane === null) return null;
  const { message, caption, picture } = shownOf(result, plane, isFresh);
  return (
    <section class="plane" aria-labelledby="plane-head">
      <h2 id="plane-head">Beside the framing</h2>
      <figure>
        <p>
          <strong>{message}</strong>
        </p>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what slides sideways on a telephone is reached by keys */}
        <section class="slides" tabIndex={0} aria-label="Section along the build-up" {...asMarkup(picture)} />
        <figcaption class="quiet">{caption}</figcaption>
      </figure>
    </section>
  );
}

interface Shown {
  name: string;
  plane: PlaneResult;
  message: string;
  caption: string;
  picture: string;
}

let last: Shown | null = null;

function shownOf(result: BuildUpResult, plane: PlaneResult, isFresh: boolean): Shown {
  if (last?.plane === plane || (!isFresh && last?.name === result.name)) return last;
  const { message, caption, drawn } = planeInWords(result, plane);
  last = { name: result.name, plane, message, caption, picture: planeDrawing(plane.picture, drawn, "plane").text };
  return last;
}

/** The drawing is markup that this package makes, with every name in it escaped. */
function asMarkup(text: string): { dangerouslySetInnerHTML: { __html: string } } {
  return { dangerouslySetInnerHTML: { __html: text } };
}
