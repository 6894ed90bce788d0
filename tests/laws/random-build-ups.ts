import fc from "fast-check";
import { vapourPressure } from "../../packages/core/src/air/humidity.ts";
import type {
  AirLayer,
  AirMonths,
  BuildUp,
  Element,
  Framing,
  Ground,
  HumidityRule,
  Layer,
  Material,
  Room,
  Soil,
  SolidLayer,
  TemperatureRule,
  UnderfloorVoid,
} from "../../packages/core/src/project/types.ts";
import { roomMonths } from "../../packages/core/src/rooms/room-months.ts";
import type { Site } from "../../packages/core/src/surroundings/far-side-months.ts";
import { air, buildUp, framing, material, sheet, solid } from "../published/build-up-by-hand.ts";
import { airMonths, between, overPowers } from "../published/random-sections.ts";

/** Random build-ups as a project could hold them: within the ranges that a file may state, extremes included. */

/** A value in one case of so many, otherwise none. */
const onceIn = <Value>(cases: number, value: fc.Arbitrary<Value>): fc.Arbitrary<Value | null> =>
  fc.oneof({ weight: cases - 1, arbitrary: fc.constant(null) }, { weight: 1, arbitrary: value });
const rarely = <Value>(value: fc.Arbitrary<Value>): fc.Arbitrary<Value | null> => onceIn(4, value);

const solidMaterials: fc.Arbitrary<Material> = fc
  .record({
    conductivity: overPowers(0.018, 5),
    wet: overPowers(1, 200),
    dryOverWet: between(1, 3),
    kind: fc.constantFrom("wood", "board", "mineral", "plastic", "paper", null),
    density: between(15, 2500),
  })
  .map(({ conductivity, wet, dryOverWet, kind, density }) =>
    material(conductivity, wet * dryOverWet, { vapourResistanceFactorWet: wet, kind, density }),
  );

const emissivities = fc.constantFrom(0.9, 0.9, 0.9, 0.05, 0.2);

const solidLayers = (framings: fc.Arbitrary<Framing | null>): fc.Arbitrary<SolidLayer> =>
  fc
    .record({
      material: solidMaterials,
      thickness: overPowers(0.001, 0.4),
      framing: framings,
      fit: fc.constantFrom("continuous", "continuous", "gaps", "gaps and air behind"),
      fasteners: rarely(
        fc.record({
          perArea: between(1, 10),
          diameter: between(0.002, 0.008),
          conductivity: between(10, 60),
          recess: fc.constant(0),
        }),
      ),
      emissivityInner: emissivities,
      emissivityOuter: emissivities,
      facingInner: fc.constantFrom(0, 0, 0, 1500, 20),
      facingOuter: fc.constantFrom(0, 0, 0, 1500, 20),
    })
    .map(({ thickness, ...more }) => solid(thickness, 1, { ...more, name: more.material.name }));

const sheets = (framings: fc.Arbitrary<Framing | null>): fc.Arbitrary<SolidLayer> =>
  fc
    .record({ sd: overPowers(0.001, 2000), gaps: rarely(overPowers(1e-5, 1)), framing: framings })
    .map(({ sd, gaps, framing }) => sheet(sd, { framing, gaps: gaps === null ? null : { share: gaps, laps: null } }));

const airLayers = (framings: fc.Arbitrary<Framing | null>): fc.Arbitrary<AirLayer> =>
  fc
    .record({
      thickness: overPowers(0.001, 0.3),
      framing: framings,
      ventilation: fc.constantFrom("none", "none", "slight", "well"),
      ventilationArea: rarely(between(0, 2000e-6)),
      resistance: rarely(between(0.01, 0.9)),
      emissivity: rarely(between(0.02, 0.95)),
    })
    .map(({ thickness, ...more }) => air(thickness, more));

const framingsOfBuildUp: fc.Arbitrary<Framing[]> = fc
  .record({
    width: between(0.03, 0.1),
    spacing: between(0.3, 0.8),
    otherTimber: between(0, 0.1),
    battens: between(0, 1),
    mortar: between(0.02, 0.15),
  })
  .map(({ width, spacing, otherTimber, battens, mortar }) => [
    {
      ...framing("studs", width / spacing + otherTimber),
      origin: { kind: "width and spacing", width, spacing, otherTimber, otherTimberByDefault: false },
    },
    framing("battens", battens),
    { ...framing("mortar", mortar, 0.88), material: material(0.88, 15, { name: "mortar", kind: "mineral" }) },
  ]);

const layersOf = (framings: readonly Framing[]): fc.Arbitrary<Layer[]> => {
  const one = onceIn(3, fc.constantFrom(...framings));
  const layer: fc.Arbitrary<Layer> = fc.oneof(
    { weight: 6, arbitrary: solidLayers(one) },
    { weight: 2, arbitrary: sheets(one) },
    { weight: 2, arbitrary: airLayers(one) },
  );
  // The layer on the room's side is solid or a sheet, as a reader would ask for.
  return fc
    .tuple(fc.oneof(solidLayers(one), sheets(one)), fc.array(layer, { maxLength: 8 }))
    .map(([first, others]) => [first, ...others]);
};

/** A rectangle of 1.5 to 20 m, all sides exposed or only some: area [m²] and exposed perimeter [m]. */
const floorPlans = fc
  .record({
    length: between(1.5, 20),
    breadth: between(1.5, 20),
    exposed: between(0.2, 1),
    wallThickness: between(0.1, 0.5),
    soil: fc.constantFrom<Soil[]>("clay or silt", "sand or gravel", "rock", "unknown"),
  })
  .map(({ length, breadth, exposed, ...more }) => ({
    area: length * breadth,
    perimeter: 2 * (length + breadth) * exposed,
    ...more,
  }));

