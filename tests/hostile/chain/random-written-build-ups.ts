import fc from "fast-check";
import { STEEPEST_ROOF } from "../../../packages/core/src/project/is-upright.ts";
import { layersOf, TIMBERS } from "./random-layers.ts";
import { bare, names, quantity, quantityOverPowers, someOf, twelve } from "./random-texts.ts";

/** Build-ups as texts of a project file: every element, every far side, every key. */

type Keys = Record<string, unknown>;

/** A floor on a rectangle, some of its sides exposed; edge insulation stays within half of its reach. */
const plans = fc
  .tuple(fc.integer({ min: 2, max: 20 }), fc.integer({ min: 2, max: 20 }), fc.integer({ min: 1, max: 4 }))
  .map(([length, breadth, sides]) => ({
    area: length * breadth,
    perimeter: Math.round(((length + breadth) * sides) / 2),
  }));

const soils = fc.constantFrom("clay or silt", "sand or gravel", "rock", "unknown");

const grounds: fc.Arbitrary<Keys> = fc
  .tuple(
    plans,
    someOf({ "wall thickness": quantity(0.1, 0.6, "m"), soil: soils, membrane: fc.boolean() }),
    fc.option(
      fc.tuple(
        quantity(0.1, 5, "m2 K/W"),
        quantity(10, 100, "mm"),
        fc.constantFrom("width", "depth"),
        fc.integer({ min: 1, max: 9 }),
      ),
    ),
  )
  .map(([{ area, perimeter }, more, edge]) => {
    const ground: Keys = { area: `${area} m2`, perimeter: `${perimeter} m`, ...more };
    if (edge === null) return ground;
    const [resistance, thickness, key, tenths] = edge;
    const furthest = (2 * area) / perimeter / (key === "width" ? 2 : 4);
    const extent = Math.max(0.01, Math.floor(Math.min(2, furthest) * tenths * 10) / 100);
    return { ...ground, "edge insulation": { resistance, thickness, [key]: `${extent} m` } };
  });

const voids: fc.Arbitrary<Keys> = fc.oneof(
  fc
    .tuple(
      plans,
      someOf({
        "wall thickness": quantity(0.1, 0.6, "m"),
        soil: soils,
        height: quantity(0, 1.5, "m"),
        "wall transmittance": quantity(0.1, 4, "W/(m2 K)"),
        openings: quantity(0, 10_000, "mm2/m"),
        wind: quantity(0, 10, "m/s"),
        shelter: fc.constantFrom("sheltered", "average", "exposed"),
        "ground insulation": quantity(0, 5, "m2 K/W"),
      }),
    )
    .map(([{ area, perimeter }, more]) => ({ area: `${area} m2`, perimeter: `${perimeter} m`, ...more })),
  fc.record({
    temperature: fc.oneof(quantity(-20, 20, "°C"), twelve(quantity(-20, 25, "°C"))),
    humidity: fc.oneof(quantity(30, 100, "%"), twelve(quantity(30, 100, "%"))),
  }),
);

const spaces = fc.record({
  area: quantity(5, 60, "m2"),
  external: fc.array(fc.record({ area: quantity(1, 80, "m2"), transmittance: quantity(0.1, 5, "W/(m2 K)") }), {
    minLength: 1,
    maxLength: 3,
  }),
  "air changes": quantity(0.1, 5, "/h"),
  volume: quantity(10, 300, "m3"),
});

/** What a build-up is and faces; rooms other than `indoor` are named here as the project names them. */
const placesOf = (others: readonly string[]): fc.Arbitrary<Keys> => {
  const roofs = fc
    .tuple(
      fc.constantFrom("flat roof", "pitched roof"),
      someOf({
        pitch: fc.oneof(quantity(0, 90, "°"), quantity(0, 90, "deg")),
        "clear sky": fc.boolean(),
        "roof space": fc.constantFrom("tiles without underlay", "felt or boards", "felt or boards, low emissivity"),
      }),
    )
    .map(([element, more]) => ({ element, ...more }));
  const plain: fc.Arbitrary<Keys>[] = [
    fc.constantFrom("wall", "wall", "floor", "partition").map((element) => ({ element })),
    roofs,
    grounds.map((ground) => ({ element: "floor", faces: "ground", ground })),
    voids.map((space) => ({ element: "floor", faces: "void", void: space })),
  ];
  if (others.length === 0) return fc.oneof(...plain);
  const besideRoom = fc
    .tuple(fc.constantFrom("partition", "wall", "floor"), fc.constantFrom(...others), someOf({ space: spaces }))
    .map(([element, faces, more]) => ({ element, faces, ...more }));
  const inRoom = fc.constantFrom(...others).map((room) => ({ element: "wall", room }));
  return fc.oneof(...plain, besideRoom, inRoom);
};

