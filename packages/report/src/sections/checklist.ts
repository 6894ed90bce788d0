import { type BuildUpResult, type LayerResult, meetsTarget, type ProjectResult } from "@warmside/core";
import { answerSentence } from "../decision/answer-sentence.ts";
import { shorten } from "../escape.ts";
import { type Html, html } from "../html.ts";
import { millimetres } from "../numbers.ts";
import { vapourLayerKind } from "../vapour-layer-kind.ts";
import { climatePlace } from "../words.ts";

/**
 * What to seal, keep clear and measure on site before closing. It can be shown and printed alone.
 *
 * @param result - the project's result
 * @returns the section
 */
export function checklist(result: ProjectResult): Html {
  const shared = new Map<string, number[]>();
  result.buildUps.forEach((buildUp, index) => {
    for (const task of tasks(buildUp)) shared.set(task, [...(shared.get(task) ?? []), index + 1]);
  });
  const isAlone = result.buildUps.length === 1;
  const entries = [...shared].map(([task, numbers]) => ({ task, numbers }));
  const forAll = entries.filter(({ numbers }) => numbers.length > 1 || isAlone);
  const lists = [
    list("Every build-up", [
      ...EVERYWHERE,
      ...forAll.map(({ task, numbers }) => (isAlone ? task : `${task} (${numbers.join(", ")})`)),
    ]),
    ...result.buildUps.map((buildUp, index) =>
      list(
        `${index + 1} ${shorten(buildUp.name, 60)}`,
        isAlone
          ? []
          : entries.filter(({ numbers }) => numbers.length === 1 && numbers[0] === index + 1).map(({ task }) => task),
      ),
    ),
  ];
  return html`<section id="checklist" class="page"><h2>Site checklist and signature</h2>
<p class="screen-only" id="checklist-alone"><a class="to-alone" href="#checklist-alone">Show this list alone, to print it</a><a class="from-alone" href="#answer">Back to the whole report</a></p>
<p>${result.project}${result.reference ? `, ${result.reference}` : null}. Tick before each build-up is closed; photograph sealed sheets.</p>
<div class="lists">${lists}</div>
${signature(result)}</section>`;
}

/** The conclusion, claiming no more than was calculated, and a place to sign. */
function signature(result: ProjectResult): Html {
  const asked = result.buildUps.map((buildUp) => ({
    name: shorten(buildUp.name, 60),
    judgement: buildUp.judgement.word,
    meetsTarget:
      buildUp.heat === null || buildUp.target === null ? null : meetsTarget(buildUp.heat.transmittance, buildUp.target),
  }));
  return html`<section id="signature"><h3>Signature</h3><p>Calculated by the monthly vapour pressure method for ${climatePlace(result.climate)}, ${result.climate.severity}, and the rooms as stated. ${answerSentence(asked).sentence} No more than this is claimed.</p>
<p class="by-line"><span>Name <span class="line"></span></span> <span>Date <span class="line short"></span></span> <span>Signature <span class="line"></span></span></p></section>`;
}

function list(heading: string, entries: readonly string[]): Html | null {
  if (entries.length === 0) return null;
  const lines = entries.map((task) => html`<li><span class="box" aria-hidden="true"></span>${task}</li>`);
  return html`<section class="checks"><h3>${heading}</h3><ul>${lines}</ul></section>`;
}

const EVERYWHERE = [
  "Products are those of the layer tables, in that order, each the right way round.",
  "Nothing wet is closed in; rain is kept off until the outer skin is on.",
  "After the first winter, inspect and measure the places named here.",
];

function tasks(buildUp: BuildUpResult): string[] {
  return [...judged(buildUp), ...values(buildUp), ...sealing(buildUp), ...clearWays(buildUp), ...closing(buildUp)];
}

function judged({ judgement }: BuildUpResult): string[] {
  if (judgement.word === "change it") return ["Not to be built as drawn: settle the change first."];
  if (judgement.word === "beyond this method") return ["Not to be closed before the assessment asked for is made."];
  return [];
}

function values({ layers }: BuildUpResult): string[] {
  const counted = layers.filter(({ type, counted: counts }) => type !== "air" && counts);
  const assumed = counted.filter(({ basis }) => basis === "assumed");
  const confirm = assumed.length > 0 ? [`Confirm the assumed values: ${assumed.map(layerWords).join("; ")}.`] : [];
  const insulation = counted.filter(({ group }) => group === "insulation");
  const fitted = insulation.length > 0 ? ["Insulation fills its space with no gap, no slump and no air behind."] : [];
  return [...confirm, ...fitted];
}

/** Findings that say there is nothing on the warm side to be sealed, or that the sheet must come out. */
const NOTHING_TO_SEAL: ReadonlySet<string> = new Set(["vapour-layer-cold-side", "no-vapour-layer-warm-side"]);

function sealing({ layers, vapourLayer, findings }: BuildUpResult): string[] {
  const isVapourLayer = vapourLayerKind(vapourLayer) === "vapour layer";
  if (!isVapourLayer || findings.some(({ code }) => NOTHING_TO_SEAL.has(code))) return [];
  const names = vapourLayer!.layers.map((index) => layers[index]).filter((layer) => layer !== undefined);
  return [
    `Vapour layer: ${names.map(layerWords).join("; ")}.`,
    "Vapour layer: laps and joints taped over a firm backing; perimeter sealed to floor, walls, ceiling, windows and doors.",
    "Vapour layer: no socket, lamp, pipe or duct through it without a sealed collar or box; holes and tears patched before the lining goes on.",
  ];
}

function clearWays({ layers }: BuildUpResult): string[] {
  return layers
    .filter(({ type, ventilation }) => type === "air" && ventilation !== "none")
    .map(({ number, thickness, open }) =>
      open === "closed"
        ? `Air space, layer ${number}: ${millimetres(thickness)} mm clear along its whole length, closed at both ends as drawn, and nothing pushed into it.`
        : `Ventilated space, layer ${number}: ${millimetres(thickness)} mm clear along its whole length, openings ${open ? `at ${open}` : "as drawn"} free, with mesh against insects and nothing pushed into it.`,
    );
}

function closing(buildUp: BuildUpResult): string[] {
  const wood = buildUp.framings.length > 0 || buildUp.layers.some(({ kind }) => kind === "wood" || kind === "board");
  const timber = wood ? ["Timber and boards under 20 % by moisture meter at three places: ____ % ____ % ____ %."] : [];
  return timber;
}

function layerWords({ number, name }: LayerResult): string {
  return `layer ${number}, ${shorten(name, 60)}`;
}