/** Edge insulation reaches at most half of B inwards: further in, the floor's two edges would meet. */
const grounds: fc.Arbitrary<Ground> = fc
  .tuple(
    floorPlans,
    rarely(
      fc.record({
        resistance: between(0.3, 4),
        thickness: between(0.01, 0.1),
        reach: between(0.05, 1),
        upright: fc.boolean(),
      }),
    ),
    fc.boolean(),
  )
  .map(([plan, edge, membrane]) => {
    const halfDimension = plan.area / plan.perimeter;
    const insulation = edge === null ? null : { ...edge, extent: edge.reach * Math.min(2, halfDimension) };
    return { ...plan, membrane, edgeInsulation: insulation };
  });

const voids: fc.Arbitrary<UnderfloorVoid> = fc
  .tuple(
    floorPlans,
    fc.record({
      height: between(0, 1.5),
      wallTransmittance: between(0.2, 3),
      openings: between(0, 0.01),
      windSpeed: between(0, 8),
      shelter: fc.constantFrom<UnderfloorVoid["shelter"][]>("sheltered", "average", "exposed"),
      groundInsulation: between(0, 3),
    }),
  )
  .map(([plan, rest]) => ({ ...plan, ...rest }));

const elements: fc.Arbitrary<Partial<BuildUp> & { element: Element }> = fc.oneof(
  fc.record({ element: fc.constant<Element>("wall") }),
  fc.record({
    element: fc.constantFrom<Element>("flat roof", "pitched roof"),
    pitch: rarely(between(0, 90)),
    clearSky: fc.boolean(),
    roofSpace: rarely(fc.constantFrom("tiles without underlay", "felt or boards", "felt or boards, low emissivity")),
  }),
  fc.record({ element: fc.constant<Element>("floor") }),
  fc.record({ element: fc.constant<Element>("floor"), faces: fc.constant("ground"), ground: grounds }),
  fc.record({ element: fc.constant<Element>("floor"), faces: fc.constant("void"), void: voids }),
  fc.record({ element: fc.constantFrom<Element>("partition", "floor"), faces: fc.constantFrom("damp room", "store") }),
);

/** A build-up of one to nine layers: framing that runs through several and crosses, sheets, air, facings, any element. */
export const buildUps: fc.Arbitrary<BuildUp> = fc
  .record({ element: elements, layers: framingsOfBuildUp.chain(layersOf) })
  .map(({ element, layers }) => buildUp(layers, element));

const temperatureRules: fc.Arbitrary<TemperatureRule> = fc.oneof(
  fc.record({
    kind: fc.constant("heated" as const),
    setPoint: between(5, 26),
    daysPerWeek: fc.integer({ min: 1, max: 7 }),
    otherwise: rarely(between(0, 12)),
  }),
  fc.record({
    kind: fc.constant("held" as const),
    months: fc.array(between(-25, 40), { minLength: 12, maxLength: 12 }),
  }),
  fc.constant({ kind: "unheated" as const }),
);

const humidityRules: fc.Arbitrary<HumidityRule> = fc.oneof(
  fc.record({ kind: fc.constant("class" as const), class: fc.constantFrom(1, 2, 3, 4, 5) }),
  fc.record({
    kind: fc.constant("months" as const),
    relativeHumidity: fc.array(between(0.05, 1), { minLength: 12, maxLength: 12 }),
  }),
  fc.record({ kind: fc.constant("by outdoor temperature" as const), level: fc.constantFrom("normal", "high") }),
  fc.record({
    kind: fc.constant("balance" as const),
    production: between(0, 20 / 86_400),
    volume: between(20, 300),
    airChanges: between(0.2 / 3600, 3 / 3600),
  }),
  fc.constant({ kind: "as outdoors" as const }),
);

const roomsNamed = (name: string): fc.Arbitrary<Room> =>
  fc
    .record({ temperature: temperatureRules, cooling: rarely(between(16, 28)), humidity: humidityRules })
    .map((rules) => ({ name, humidityWhenCooled: null, burstsOfSteam: false, pool: false, ...rules }));

/** A place: a year that swings about a mean, or twelve months each on its own. */
const yearThatSwings: fc.Arbitrary<AirMonths> = fc
  .record({
    mean: between(-12, 29),
    swing: between(0, 20),
    humidity: fc.array(between(0.25, 1), { minLength: 12, maxLength: 12 }),
  })
  .map(({ mean, swing, humidity }) => {
    const temperature = humidity.map((_, month) => mean - swing * Math.cos((2 * Math.PI * month) / 12));
    return {
      temperature,
      vapourPressure: temperature.map((degrees, month) => vapourPressure(humidity[month]!, degrees)),
    };
  });

/** Outdoor air and the air of three rooms; some months may be over saturation, which the sums have to stand. */
export const sites: fc.Arbitrary<Site> = fc
  .record({
    outdoor: fc.oneof(yearThatSwings, airMonths(-35, 45, 0.05, 1)),
    indoor: roomsNamed("indoor"),
    damp: roomsNamed("damp room"),
    store: roomsNamed("store"),
  })
  .map(({ outdoor, indoor, damp, store }) => ({
    outdoor,
    rooms: new Map([indoor, damp, store].map((room) => [room.name, roomMonths(room, outdoor, 1)])),
  }));

/** A build-up with its site. */
export const situations: fc.Arbitrary<{ buildUp: BuildUp; site: Site }> = fc.record({ buildUp: buildUps, site: sites });