const framings = fc.record(
  {
    studs: fc.record(
      {
        material: fc.constantFrom("softwood timber", "steel", "oak"),
        width: quantity(15, 100, "mm"),
        spacing: quantity(300, 900, "mm"),
        "other timber": quantity(0, 15, "%"),
      },
      { requiredKeys: ["material", "width", "spacing"] },
    ),
    "battens <b>": fc.record({ material: fc.constant("softwood timber"), fraction: quantity(0, 60, "%") }),
    mortar: fc.record({ material: fc.constant("mortar protected"), fraction: quantity(0, 20, "%") }),
  },
  { requiredKeys: [] },
);

const rarerKeys = someOf({
  target: quantity(0.05, 2, "W/(m2 K)"),
  length: quantity(1, 30, "m"),
  "wetted by rain": fc.constantFrom(true, false, "no", "sheltered", "yes"),
  "unheated skin": fc.boolean(),
  "junction factors": fc.array(fc.record({ name: names, factor: bare(0, 1) }), { minLength: 1, maxLength: 3 }),
  "two-season check": fc.boolean(),
  leak: fc.record(
    { length: quantity(0.01, 20, "m"), width: quantityOverPowers(0.01, 20, "mm"), pressure: quantity(0.1, 50, "Pa") },
    { requiredKeys: ["length", "width"] },
  ),
  "variable resistance": fc.boolean(),
});

const areas = fc
  .option(fc.tuple(fc.integer({ min: 5, max: 200 }), fc.option(fc.integer({ min: 1, max: 4 }))))
  .map((areas): Keys => {
    if (areas === null) return {};
    const [area, openings] = areas;
    return { area: `${area} m2`, ...(openings === null ? {} : { openings: `${openings} m2` }) };
  });

/** Water in layers of a material that have a thickness; a meter's reading where the layer is timber. */
const trappedIn = (layers: readonly Keys[]): fc.Arbitrary<Keys> => {
  const able = [...layers.keys()].filter((at) => {
    const { thickness } = layers[at]!;
    return typeof thickness === "string" && !thickness.includes("gauge");
  });
  if (able.length === 0) return fc.constant({});
  const water = fc
    .tuple(
      fc.constantFrom(...able),
      fc.boolean(),
      quantityOverPowers(1e-3, 200, "kg/m2"),
      quantity(1, 200, "%"),
      fc.constantFrom("January", "Apr", "October"),
    )
    .map(([at, byNumber, amount, reading, start]): Keys => {
      const { material } = layers[at]!;
      const isTimber = typeof material === "string" && TIMBERS.includes(material);
      const layer = byNumber ? at + 1 : layers[at]!.name;
      return { layer, ...(isTimber ? { reading } : { amount }), start };
    });
  return fc
    .oneof(
      { weight: 2, arbitrary: fc.constant(null) },
      { weight: 1, arbitrary: fc.oneof(water, fc.array(water, { minLength: 1, maxLength: 3 })) },
    )
    .map((given): Keys => (given === null ? {} : { "trapped water": given }));
};

const variantsOf = (layers: readonly Keys[]): fc.Arbitrary<Keys> => {
  const layerName = fc.constantFrom(...layers.map(({ name }) => name));
  const added = fc.constantFrom<Keys>({ material: "plywood", thickness: "12 mm" }, { material: "breather membrane" });
  const changes = fc.oneof(
    fc.record({ swap: layerName, for: added }),
    fc
      .tuple(added, layerName, fc.constantFrom("before", "after"))
      .map(([add, beside, key]) => ({ add, [key]: beside })),
    ...(layers.length > 1 ? [fc.record({ remove: layerName })] : []),
    fc.record({ set: layerName, name: names.map((name) => `set ${name}`) }),
  );
  const variant = fc.tuple(names, fc.tuple(changes));
  return fc.array(variant, { minLength: 1, maxLength: 2 }).map((list) => ({
    variants: list.map(([name, variantChanges], at) => ({ name: `${at} ${name}`, changes: variantChanges })),
  }));
};

/** A build-up of a project whose other rooms are named. */
export const writtenBuildUps = (others: readonly string[]): fc.Arbitrary<Keys> =>
  fc.tuple(placesOf(others), fc.option(framings), names).chain(([place, framing, name]) => {
    const isSteep = Number.parseFloat(String(place.pitch ?? 0)) > STEEPEST_ROOF;
    const isUpright = place.element === "wall" || place.element === "partition" || isSteep;
    return layersOf(isUpright, Object.keys(framing ?? {})).chain((layers) =>
      fc
        .tuple(
          fc.oneof({ weight: 3, arbitrary: fc.constant<Keys>({}) }, { weight: 1, arbitrary: rarerKeys }),
          areas,
          trappedIn(layers),
          fc.oneof({ weight: 7, arbitrary: fc.constant<Keys>({}) }, { weight: 1, arbitrary: variantsOf(layers) }),
        )
        .map(([more, area, water, variants]) => ({
          name,
          ...place,
          ...(framing === null ? {} : { framings: framing }),
          layers,
          ...more,
          ...area,
          ...water,
          ...variants,
        })),
    );
  });
