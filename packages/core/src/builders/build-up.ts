import { checkBuildUp } from "../given/build-up.ts";
import { usualOtherTimber } from "../project/other-timber.ts";
import { makeSlug } from "../project/slug.ts";
import type { BuildUp, Element, Framing, Layer } from "../project/types.ts";
import { requireList, requireObject } from "../require.ts";
import { checked } from "./given-or-thrown.ts";

/** A build-up: its layers, and anything that differs from a wall facing outdoors. */
export interface BuildUpValues extends Partial<Omit<BuildUp, "layers">> {
  layers: readonly Layer[];
}

/**
 * A build-up.
 *
 * @param values - layers from the room outwards; everything else defaults as in a project file: a wall of the room
 *   `indoor`, facing outdoors
 * @returns the build-up; framing given without other timber gets the share usual for the element
 * @throws ProblemsError with every problem, in the words of the project file's reader
 */
export function buildUp(values: BuildUpValues): BuildUp {
  requireObject(values, "values", ["layers"]);
  requireList(values.layers, "layers");
  const { name = "build-up", element = "wall" } = values;
  const made: BuildUp = {
    slug: makeSlug(name, new Set()),
    room: "indoor",
    faces: "outdoors",
    target: null,
    pitch: null,
    span: null,
    clearSky: false,
    ground: null,
    void: null,
    voidClimate: null,
    space: null,
    roofSpace: null,
    area: null,
    openings: null,
    length: null,
    rainOfHeatingSeason: null,
    wettedByRain: null,
    unheatedSkin: false,
    junctionFactors: [],
    oddEnds: null,
    twoSeasonCheck: false,
    leak: null,
    trappedWater: [],
    variableResistance: false,
    variants: [],
    ...values,
    name,
    element,
    layers: values.layers.map((layer) => ofElement(layer, element)),
  };
  return checked(made, checkBuildUp, name);
}

function ofElement(layer: Layer, element: Element): Layer {
  return layer.framing === null ? layer : { ...layer, framing: withOtherTimberOf(layer.framing, element) };
}

function withOtherTimberOf(framing: Framing, element: Element): Framing {
  const { origin } = framing;
  if (origin.kind !== "width and spacing" || !origin.otherTimberByDefault) return framing;
  const otherTimber = usualOtherTimber(element);
  return { ...framing, share: origin.width / origin.spacing + otherTimber, origin: { ...origin, otherTimber } };
}
