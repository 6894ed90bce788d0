import type { BuildUpResult, LayerResult, ProjectResult } from "@warmside/core";
import { shorten } from "../escape.ts";
import { type Html, html } from "../html.ts";
import { millimetres } from "../numbers.ts";
import { vapourLayerStanding } from "../vapour-layer-standing.ts";

/**
 * What to seal, keep clear and measure on site before closing; can be shown and printed alone.
 *
 * @param result - the project's result
 * @returns the section
 */
export function checklist(result: ProjectResult): Html {
  const lists = [
    list("Every build-up", EVERYWHERE),
    ...result.buildUps.map((buildUp, index) => list(`${index + 1} ${shorten(buildUp.name, 120)}`, tasks(buildUp))),
  ];
  return html`<section id="checklist"><h2>Site checklist</h2>
<p class="screen-only" id="checklist-alone"><a class="to-alone" href="#checklist-alone">Show this list alone, to print it</a><a class="from-alone" href="#answer">Back to the whole report</a></p>
<p>${result.project}${result.reference ? `, ${result.reference}` : null}. Tick before each build-up is closed; photographs of sealed sheets help whoever asks later.</p>
${lists}
<p class="by-line">Checked by <span class="line"></span> Date <span class="line short"></span></p></section>`;
}

function list(heading: string, entries: readonly string[]): Html {
  const lines = entries.map((task) => html`<li><span class="box" aria-hidden="true"></span>${task}</li>`);
  return html`<section class="checks"><h3>${heading}</h3><ul>${lines}</ul></section>`;
}

const EVERYWHERE = [
  "Products delivered are those of the layer tables, in that order, each the right way round.",
  "Nothing wet is closed in; rain is kept off until the outer skin is on.",
  "After the first winter: look at, and measure, the places that this report names.",
];

function tasks(buildUp: BuildUpResult): string[] {
  return [...judged(buildUp), ...values(buildUp), ...sealing(buildUp), ...clearWays(buildUp), ...closing(buildUp)];
}

function judged({ judgement }: BuildUpResult): string[] {
  if (judgement.word === "change it")
    return ["Do not build it as it stands: the judgement is “change it”. Settle the change first."];
  if (judgement.word === "beyond this method")
    return ["Do not close it before the assessment asked for has been made."];
  return [];
}

function values({ layers }: BuildUpResult): string[] {
  const counted = layers.filter(({ type, counted: counts }) => type !== "air" && counts);
  const assumed = counted.filter(({ basis }) => basis === "assumed");
  const confirm = assumed.length > 0 ? [`Confirm the assumed values: ${assumed.map(layerWords).join("; ")}.`] : [];
  const insulation = counted.filter(({ group }) => group === "insulation");
  const fitted =
    insulation.length > 0
      ? [
          `Insulation fills its space with no gap, no slump and no air behind: ${insulation.map(layerWords).join("; ")}.`,
        ]
      : [];
  return [...confirm, ...fitted];
}

/** Findings that say there is nothing on the warm side to be sealed, or that the sheet must come out. */
const NOTHING_TO_SEAL: ReadonlySet<string> = new Set(["vapour-layer-cold-side", "no-vapour-layer-warm-side"]);

function sealing({ layers, vapourLayer, findings }: BuildUpResult): string[] {
  const isVapourLayer = vapourLayerStanding(vapourLayer) === "vapour layer";
  if (!isVapourLayer || findings.some(({ code }) => NOTHING_TO_SEAL.has(code))) return [];
  const names = vapourLayer!.layers.map((index) => layers[index]).filter((layer) => layer !== undefined);
  return [
    `Vapour layer (${names.map(layerWords).join("; ")}): laps and joints taped over a firm backing.`,
    "Its perimeter sealed to floor, walls, ceiling, windows and doors.",
    "Sockets, switches, lamps, pipes and ducts: none through it, or each with a sealed collar or box.",
    "Holes and tears made during the works patched before the lining goes on.",
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
  const timber = wood
    ? [
        "Timber and boards below 20 % by moisture meter before closing, measured at three places: ______ % ______ % ______ %.",
      ]
    : [];
  return timber;
}

function layerWords({ number, name }: LayerResult): string {
  return `layer ${number}, ${shorten(name, 60)}`;
}
