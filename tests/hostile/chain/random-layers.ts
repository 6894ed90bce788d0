import { SHIPPED_MATERIALS as shipped } from "@warmside/core";
import fc from "fast-check";
import { bare, names, quantity, quantityOverPowers, someOf } from "./random-texts.ts";

/** Layers of every kind as texts of a project file. */

const sheetNames = shipped.filter(({ conductivity }) => conductivity === null).map(({ name }) => name);
const solidNames = shipped.filter(({ conductivity }) => conductivity !== null).map(({ name }) => name);

/** Materials that a moisture meter reads: wood and wood-based boards. */
export const TIMBERS: readonly string[] = shipped
  .filter(({ kind, density }) => (kind === "wood" || kind === "board") && density !== null)
  .map(({ name }) => name);

const about = {
  density: quantity(10, 3000, "kg/m3"),
  "specific heat": quantity(100, 4000, "J/(kg K)"),
  emissivity: bare(0.01, 1),
  kind: fc.constantFrom("wood", "board", "mineral", "metal", "plastic", "paper"),
  source: names,
  spread: quantity(0, 60, "%"),
  basis: fc.constantFrom("declared", "tabulated", "assumed"),
};

const solidOnTheSpot = fc.record(
  {
    name: names,
    conductivity: quantityOverPowers(0.012, 400, "W/(m K)"),
    "vapour resistance factor": fc.oneof(bare(1, 300), bare(1, 1e6)),
    "wet vapour resistance factor": bare(1, 300),
    "facing sd": quantityOverPowers(0.01, 2000, "m"),
    "facing emissivity": bare(0.02, 0.9),
    ...about,
  },
  { requiredKeys: ["name", "conductivity", "vapour resistance factor"] },
);

const sdByHumidity = fc
  .tuple(
    fc.uniqueArray(fc.integer({ min: 1, max: 100 }), { minLength: 1, maxLength: 5 }),
    fc.array(quantityOverPowers(0.001, 100, "m"), { minLength: 5, maxLength: 5 }),
  )
  .map(([humidities, sd]) => humidities.sort((a, b) => a - b).map((percent, at) => [`${percent} %`, sd[at]]));

const sheetOnTheSpot = fc
  .tuple(
    names,
    fc.oneof(
      fc.record({ sd: quantityOverPowers(1e-4, 1e6, "m") }),
      fc.record({ "vapour resistance": quantityOverPowers(5e-4, 5e6, "MN s/g") }),
      fc.record({ permeance: quantityOverPowers(1e-5, 3e4, "perm") }),
      fc.record({ "sd by humidity": sdByHumidity }),
    ),
    someOf(about),
  )
  .map(([name, resistance, more]) => ({ name, ...resistance, ...more }));

const fasteners = fc.record(
  {
    "per area": quantity(0.5, 20, "/m2"),
    diameter: quantity(2, 10, "mm"),
    conductivity: quantity(10, 60, "W/(m K)"),
    recess: quantity(0, 4.9, "mm"),
  },
  { requiredKeys: ["per area", "diameter", "conductivity"] },
);

const gaps = fc.oneof(
  quantityOverPowers(0.001, 50, "%"),
  fc.record({ width: quantity(0.1, 20, "mm"), spacing: quantity(0.1, 2.5, "m") }),
  fc.record({ diameter: quantity(0.5, 20, "mm"), "per area": quantity(1, 100, "/m2") }),
);

/** Keys of insulation, which no sheet takes. */
const ofInsulation = { fit: fc.constantFrom("continuous", "gaps", "gaps and air behind"), fasteners };

const extras = (
  rarely: number,
  more: Record<string, fc.Arbitrary<unknown>> = {},
): fc.Arbitrary<Record<string, unknown>> =>
  fc.oneof(
    { weight: rarely, arbitrary: fc.constant({}) },
    {
      weight: 1,
      arbitrary: someOf({
        ...more,
        gaps,
        purpose: fc.constantFrom(
          "vapour layer",
          "deck",
          "damp-proof membrane",
          "radon membrane",
          "weather skin",
          "tanking",
        ),
        bonded: fc.boolean(),
        "facing emissivity inner": bare(0.02, 0.95),
        "facing emissivity outer": bare(0.02, 0.95),
        "facing sd inner": quantityOverPowers(0.01, 1500, "m"),
        "facing sd outer": quantityOverPowers(0.01, 1500, "m"),
      }),
    },
  );

