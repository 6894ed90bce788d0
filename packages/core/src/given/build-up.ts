import { byKind, keys, listOf, months, oneOf, optional, orNull, quantity, text, truth, whole } from "./checks.ts";
import type { Check, Fault } from "./faults.ts";
import { checkGround, checkVoid } from "./floors.ts";

/** A material with the values used in the calculation. */
export const checkMaterial: Check = keys({
  name: text,
  kind: orNull(oneOf("wood", "board", "mineral", "metal", "plastic", "paper")),
  density: orNull(quantity("density")),
  conductivity: orNull(quantity("conductivity")),
  specificHeat: orNull(quantity("specific heat")),
  vapourResistanceFactorDry: orNull(quantity("vapour resistance factor", { high: Number.MAX_VALUE })),
  vapourResistanceFactorWet: orNull(quantity("vapour resistance factor", { high: Number.MAX_VALUE })),
  equivalentAirLayerThickness: orNull(quantity("sd", { low: 0 })),
  emissivity: quantity("emissivity"),
  facingInner: orNull(quantity("sd", { low: 0 })),
  facingOuter: orNull(quantity("sd", { low: 0 })),
});

/** Framing of a layer. */
export const checkFraming: Check = keys({
  name: text,
  material: checkMaterial,
  share: quantity("share of the area", { high: 1 }),
  origin: byKind("kind", {
    fraction: keys({}),
    "width and spacing": keys({
      width: quantity("width"),
      spacing: quantity("spacing"),
      otherTimber: quantity("share of the area"),
    }),
    channel: keys({
      channel: keys({ sheet: quantity("thickness of sheet metal"), flange: quantity("flange"), lip: quantity("lip") }),
      spacing: quantity("spacing"),
    }),
  }),
  ofOneLayer: truth,
});

/** A sheet has no thickness. */
const NONE = { low: 0, high: 0 };

const solid = (thickness: Check): Check =>
  keys({
    name: text,
    material: checkMaterial,
    thickness,
    framing: orNull(checkFraming),
    fit: oneOf("continuous", "gaps", "gaps and air behind"),
    fasteners: orNull(
      keys({
        perArea: quantity("fasteners per area"),
        diameter: quantity("diameter of a fastener"),
        conductivity: quantity("conductivity"),
        recess: quantity("recess"),
      }),
    ),
    emissivityInner: quantity("emissivity"),
    emissivityOuter: quantity("emissivity"),
    facingInner: quantity("sd", { low: 0 }),
    facingOuter: quantity("sd", { low: 0 }),
    bonded: truth,
  });

const airLayer: Check = keys({
  name: text,
  thickness: quantity("thickness of an air layer"),
  ventilation: oneOf("none", "slight", "well"),
  ventilationArea: orNull(quantity("ventilation area level")),
  open: orNull(oneOf("both ends", "one end", "closed")),
  resistance: orNull(quantity("thermal resistance")),
  emissivity: orNull(quantity("emissivity")),
  framing: orNull(checkFraming),
});

const layerOfKind: Check = byKind("type", {
  material: solid(quantity("thickness")),
  sheet: solid(quantity("thickness", NONE)),
  air: airLayer,
});

/** A layer with a thickness has λ and μ; a sheet has an sd. */
export const checkLayer: Check = (value, path) => {
  const faults = layerOfKind(value, path);
  if (faults.length > 0) return faults;
  const { type, material: of } = value as { type: string; material: Readonly<Record<string, unknown>> };
  if (type === "air") return [];
  const needed = type === "sheet" ? ["equivalentAirLayerThickness"] : ["conductivity", "vapourResistanceFactorDry"];
  return needed
    .filter((key) => of[key] === null)
    .map((key): Fault => ({ kind: "type", path: [...path, "material", key], value: null, expected: "a number" }));
};

/** Twelve months of air: temperature [°C] and vapour pressure [Pa]. */
export const checkAir: Check = keys({
  temperature: months(quantity("temperature", { low: -100, high: 200 })),
  vapourPressure: months(quantity("vapour pressure", { low: 0, high: 100_000 })),
});

/** A build-up ready to be calculated. Each variant is checked when it is itself calculated. */
export const checkBuildUp: Check = keys({
  name: text,
  slug: text,
  element: oneOf("wall", "flat roof", "pitched roof", "floor", "partition"),
  room: text,
  faces: text,
  target: orNull(quantity("transmittance")),
  pitch: orNull(quantity("pitch")),
  span: orNull(quantity("span")),
  clearSky: truth,
  layers: listOf(checkLayer, 1),
  area: orNull(quantity("area")),
  openings: orNull(quantity("area", { low: 0 })),
  length: orNull(quantity("length")),
  wettedByRain: orNull(oneOf("no", "sheltered", "yes")),
  trappedWater: listOf(keys({ layer: whole(0, 1000), startMonth: whole(0, 11) })),
  junctionFactors: listOf(keys({ name: text, factor: quantity("temperature factor") })),
  leak: orNull(
    keys({ length: quantity("length", { low: 0 }), width: quantity("width of a gap"), pressure: quantity("pressure") }),
  ),
  twoSeasonCheck: truth,
  variableResistance: truth,
  ground: orNull(checkGround),
  void: orNull(checkVoid),
  space: orNull(keys({ area: quantity("area"), volume: quantity("volume", { low: 0 }) })),
  roofSpace: orNull(oneOf("tiles without underlay", "felt or boards", "felt or boards, low emissivity")),
  variants: optional(listOf(keys({ name: text }))),
});
