/** A build-up to begin with, as a whole project file. */
export interface Starter {
  name: string;
  /** One line beneath its picture. */
  words: string;
  fileName: string;
  text: string;
}

interface Parts {
  words: string;
  element: string;
  target: string;
  before?: string;
  framing?: string;
  layers: readonly string[];
}

const WALL_STUDS = "studs: { material: softwood timber, width: 45 mm, spacing: 600 mm }";
const JOISTS = "joists: { material: softwood timber, width: 47 mm, spacing: 400 mm }";

const PARTS: Readonly<Record<string, Parts>> = {
  "stud wall": {
    words: "wool between studs, cladding outside",
    element: "wall",
    target: "0.25",
    framing: WALL_STUDS,
    layers: [
      "material: gypsum plasterboard, thickness: 12.5 mm",
      "material: mineral wool slab, thickness: 140 mm, framing: studs",
      "material: oriented strand board, thickness: 11 mm",
      "material: breather membrane",
      "air: 25 mm, ventilation: well, open: both ends",
      "name: cladding, material: softwood timber, thickness: 20 mm",
    ],
  },
  "warm flat roof": {
    words: "insulation on top of the deck",
    element: "flat roof",
    target: "0.18",
    before: "pitch: 2 °",
    layers: [
      "material: gypsum plasterboard, thickness: 12.5 mm",
      "name: joist space, air: 150 mm, ventilation: none",
      "name: deck, material: plywood, thickness: 18 mm",
      "material: polyethylene sheet 0.25 mm, purpose: vapour layer",
      "material: foil-faced PIR board, thickness: 120 mm",
      "name: roof covering, material: EPDM sheet, thickness: 1.2 mm, purpose: weather skin",
    ],
  },
  "cold flat roof": {
    words: "insulation between the joists",
    element: "flat roof",
    target: "0.18",
    before: "pitch: 2 °",
    framing: JOISTS,
    layers: [
      "material: gypsum plasterboard, thickness: 12.5 mm",
      "material: polyethylene sheet 0.15 mm, purpose: vapour layer",
      "material: mineral wool slab, thickness: 170 mm, framing: joists",
      "air: 50 mm, ventilation: well, open: both ends",
      "name: deck, material: oriented strand board, thickness: 18 mm",
      "name: roof covering, material: bitumen sheet, thickness: 4 mm, purpose: weather skin",
    ],
  },
  "raised floor": {
    words: "joists over open air",
    element: "floor",
    target: "0.22",
    framing: JOISTS,
    layers: [
      "name: floor deck, material: oriented strand board, thickness: 22 mm",
      "material: mineral wool slab, thickness: 145 mm, framing: joists",
      "material: breather membrane",
    ],
  },
  "lined masonry": {
    words: "brick with insulation inside",
    element: "wall",
    target: "0.30",
    before: "wetted by rain: sheltered",
    framing: "battens: { material: softwood timber, width: 45 mm, spacing: 600 mm }",
    layers: [
      "material: gypsum plasterboard, thickness: 12.5 mm",
      "material: vapour control layer sd 5 m, purpose: vapour layer",
      "material: mineral wool slab, thickness: 90 mm, framing: battens",
      "name: brick, material: solid clay brick 1800, thickness: 215 mm",
    ],
  },
  container: {
    words: "a steel box, insulated inside",
    element: "wall",
    target: "0.35",
    framing: "battens: { material: softwood timber, width: 45 mm, spacing: 600 mm }",
    layers: [
      "material: plywood, thickness: 9 mm",
      "material: polyethylene sheet 0.15 mm, purpose: vapour layer",
      "material: mineral wool slab, thickness: 75 mm, framing: battens",
      "name: steel skin, material: steel, thickness: 2 mm",
    ],
  },
  "log cabin": {
    words: "solid timber, nothing else",
    element: "wall",
    target: "0.60",
    layers: ["name: logs, material: spruce, thickness: 150 mm"],
  },
};

/** What a project can begin with. */
export const STARTERS: readonly Starter[] = Object.entries(PARTS).map(([name, parts]) => ({
  name,
  words: parts.words,
  fileName: `my-${name.replaceAll(" ", "-")}.yaml`,
  text: textOf(name, parts),
}));

function textOf(name: string, { element, target, before, framing, layers }: Parts): string {
  return [
    "project: My studio",
    "climate: de-bilt",
    "indoor: { heating: 20 °C, humidity: class 3 }",
    "build-ups:",
    `  - name: ${name.charAt(0).toUpperCase()}${name.slice(1)}`,
    `    element: ${element}`,
    `    target: ${target} W/(m2 K)`,
    ...(before === undefined ? [] : [`    ${before}`]),
    ...(framing === undefined ? [] : ["    framings:", `      ${framing}`]),
    `    layers:                   # from the room ${element === "floor" ? "downwards" : "outwards"}`,
    ...layers.map((layer) => `      - { ${layer} }`),
    "",
  ].join("\n");
}