/** Framing within one layer. */
const framingsOfOneLayer = fc.oneof(
  fc.record({
    material: fc.constantFrom("softwood timber", "steel", "mortar protected"),
    fraction: quantity(0, 95, "%"),
  }),
  fc.record({ material: fc.constant("oak"), width: quantity(10, 90, "mm"), spacing: quantity(200, 900, "mm") }),
);

const framed = (named: readonly string[]): fc.Arbitrary<Record<string, unknown>> =>
  fc.oneof(
    { weight: 5, arbitrary: fc.constant({}) },
    { weight: named.length > 0 ? 4 : 0, arbitrary: fc.constantFrom(...named, "none").map((framing) => ({ framing })) },
    { weight: 1, arbitrary: framingsOfOneLayer.map((framing) => ({ framing })) },
  );

const solids = fc
  .tuple(
    fc.oneof({ weight: 3, arbitrary: fc.constantFrom(...solidNames) }, { weight: 1, arbitrary: solidOnTheSpot }),
    fc.oneof(quantity(5, 250, "mm"), quantity(0.5, 6, "inch"), quantity(0.01, 0.3, "m")),
    extras(4, ofInsulation),
  )
  .map(([material, thickness, more]) => ({ material, thickness, ...more }));

const sheets = fc
  .tuple(
    fc.oneof({ weight: 2, arbitrary: fc.constantFrom(...sheetNames) }, { weight: 2, arbitrary: sheetOnTheSpot }),
    extras(2),
  )
  .map(([material, more]) => ({ material, ...more }));

const polythene = quantity(200, 2000, "gauge").map((thickness) => ({
  material: "polyethylene low density",
  thickness,
}));

/** Openings that belong to each ventilation [mm² for a metre or square metre]. */
const OPENINGS: Readonly<Record<"none" | "slight" | "well", readonly [number, number]>> = {
  none: [0, 500],
  slight: [501, 1499],
  well: [1500, 90_000],
};

/** Ends that belong to each. */
const ENDS: Readonly<Record<"none" | "slight" | "well", readonly string[]>> = {
  none: ["closed"],
  slight: ["both ends", "one end", "closed"],
  well: ["both ends", "one end"],
};

const airLayers = (isUpright: boolean): fc.Arbitrary<Record<string, unknown>> =>
  fc.constantFrom("none" as const, "slight" as const, "well" as const).chain((ventilation) => {
    const unit = isUpright ? "mm2/m" : "mm2/m2";
    return fc.record(
      {
        air: quantity(1, 300, "mm"),
        ventilation: fc.constant(ventilation),
        "ventilation area": quantity(OPENINGS[ventilation][0], OPENINGS[ventilation][1], unit),
        open: fc.constantFrom(...ENDS[ventilation]),
        resistance: quantity(0, 2, "m2 K/W"),
        emissivity: bare(0.02, 0.98),
      },
      { requiredKeys: ["air", "ventilation"] },
    );
  });

/** Layers of a build-up, each with a name of its own. */
export function layersOf(isUpright: boolean, named: readonly string[]): fc.Arbitrary<Record<string, unknown>[]> {
  const bodies = fc.oneof(
    { weight: 6, arbitrary: solids },
    { weight: 3, arbitrary: fc.oneof({ weight: 5, arbitrary: sheets }, { weight: 1, arbitrary: polythene }) },
    { weight: 2, arbitrary: airLayers(isUpright) },
  );
  const layers = fc.tuple(bodies, framed(named), names).map(([body, framing, name]) => {
    const { framing: chosen } = framing;
    return { body: { ...body, ...(chosen === undefined || chosen === "none" ? {} : framing) }, name };
  });
  return fc
    .oneof(
      { weight: 79, arbitrary: fc.array(layers, { minLength: 1, maxLength: 5 }) },
      { weight: 1, arbitrary: fc.array(layers, { minLength: 6, maxLength: 20 }) },
    )
    .map((list) => list.map(({ body, name }, at) => ({ ...body, name: `${at + 1} ${name}` })));
}
