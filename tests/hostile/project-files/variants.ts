import { type BadFile, bad, changed, SMALL_PROJECT, topLine } from "./bad-file.ts";

/** The small project whose outer boarding has a name, with a variant of these changes: the first stands in line 20. */
const withChanges = (changes: readonly string[]): string =>
  `${changed(
    "{ material: softwood timber, thickness: 20 mm }",
    "{ name: boarding, material: softwood timber, thickness: 20 mm }\n      - { name: gypsum behind, material: gypsum plasterboard, thickness: 9.5 mm }",
  )}    variants:\n      - name: another\n        changes:\n${changes.map((change) => `          - ${change}\n`).join("")}`;

/** One change that cannot be. */
const change = (title: string, written: string, code: string, says: string): BadFile =>
  bad(title, withChanges([written]), 21, code, says);

/** A price list in the project file. */
const price = (title: string, written: string, code: string, says: string): BadFile =>
  topLine(title, `prices: [ { ${written} } ]`, code, says);

/** Variants, changes, prices and areas that cannot be. */
export const BAD_VARIANTS: readonly BadFile[] = [
  bad(
    "another thickness of what is told by its resistance",
    withChanges(["{ set: batt, thickness: 200 mm }"]).replace(
      "material: mineral wool slab,",
      "material: { name: batt, resistance: R 20, vapour resistance factor: 1 },",
    ),
    21,
    "resistance-of-thickness",
    "told by its resistance",
  ),
  change("a change that is a word", "thicker", "wrong-kind", "Expected a change in braces, for example { set:"),
  change("a change of nothing", "{}", "change-no-verb", "variant 1, another, change 1: the change does not say"),
  change("a key without a verb", "{ thickness: 200 mm }", "change-no-verb", "name it after `set`"),
  change(
    "two verbs",
    "{ remove: boarding, set: mineral wool slab, thickness: 200 mm }",
    "change-two-verbs",
    "has 2 verbs, set and remove",
  ),
  change("a verb that is none", "{ replace: boarding }", "key-unknown", "`replace` is not a key here"),
  change("a verb misspelt", "{ removed: boarding }", "key-unknown", "Write `remove`"),
  change("set without a key", "{ set: boarding }", "change-alone", "at least one key of the layer"),
  change("set with a key misspelt", "{ set: boarding, thicknes: 25 mm }", "key-unknown", "Write `thickness`"),
  change("set without a unit", "{ set: boarding, thickness: 25 }", "unit-missing", "Write `25 mm`"),
  change("set of a place", "{ set: boarding, after: mineral wool slab }", "change-key", "after does not go with `set`"),
  change("swap without for", "{ swap: boarding }", "change-alone", "`for`, with the layer that replaces it"),
  change("swap for a name", "{ swap: boarding, for: plywood }", "wrong-kind", "Expected a layer in braces"),
  change(
    "swap for a board without thickness",
    "{ swap: boarding, for: { material: plywood } }",
    "thickness-missing",
    "change 1, the layer put in: thickness is missing",
  ),
  change(
    "swap for a material that is none",
    "{ swap: boarding, for: { material: plywod, thickness: 9 mm } }",
    "material-unknown",
    "Write `plywood`",
  ),
  change(
    "swap with the new thickness outside its braces",
    "{ swap: boarding, for: { material: plywood, thickness: 9 mm }, thickness: 12 mm }",
    "change-key",
    "inside its braces, after `for`",
  ),
  change("add without a place", "{ add: { material: breather membrane } }", "change-alone", "one of before and after"),
  change(
    "add in two places",
    "{ add: { material: breather membrane }, before: boarding, after: mineral wool slab }",
    "change-two-places",
    "both before and after",
  ),
  change(
    "add with framing that is none",
    "{ add: { material: mineral wool slab, thickness: 50 mm, framing: joists }, after: boarding }",
    "framing-unknown",
    "no framing of this build-up is called joists",
  ),
  change(
    "add beside a layer that is none",
    "{ add: { material: breather membrane }, after: bording }",
    "change-layer-unknown",
    "Perhaps you mean boarding",
  ),
  change("remove with a thickness", "{ remove: boarding, thickness: 3 mm }", "change-key", "`remove` alone"),
  change("remove by number", "{ remove: 3 }", "wrong-kind", "a layer's name, or its material"),
  change("a layer of another build-up", "{ remove: roof felt }", "change-layer-unknown", "no layer of this build-up"),
  change(
    "a material that occurs twice",
    "{ set: gypsum plasterboard, thickness: 15 mm }",
    "change-layer-not-one",
    "layers 1 and 6 are both called gypsum plasterboard",
  ),
  change("move to nowhere", "{ move: boarding }", "change-alone", "one of before and after"),
  change("move beside itself", "{ move: boarding, before: boarding }", "change-moves-nothing", "is already there"),
  change(
    "move to where it is",
    "{ move: boarding, before: gypsum behind }",
    "change-moves-nothing",
    "a place between two other layers",
  ),
  change(
    "a thickness for air",
    '{ set: "air layer, 25 mm", thickness: 50 mm }',
    "key-not-for-air",
    "for example `air: 25",
  ),
  change("air in a board", "{ set: boarding, air: 50 mm }", "layer-both", "both a material and air"),
  change(
    "a thickness for a sheet",
    "{ set: polyethylene sheet 0.15 mm, thickness: 2 mm }",
    "sheet-with-thickness",
    "a sheet takes no thickness",
  ),
  change(
    "a board of a sheet's thickness",
    "{ set: polyethylene sheet 0.15 mm, material: plywood }",
    "thickness-missing",
    "thickness is missing",
  ),
  bad(
    "a layer that an earlier change took out",
    withChanges(["{ remove: mineral wool slab }", "{ set: mineral wool slab, thickness: 200 mm }"]),
    22,
    "change-layer-gone",
    "To replace a layer use `swap`",
  ),
  bad(
    "every layer taken out",
    withChanges([
      "{ remove: boarding }", "{ remove: gypsum behind }", "{ remove: mineral wool slab }",
      "{ remove: polyethylene sheet 0.15 mm }", "{ remove: 'air layer, 25 mm' }",
    ]).replace("      - { material: gypsum plasterboard, thickness: 12.5 mm }\n", ""),
    20,
    "variant-nothing-left",
    "remove every layer",
  ), // biome-ignore format: a list of five
  {
    title: "two variants of one name, and a change that is faulty beside one that is not",
    text: `${withChanges(["{ remove: boarding }"])}      - name: Another\n        changes:\n          - { set: boarding, thickness: 22 }\n          - { remove: gypsum behind }\n`,
    problems: [
      { line: 22, code: "variant-twice", says: "an earlier variant is already called Another" },
      { line: 24, code: "unit-missing", says: "variant 2, Another, change 1" },
    ],
  },
  bad(
    "a variant without changes",
    `${SMALL_PROJECT}    variants:\n      - { name: another }\n`,
    18,
    "key-missing",
    "changes is missing",
  ),
  bad(
    "variants of a build-up whose own layer is faulty: that is told once",
    withChanges(["{ remove: mineral wool slab }"]).replace("140 mm", "140"),
    14,
    "unit-missing",
    "layer 3, mineral wool slab",
  ),
  bad(
    "openings larger than the area",
    changed("    framings:", "    area: 20 m2\n    openings: 24 m2\n    framings:"),
    10,
    "openings-fill-all",
    "openings of 24 m2 leave nothing of an area of 20 m2",
  ),
  topLine("a price that is a word", "prices: [ dear ]", "wrong-kind", "Expected a price in braces"),
  price("a price for nothing", "material: plywood, price: 14", "key-missing", "per is missing"),
  price("a price per bag in the project file", "material: plywood, per: bag, price: 4", "not-one-of", "m2, m3, roll"),
  price("no price", "material: plywood, per: m2", "price-missing", "the price per m2 is missing"),
  price("a price with its currency", "material: plywood, per: m2, price: £4", "number-wanted", "price is not a number"),
  price(
    "a price below nothing",
    "material: plywood, per: m2, price: -4",
    "impossible-value",
    "amounts of money are 0 to",
  ),
  price("a sheet of unknown size", "material: plywood, per: sheet, price: 40", "price-no-cover", "one sheet covers"),
  price(
    "a size where nothing comes in pieces",
    "material: plywood, per: m2, price: 14, covers: 3 m2",
    "price-key-of-piece",
    "covers does not go with a price per m2",
  ),
  price(
    "a lap of an unknown width",
    "material: breather membrane, per: roll, covers: 75 m2, lap: 150 mm",
    "price-lap-alone",
    "`width` as well",
  ),
  price(
    "a lap as wide as the roll",
    "material: breather membrane, per: roll, covers: 75 m2, width: 0.15 m, lap: 150 mm",
    "price-lap-too-wide",
    "leave nothing of the width",
  ),
  price("waste as a bare number", "material: plywood, per: m2, price: 14, waste: 10", "unit-missing", "Write `10 %`"),
  topLine(
    "two prices for the same",
    "prices: [ { material: plywood, per: m2, price: 14 }, { material: Plywood, per: m2, price: 15 } ]",
    "price-twice",
    "State the `thickness` that each price is for",
  ),
  {
    title: "two prices for the same in a table",
    text: changed("climate:", "prices: my-prices.csv\nclimate:"),
    files: { "my-prices.csv": "material,per,price\nplywood,m2,14\nplywood,m2,15\n" },
    problems: [{ line: 3, code: "price-twice", says: "table my-prices.csv, row plywood" }],
  },
];
