import { SHIPPED_CLIMATES, type Supplies } from "@warmside/core";
import fc from "fast-check";
import { stringify } from "yaml";
import { climateTables, rooms } from "./random-rooms.ts";
import { bare, names, quantity, someOf } from "./random-texts.ts";
import { writtenBuildUps } from "./random-written-build-ups.ts";

/** A project file as text, with the tables that it names. */
export interface ProjectFile {
  text: string;
  supplies: Supplies;
}

const places = Object.keys(SHIPPED_CLIMATES);

const anyHeads = someOf({
  reference: names,
  query: someOf({
    question: names,
    to: names,
    site: names,
    "prepared by": names,
    date: names,
    drawings: fc.array(names, { minLength: 1, maxLength: 3 }),
  }),
  severity: fc.oneof(
    fc.constantFrom("mean year", "one in ten colder", "one in ten warmer"),
    fc.integer({ min: -9, max: 9 }).map((offset) => `${offset < 0 ? "-" : "+"}${Math.abs(offset)} K`),
  ),
  altitude: quantity(0, 900, "m"),
  "lapse rate": quantity(0, 10, "K/km"),
  "humidity margin": bare(1, 1.3),
  currency: names,
  "hour rate": bare(0, 80),
  "heat price": quantity(0, 1, "/kWh"),
  accept: fc.array(names, { minLength: 1, maxLength: 2 }),
  "climates for place": fc.uniqueArray(fc.constantFrom(...places), { minLength: 1, maxLength: 3 }),
  prices: fc.array(
    fc.record(
      {
        material: fc.constantFrom("plywood", "breather membrane", "<script>alert(7)</script>"),
        per: fc.constantFrom("m2", "m3", "m"),
        price: bare(0, 90),
        waste: quantity(0, 30, "%"),
        hours: bare(0, 3),
      },
      { requiredKeys: ["material", "per", "price"] },
    ),
    { minLength: 1, maxLength: 1 },
  ),
});

/** A lapse rate goes with an altitude only. */
const heads = anyHeads.map((head) => {
  const { "lapse rate": _lapseRate, ...others } = head;
  return head.altitude === undefined ? others : head;
});

const climates = fc.oneof(
  { weight: 2, arbitrary: fc.constantFrom(...places).map((name) => ({ name, table: "" })) },
  { weight: 1, arbitrary: climateTables.map((table) => ({ name: "weather.csv", table })) },
);

/** Names of rooms, some of which would act in a page. */
const otherRooms = fc.dictionary(
  fc.constantFrom("damp room", "store", "<b>kiln</b>", "signal", 'shop "quoted"', "\u202eroom"),
  rooms,
  { maxKeys: 2, noNullPrototype: true },
);

/** One build-up, two in one file of ten. */
const buildUpsBeside = (others: readonly string[]): fc.Arbitrary<Record<string, unknown>[]> => {
  const one = writtenBuildUps(others);
  return fc.oneof({ weight: 9, arbitrary: fc.tuple(one) }, { weight: 1, arbitrary: fc.tuple(one, one) });
};

/** Texts of whole project files; nearly all are valid, some have a room that cannot exist in its climate. */
export const projectFiles: fc.Arbitrary<ProjectFile> = fc
  .tuple(names, heads, climates, rooms, otherRooms)
  .chain(([project, head, climate, indoor, others]) =>
    buildUpsBeside(Object.keys(others)).map((buildUps): ProjectFile => {
      const { name, table } = climate;
      const file = { project, ...head, climate: name, indoor, rooms: others, "build-ups": buildUps };
      const supply = { file: () => (table === "" ? { failure: "there is no such file" } : { text: table }) };
      return { text: stringify(file, { aliasDuplicateObjects: false }), supplies: supply };
    }),
  );
