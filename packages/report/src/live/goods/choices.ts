import { type Material, SHIPPED_EVERYDAY_NAMES, SHIPPED_MATERIALS } from "@warmside/core";
import { trimmed } from "../../numbers.ts";
import type { Data } from "../edit/parsed.ts";

/** One thing that a layer can be made of. */
export interface Choice {
  words: string;
  /** What sets it apart: its figures, or how air gets in. */
  fact: string;
  layer: Data;
}

/** Choices under one heading. */
export interface Shelf {
  name: string;
  choices: Choice[];
}

/** What a self-builder looks for first, in the order in which a wall is built. */
const ORDINARY = [
  "gypsum plasterboard",
  "polyethylene sheet 0.15 mm",
  "vapour control layer sd 5 m",
  "mineral wool slab",
  "wood fibre batt",
  "foil-faced PIR board",
  "oriented strand board",
  "plywood",
  "wood fibre insulation board",
  "breather membrane",
  "softwood timber",
  "fibre cement board",
  "EPDM sheet",
];

/** The thickness a layer begins with, by the group of its material. */
const USUAL_THICKNESS: Readonly<Record<string, string>> = {
  insulation: "100 mm",
  lining: "12.5 mm",
  "wood-based board": "11 mm",
  timber: "20 mm",
  masonry: "100 mm",
  stone: "100 mm",
  roofing: "4 mm",
  flooring: "5 mm",
  metal: "1 mm",
};
const OTHER_THICKNESS = "10 mm";

const AIR: readonly Choice[] = [
  air("ventilated air gap", "25 mm, open at both ends", { air: "25 mm", ventilation: "well", open: "both ends" }),
  air("closed air space", "25 mm, no openings", { air: "25 mm", ventilation: "none" }),
  air("air gap with a few openings", "25 mm, slightly ventilated", { air: "25 mm", ventilation: "slight" }),
];

/**
 * What can be chosen for the words that are typed: the ordinary goods first where nothing is typed, then the whole
 * table by group.
 *
 * @param query - words, all of which a choice has to have
 * @returns shelves with at least one choice each
 */
export function shelvesFor(query: string): Shelf[] {
  const words = query.toLowerCase().split(/\s+/).filter(Boolean);
  const fits = (text: string): boolean => words.every((word) => text.toLowerCase().includes(word));
  const shelves = new Map<string, Choice[]>();
  const first = [
    ...ORDINARY.flatMap((name) => SHIPPED_MATERIALS.filter((one) => one.name === name)).map(choiceOf),
    ...AIR,
  ];
  shelves.set(
    "ordinary goods",
    first.filter((choice) => fits(choice.words)),
  );
  for (const material of SHIPPED_MATERIALS) {
    const group = material.group ?? "other";
    if (!fits(`${material.name} ${group}`)) continue;
    shelves.set(group, [...(shelves.get(group) ?? []), choiceOf(material)]);
  }
  if (words.length > 0) shelves.set("also called", alsoCalled(fits));
  return [...shelves].flatMap(([name, choices]) => (choices.length === 0 ? [] : [{ name, choices }]));
}

/** Materials by what they are called on site. */
function alsoCalled(fits: (text: string) => boolean): Choice[] {
  return SHIPPED_EVERYDAY_NAMES.filter(({ name }) => fits(name)).flatMap(({ name, materials }) =>
    materials
      .flatMap((row) => SHIPPED_MATERIALS.filter((material) => material.name === row))
      .map((material) => ({ ...choiceOf(material), words: `${name}: ${material.name}` })),
  );
}

function choiceOf(material: Material): Choice {
  const { name, conductivity, equivalentAirLayerThickness: sd, vapourResistanceFactorDry: factor } = material;
  if (sd !== null && conductivity === null)
    return { words: name, fact: `sd ${trimmed(sd, 2)} m`, layer: { material: name } };
  const fact = [
    conductivity === null ? null : `λ ${trimmed(conductivity, 3)}`,
    factor === null ? null : `μ ${trimmed(factor, 1)}`,
  ].filter((part) => part !== null);
  const thickness = USUAL_THICKNESS[material.group ?? ""] ?? OTHER_THICKNESS;
  return { words: name, fact: fact.join(", "), layer: { material: name, thickness } };
}

function air(words: string, fact: string, layer: Data): Choice {
  return { words, fact, layer };
}
