import fc from "fast-check";
import { between } from "../../published/random-sections.ts";
import { bare, quantity, someOf, twelve } from "./random-texts.ts";

/** Rooms of every kind, and climate tables of the user's own, as texts of a project file. */

const percent = quantity(25, 75, "%");

const humidities = fc.oneof(
  fc.constantFrom("class 1", "class 2", "class 3", "class 4", "class 5"),
  fc.constantFrom("class 2", "class 3", "class 4"),
  percent,
  percent,
  twelve(quantity(5, 100, "%")),
  fc.constantFrom("normal by outdoor temperature", "high by outdoor temperature"),
  fc.record({
    production: quantity(0, 12, "kg/day"),
    volume: quantity(20, 300, "m3"),
    "air changes": quantity(0.3, 6, "/h"),
  }),
);

const markings = someOf({ "bursts of steam": fc.boolean(), pool: fc.boolean() });

const heated = fc
  .tuple(
    between(16, 24),
    humidities,
    fc.option(fc.tuple(bare(1, 7), fc.option(quantity(0, 12, "°C"), { nil: undefined })), { nil: undefined }),
    fc.option(between(0, 6), { nil: undefined, freq: 3 }),
    fc.option(quantity(30, 80, "%"), { nil: undefined }),
  )
  .map(([setPoint, humidity, days, above, whenCooled]) => ({
    heating: `${setPoint.toFixed(1)} °C`,
    humidity,
    ...(days === undefined ? {} : { "heated days": days[0] }),
    ...(days?.[1] === undefined ? {} : { otherwise: days[1] }),
    ...(above === undefined ? {} : { cooling: `${(setPoint + above + 0.1).toFixed(1)} °C` }),
    ...(above === undefined || whenCooled === undefined ? {} : { "humidity when cooled": whenCooled }),
  }));

const held = fc.record({
  temperature: fc.oneof(
    quantity(-25, 40, "°C"),
    quantity(10, 25, "°C"),
    twelve(quantity(-60, 60, "°C")),
    fc.constant("by outdoor temperature"),
  ),
  humidity: fc.oneof(percent, percent, percent, twelve(quantity(1, 100, "%"))),
});

const unheated = fc.constant({ unheated: true });

/** A room as its keys. */
export const rooms: fc.Arbitrary<Record<string, unknown>> = fc
  .tuple(
    fc.oneof({ weight: 4, arbitrary: heated }, { weight: 2, arbitrary: held }, { weight: 1, arbitrary: unheated }),
    markings,
  )
  .map(([rules, marks]) => ({ ...rules, ...marks }));

/** Months of a place that nobody measured: a year that swings, or twelve months each on its own. */
export const climateTables: fc.Arbitrary<string> = fc
  .tuple(
    fc.oneof(
      fc
        .tuple(between(-30, 35), between(0, 20))
        .map(([mean, swing]) => Array.from({ length: 12 }, (_, m) => mean - swing * Math.cos((2 * Math.PI * m) / 12))),
      twelve(between(-60, 50)),
    ),
    twelve(between(10, 100)),
  )
  .map(([temperatures, humidities]) => {
    const rows = temperatures.map((degrees, month) =>
      [month + 1, degrees.toFixed(1), humidities[month]!.toFixed(1)].join(","),
    );
    return ["# invented for a test", "# altitude: 25 m", "month,temperature_C,relative_humidity_pct", ...rows].join(
      "\n",
    );
  });
