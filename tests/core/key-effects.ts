import {
  assessBuildUp,
  assessProject,
  type Project,
  problemInText,
  readProject,
  spreadQuestion,
  studyPlacement,
  surroundingsOf,
  wordProblem,
} from "@warmside/core";
import { suppliesOf } from "./project-texts.ts";

/** What a key is looked for in. */
type Told = (project: Project) => unknown;

/** What was worked out of the build-ups: figures and opinions, nothing that only repeats the file. */
const worked: Told = (project) => {
  const surroundings = surroundingsOf(project);
  return project.buildUps
    .map((buildUp) => assessBuildUp(buildUp, surroundings))
    .map(({ name, slug, element, room, faces, target, area, layers, framings, ...workedOut }) => workedOut);
};
/** The result whole, for words that are only repeated. */
const repeated: Told = (project) => assessProject(project);
/** What junctions come to. */
const joined: Told = (project) =>
  assessProject(project).junctions.map(({ name, figures }) => ({ name, figures: figures?.linearTransmittance }));
const compared: Told = (project) => assessProject(project).comparison;
const noted: Told = (project) => assessProject(project).oddities;
const placed: Told = (project) => studyPlacement(project).climates;
const spread: Told = (project) =>
  project.buildUps.map((buildUp) =>
    spreadQuestion(buildUp, surroundingsOf(project)).inputs.map(({ description }) => description),
  );

/** A key of the project file, a file with two values of it between « | », and what it must make a difference to. */
export type KeyEffect = readonly [key: string, text: string, told?: Told];

const LAYERS = `
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: mineral wool slab, thickness: 140 mm, framing: { material: softwood timber, fraction: 15 % } }
      - { material: oriented strand board, thickness: 11 mm }
      - { material: breather membrane }`;

interface Pieces {
  top?: string;
  climate?: string;
  room?: string;
  rooms?: string;
  element?: string;
  of?: string;
  layers?: string;
}

function file({ top = "", climate = "de-bilt", room, rooms = "", element = "wall", of = "", layers = LAYERS }: Pieces) {
  const indoor = room ?? "heating: 20 °C, humidity: class 3";
  const lines = of === "" ? "" : `    ${of.trim()}\n`;
  return `project: Pottery
climate: ${climate}
indoor: { ${indoor} }
${top === "" ? "" : `${top}\n`}${rooms === "" ? "" : `rooms: { ${rooms} }\n`}build-ups:
  - name: Wall
    element: ${element}
${lines}    layers:${layers}
`;
}

const top = (line: string, more: Pieces = {}) => file({ ...more, top: line });
const room = (keys: string, more: Pieces = {}) => file({ ...more, room: keys });
const of = (keys: string, more: Pieces = {}) => file({ ...more, of: keys });
/** One layer between lining and sheathing. */
const layer = (keys: string, more: Pieces = {}) =>
  file({
    layers: `
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { ${keys} }
      - { material: oriented strand board, thickness: 11 mm }`,
    ...more,
  });
/** Foil-faced boards between studs. */
const boards = (keys: string) =>
  file({
    layers: `
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: foil-faced PIR board, thickness: 90 mm, framing: { material: softwood timber, width: 45 mm, spacing: 600 mm }, ${keys} }
      - { material: oriented strand board, thickness: 11 mm }`,
  });
/** Steel channels. */
const channel = (keys: string) =>
  layer(
    `material: mineral wool slab, thickness: 100 mm, framing: { material: steel, channel: { ${keys} }, spacing: 600 mm }`,
  );
/** A junction of a project with walls, floors and roofs. */
const junction = (keys: string) => {
  const more = (name: string, element: string, depth: number): string =>
    `  - name: ${name}\n    element: ${element}\n    layers:${LAYERS.replace("140 mm", `${depth} mm`)}\n`;
  const others = [more("Other wall", "wall", 100), more("Floor", "floor", 145), more("Deck", "floor", 195)];
  const roofs = [more("Roof", "flat roof\n    pitch: 2 °", 170), more("Other roof", "flat roof\n    pitch: 2 °", 220)];
  return `${file({ top: `junctions: [ { ${keys} } ]` })}${[...others, ...roofs].join("")}`;
};
/** A board or a sheet given on the spot, in front of wool. */
const material = (keys: string, thickness = ", thickness: 20 mm", more = "") =>
  file({
    of: more,
    layers: `
      - { material: { name: own, ${keys} }${thickness} }
      - { material: mineral wool slab, thickness: 140 mm }
      - { material: oriented strand board, thickness: 11 mm }`,
  });
const board = "conductivity: 0.13 W/(m K), vapour resistance factor: 50";
const framing = (keys: string) => layer(`material: mineral wool slab, thickness: 140 mm, framing: { ${keys} }`);
const wool = (keys: string) => layer(`material: mineral wool slab, thickness: 140 mm, ${keys}`);
const air = (keys: string) =>
  file({
    layers: `
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { ${keys} }
      - { material: mineral wool slab, thickness: 140 mm }
      - { material: oriented strand board, thickness: 11 mm }`,
  });
const slab = (keys: string) =>
  file({
    element: "floor",
    of: `faces: ground\n    ground: { ${keys} }`,
    layers: "\n      - { material: concrete 2200, thickness: 100 mm }",
  });
const edge = (keys: string) => slab(`area: 80 m2, perimeter: 36 m, edge insulation: { ${keys} }`);
const raised = (keys: string) =>
  file({
    element: "floor",
    of: `faces: void\n    void: { ${keys} }`,
    layers:
      "\n      - { material: plywood, thickness: 18 mm }\n      - { material: mineral wool slab, thickness: 100 mm }",
  });
const store = (keys: string) =>
  file({ element: "partition", rooms: "store: { unheated: true }", of: `faces: store\n    space: { ${keys} }` });
const prices = (entry: string) =>
  file({
    top: `prices: [ { ${entry} } ]`,
    of: "area: 24 m2\n    variants: [ { name: thicker, changes: [ { set: mineral wool slab, thickness: 160 mm } ] } ]",
  });
const variant = (changes: string) => file({ of: `variants: [ { name: another, changes: [ ${changes} ] } ]` });

/** Tables that the files name. */
const TABLES = suppliesOf({
  "one.csv": "name,conductivity_W_mK,mu_dry,sd_m\nmy board,0.1,5,\n",
  "two.csv": "name,conductivity_W_mK,mu_dry,sd_m\nmy board,0.2,5,\n",
});

/** Every key of the project file and what it changes. */
export const KEY_EFFECTS: readonly KeyEffect[] = [
  ["project", file({}).replace("Pottery", "«Pottery|Shop»"), repeated],
  ["reference", top("reference: «A|B»"), repeated],
  ["query/question", top("query: { question: «May it be closed?|Is it dry?» }"), repeated],
  ["query/to", top("query: { to: «one|another» }"), repeated],
  ["query/site", top("query: { site: «one|another» }"), repeated],
  ["query/prepared by", top("query: { prepared by: «one|another» }"), repeated],
  ["query/date", top("query: { date: «2024-05-01|2024-05-02» }"), repeated],
  ["query/drawings", top("query: { drawings: «[1]|[2]» }"), repeated],
  ["climate", file({ climate: "«de-bilt|oslo»" })],
  ["severity", top("severity: «mean year|one in ten colder»")],
  ["severity", top("severity: «mean year|one in ten warmer»")],
  ["severity", top("severity: «+1 K|+2 K»")],
  ["altitude", top("altitude: «2 m|300 m»")],
  ["lapse rate", top("altitude: 300 m\nlapse rate: «6 K/km|7 K/km»")],
  ["humidity margin", top("humidity margin: «1.00|1.10»")],
  ["materials", top("materials: «one.csv|two.csv»", { layers: "\n      - { material: my board, thickness: 20 mm }" })],
  ["price entry/material", prices("material: «mineral wool slab|breather membrane», per: m2, price: 4"), compared],
  ["price entry/thickness", prices("material: mineral wool slab, thickness: «140 mm|160 mm», per: m2, price: 4"), compared],
  ["price entry/per", prices("material: mineral wool slab, per: «m2|m3», price: 4"), compared],
  ["price entry/price", prices("material: mineral wool slab, per: m2, price: «4|5»"), compared],
  ["price entry/covers", prices("material: mineral wool slab, per: roll, price: 40, covers: «5 m2|7 m2»"), compared],
  ["price entry/width", prices("material: breather membrane, per: roll, price: 40, covers: 75 m2, width: «1.5 m|2.7 m», lap: 0.15 m"), compared],
  ["price entry/lap", prices("material: breather membrane, per: roll, price: 40, covers: 75 m2, width: 1.5 m, lap: «0.1 m|0.2 m»"), compared],
  ["price entry/waste", prices("material: mineral wool slab, per: m2, price: 4, waste: «5 %|10 %»"), compared],
  ["price entry/hours", prices("material: mineral wool slab, per: m2, price: 4, hours: «0.1|0.2»"), compared],
  ["currency", `${prices("material: mineral wool slab, per: m2, price: 4")}currency: «£|€»\n`, compared],
  ["hour rate", `${prices("material: mineral wool slab, per: m2, price: 4, hours: 0.1")}hour rate: «20|25»\n`, compared],
  ["heat price", `${prices("material: mineral wool slab, per: m2, price: 4")}heat price: «0.1 /kWh|0.2 /kWh»\n`, compared],
  ["accept", layer("material: plywood, thickness: 700 mm", { top: "accept: [«odd-area|odd-thickness»]" }), noted],
  ["accept", top("accept: [«odd-area|odd-thickness»]"), noted],
  ["climates for place", top("climates for place: «[oslo]|[rome]»"), placed],

  ["room/heating", room("heating: «20 °C|21 °C», humidity: 50 %")],
  ["room/temperature", room("temperature: «20 °C|21 °C», humidity: 50 %")],
  ["room/temperature", room("temperature: «20 °C|by outdoor temperature», humidity: 50 %")],
  ["room/unheated", room("«heating: 20 °C, humidity: class 1|unheated: true»")],
  ["room/cooling", room("heating: 20 °C, humidity: 50 %«|, cooling: 22 °C»", { climate: "rome" })],
  ["room/humidity", room("heating: 20 °C, humidity: «class 2|class 3»")],
  ["room/humidity", room("heating: 20 °C, humidity: «normal|high» by outdoor temperature")],
  ["room/humidity when cooled", room("heating: 20 °C, cooling: 22 °C, humidity: class 2, humidity when cooled: «50 %|60 %»", { climate: "rome" })],
  ["room/heated days", room("heating: 20 °C, humidity: class 3, otherwise: 8 °C, heated days: «3|4»")],
  ["room/otherwise", room("heating: 20 °C, humidity: class 3, heated days: 3, otherwise: «8 °C|10 °C»")],
  ["room/bursts of steam", room("heating: 20 °C, humidity: class 3, bursts of steam: «false|true»")],
  ["room/pool", room("heating: 20 °C, humidity: class 3, pool: «false|true»")],
  ["room/humidity/production", room("heating: 20 °C, humidity: { production: «3 kg/day|4 kg/day», volume: 90 m3, air changes: 0.6 /h }")],
  ["room/humidity/volume", room("heating: 20 °C, humidity: { production: 3 kg/day, volume: «90 m3|80 m3», air changes: 0.6 /h }")],
  ["room/humidity/air changes", room("heating: 20 °C, humidity: { production: 3 kg/day, volume: 90 m3, air changes: «0.6 /h|0.7 /h» }")],

  ["build-up/name", file({}).replace("name: Wall", "name: «Wall|Side»"), repeated],
  ["build-up/element", file({ element: "«wall|floor»" })],
  ["build-up/room", of("room: «indoor|kiln»", { rooms: "kiln: { heating: 22 °C, humidity: class 4 }" })],
  ["build-up/faces", of("faces: «outdoors|kiln»", { rooms: "kiln: { heating: 10 °C, humidity: class 1 }" })],
  ["build-up/target", of("target: «0.20 W/(m2 K)|0.40 W/(m2 K)»")],
  ["build-up/pitch", of("pitch: «20 °|70 °»", { element: "pitched roof" })],
  ["build-up/clear sky", of("clear sky: «false|true»", { element: "flat roof" })],
  ["build-up/area", prices("material: mineral wool slab, per: m2, price: 4").replace("24 m2", "«24 m2|30 m2»"), compared],
  ["build-up/openings", prices("material: mineral wool slab, per: m2, price: 4").replace("24 m2", "24 m2\n    openings: «3 m2|4 m2»"), compared],
  ["build-up/length", prices("material: mineral wool slab, per: m2, price: 4").replace("24 m2", "24 m2\n    length: «8 m|9 m»"), compared],
  ["rain of the heating season", top("rain of the heating season: «1 mm/day|3 mm/day»", { element: "flat roof", layers: `
      - { material: concrete 2200, thickness: 150 mm }
      - { material: bitumen sheet, thickness: 5 mm }
      - { material: extruded polystyrene, thickness: 120 mm }` })],
  ["build-up/span", of("span: «4 m|6 m»", { element: "flat roof", layers: `
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: mineral wool slab, thickness: 140 mm, framing: { material: softwood timber, fraction: 12 % } }
      - { air: 50 mm, ventilation: well, open: both ends }
      - { material: plywood, thickness: 18 mm }` })],
  ["layer/bonded", file({ layers: `
      - { material: polyurethane foam unfaced, thickness: 80 mm, bonded: «false|true» }
      - { material: steel, thickness: 2 mm }` })],
  ["layer/purpose", file({ element: "flat roof", layers: `
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: oriented strand board, thickness: 18 mm }
      - { material: expanded polystyrene, thickness: 120 mm }
      - { material: plywood, thickness: 18 mm«|, purpose: deck» }
      - { material: bitumen sheet, thickness: 4 mm }` })],
  ["build-up/wetted by rain", of("wetted by rain: «false|true»", { layers: `
      - { material: mineral wool slab, thickness: 140 mm }
      - { material: facing brick, thickness: 102 mm }` })],
  ["build-up/unheated skin", of("unheated skin: «false|true»", { room: "unheated: true" })],
  ["build-up/roof space", of("roof space: «tiles without underlay|felt or boards»", { element: "pitched roof" })],
  ["build-up/two-season check", of("two-season check: «false|true»")],
  ["build-up/variable resistance", material("sd by humidity: [ [30 %, 10 m], [80 %, 0.5 m] ]", "", "variable resistance: «false|true»")],
  ["build-up/variants/name", variant("{ remove: breather membrane }").replace("name: another", "name: «one|another»"), compared],

  ["framing/material", framing("material: «softwood timber|hardwood timber», fraction: 15 %")],
  ["framing/fraction", framing("material: softwood timber, fraction: «15 %|16 %»")],
  ["framing/width", framing("material: softwood timber, width: «45 mm|38 mm», spacing: 600 mm")],
  ["framing/spacing", framing("material: softwood timber, width: 45 mm, spacing: «600 mm|400 mm»")],
  ["framing/other timber", framing("material: softwood timber, width: 45 mm, spacing: 600 mm, other timber: «7.5 %|5 %»")],

  ["material/name", material(board).replace("name: own", "name: «own|other»"), repeated],
  ["material/conductivity", material("conductivity: «0.13 W/(m K)|0.15 W/(m K)», vapour resistance factor: 50")],
  ["material/resistance", material("resistance: «R 20|R 30», vapour resistance factor: 5", ", thickness: 100 mm")],
  ["material/permeability", material("conductivity: 0.13 W/(m K), permeability: «2 perm in|4 perm in»")],
  ["material/vapour transmission/rate", material("vapour transmission: { rate: «4 g/(m2 day)|8 g/(m2 day)», temperature: 23 °C, humidity: [0 %, 85 %] }", "")],
  ["material/vapour transmission/temperature", material("vapour transmission: { rate: 4 g/(m2 day), temperature: «23 °C|38 °C», humidity: [0 %, 85 %] }", "")],
  ["material/vapour transmission/humidity", material("vapour transmission: { rate: 4 g/(m2 day), temperature: 23 °C, humidity: [0 %, «85 %|90 %»] }", "")],
  ["material/vapour resistance factor", material("conductivity: 0.13 W/(m K), vapour resistance factor: «50|60»")],
  ["material/wet vapour resistance factor", material(`${board}, wet vapour resistance factor: «30|10»`)],
  ["material/density", layer("material: mineral wool slab, thickness: 140 mm").replace(
    "material: oriented strand board",
    `material: { name: board, ${board}, kind: wood, density: «50 kg/m3|600 kg/m3» }`,
  )],
  ["material/emissivity", air("air: 25 mm, ventilation: none").replace(
    "material: gypsum plasterboard",
    `material: { name: lining, ${board}, emissivity: «0.9|0.2» }`,
  )],
  ["material/kind", layer("material: mineral wool slab, thickness: 140 mm").replace(
    "material: oriented strand board",
    `material: { name: board, ${board}, kind: «wood|mineral» }`,
  )],
  ["material/source", material(`${board}, source: «one|another»`), repeated],
  ["material/sd", material("sd: «40 m|2 m»", "")],
  ["material/vapour resistance", material("vapour resistance: «200 MN s/g|20 MN s/g»", "")],
  ["material/permeance", material("permeance: «0.3 perm|3 perm»", "")],
  ["material/sd by humidity", material("sd by humidity: [ [30 %, «10 m|5 m»], [80 %, 0.5 m] ]", "")],
  ["material/facing sd", material(`${board}, facing sd: «10 m|20 m»`)],
  ["material/facing emissivity", air("air: 25 mm, ventilation: none").replace(
    "material: gypsum plasterboard",
    `material: { name: lining, ${board}, facing emissivity: «0.9|0.05» }`,
  )],
  ["material/spread", material(`${board}, spread: «5 %|10 %»`), spread],
  ["material/basis", material(`${board}, basis: «declared|assumed»`), spread],

  ["layer/name", wool("name: «wool|quilt»"), repeated],
  ["layer/material", layer("material: «mineral wool slab|wood fibre batt», thickness: 140 mm")],
  ["layer/thickness", layer("material: mineral wool slab, thickness: «140 mm|150 mm»")],
  ["layer/framing", wool("framing: { material: softwood timber, fraction: 15 % }").replace("fraction: 15 %", "fraction: «15 %|20 %»")],
  ["layer/fit", wool("fit: «continuous|gaps and air behind»")],
  ["layer/fasteners/per area", wool("fasteners: { per area: «5 /m2|6 /m2», diameter: 8 mm, conductivity: 50 W/(m K) }")],
  ["layer/fasteners/diameter", wool("fasteners: { per area: 5 /m2, diameter: «8 mm|9 mm», conductivity: 50 W/(m K) }")],
  ["layer/fasteners/conductivity", wool("fasteners: { per area: 5 /m2, diameter: 8 mm, conductivity: «50 W/(m K)|60 W/(m K)» }")],
  ["layer/fasteners/recess", wool("fasteners: { per area: 5 /m2, diameter: 8 mm, conductivity: 50 W/(m K), recess: «10 mm|20 mm» }")],
  ["layer/gaps", layer("material: polyethylene sheet 0.15 mm, gaps: «0.1 %|0.2 %»")],
  ["layer/gaps/width", layer("material: polyethylene sheet 0.15 mm, gaps: { width: «1 mm|2 mm», spacing: 1.2 m }")],
  ["layer/gaps/diameter", layer("material: polyethylene sheet 0.15 mm, gaps: { diameter: «5 mm|8 mm», per area: 4 /m2 }")],
  ["layer/gaps/per area", layer("material: polyethylene sheet 0.15 mm, gaps: { diameter: 5 mm, per area: «4 /m2|9 /m2» }")],
  ["layer/gaps/spacing", layer("material: polyethylene sheet 0.15 mm, gaps: { width: 1 mm, spacing: «1.2 m|1.5 m» }")],
  ["layer/purpose", file({ element: "floor", layers: `
      - { material: plywood, thickness: 18 mm }
      - { material: mineral wool slab, thickness: 100 mm }
      - { material: polyethylene sheet 0.15 mm«|, purpose: radon membrane» }` })],
  ["layer/facing emissivity inner", layer("air: 25 mm, ventilation: none").replace(
    "oriented strand board, thickness: 11 mm", "oriented strand board, thickness: 11 mm, facing emissivity inner: «0.9|0.1»")],
  ["layer/facing emissivity outer", layer("air: 25 mm, ventilation: none").replace(
    "gypsum plasterboard, thickness: 12.5 mm", "gypsum plasterboard, thickness: 12.5 mm, facing emissivity outer: «0.9|0.1»")],
  ["layer/facing sd inner", wool("facing sd inner: «10 m|1 m»")],
  ["layer/facing sd outer", wool("facing sd outer: «10 m|1 m»")],
  ["layer/air", air("air: «10 mm|20 mm», ventilation: none")],
  ["layer/ventilation", air("air: 25 mm, ventilation: «none|well»")],
  ["layer/ventilation area", air("air: 25 mm, ventilation: slight, ventilation area: «700 mm2/m|1200 mm2/m»")],
  ["layer/open", file({ element: "flat roof", layers: `
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: mineral wool slab, thickness: 140 mm }
      - { air: 50 mm, ventilation: well, open: «both ends|one end» }
      - { material: plywood, thickness: 18 mm }
      - { material: bitumen sheet, thickness: 4 mm }` })],
  ["layer/resistance", air("air: 25 mm, ventilation: none, resistance: «0.1 m2 K/W|0.2 m2 K/W»")],
  ["layer/emissivity", air("air: 25 mm, ventilation: none, emissivity: «0.9|0.5»")],

  ["layer/gap beside framing", boards("gap beside framing: «0 mm|2 mm»")],
  ["layer/taped", boards("taped: «no|yes»")],
  ["framing/channel/sheet", channel("sheet: «1.2 mm|1.5 mm», flange: 50 mm, lip: 12 mm")],
  ["framing/channel/flange", channel("sheet: 1.2 mm, flange: «50 mm|40 mm», lip: 12 mm")],
  ["framing/channel/lip", channel("sheet: 1.2 mm, flange: 50 mm, lip: «12 mm|20 mm»")],
  ["junction/name", junction("name: «One|Two», outer corner: Wall"), joined],
  ["junction/outer corner", junction("name: One, «outer corner: Wall, posts: 2|window side: Wall, frame: { width: 70 mm, depth: 70 mm }»"), joined],
  ["junction/floor edge", junction("name: One, floor edge: [Wall, «Floor|Deck»]"), joined],
  ["junction/roof edge", junction("name: One, roof edge: [Wall, «Roof|Other roof»]"), joined],
  ["junction/window side", junction("name: One, window side: «Wall|Other wall», frame: { width: 70 mm, depth: 70 mm }"), joined],
  ["junction/posts", junction("name: One, outer corner: Wall, posts: «2|solid»"), joined],
  ["junction/rim", junction("name: One, floor edge: [Wall, Floor], rim: «45 mm|90 mm»"), joined],
  ["junction/blocking", junction("name: One, roof edge: [Wall, Roof], blocking: «45 mm|90 mm»"), joined],
  ["junction/plates", junction("name: One, floor edge: [Wall, Floor], plates: «1|2»"), joined],
  ["junction/trimmers", junction("name: One, window side: Wall, trimmers: «1|2», frame: { width: 70 mm, depth: 70 mm }"), joined],
  ["junction/frame/width", junction("name: One, window side: Wall, frame: { width: «60 mm|70 mm», depth: 70 mm }"), joined],
  ["junction/frame/depth", junction("name: One, window side: Wall, frame: { width: 70 mm, depth: «60 mm|70 mm» }"), joined],
  ["junction/frame/conductivity", junction("name: One, window side: Wall, frame: { width: 70 mm, depth: 70 mm, conductivity: «0.13 W/(m K)|0.18 W/(m K)» }"), joined],
  ["junction/frame/set back", junction("name: One, window side: Wall, frame: { width: 70 mm, depth: 70 mm, set back: «0 mm|30 mm» }"), joined],

  ["ground/area", slab("area: «80 m2|90 m2», perimeter: 36 m")],
  ["ground/perimeter", slab("area: 80 m2, perimeter: «36 m|38 m»")],
  ["ground/wall thickness", slab("area: 80 m2, perimeter: 36 m, wall thickness: «0.3 m|0.4 m»")],
  ["ground/soil", slab("area: 80 m2, perimeter: 36 m, soil: «clay or silt|rock»")],
  ["ground/membrane", slab("area: 80 m2, perimeter: 36 m, membrane: «false|true»")],
  ["ground/edge insulation/resistance", edge("resistance: «1 m2 K/W|2 m2 K/W», thickness: 50 mm, depth: 0.6 m")],
  ["ground/edge insulation/thickness", edge("resistance: 1 m2 K/W, thickness: «50 mm|60 mm», depth: 0.6 m")],
  ["ground/edge insulation/width", edge("resistance: 1 m2 K/W, thickness: 50 mm, width: «0.6 m|0.8 m»")],
  ["ground/edge insulation/depth", edge("resistance: 1 m2 K/W, thickness: 50 mm, depth: «0.6 m|0.8 m»")],
  ["void/area", raised("area: «80 m2|90 m2», perimeter: 36 m")],
  ["void/perimeter", raised("area: 80 m2, perimeter: «36 m|38 m»")],
  ["void/wall thickness", raised("area: 80 m2, perimeter: 36 m, wall thickness: «0.3 m|0.4 m»")],
  ["void/soil", raised("area: 80 m2, perimeter: 36 m, soil: «clay or silt|rock»")],
  ["void/height", raised("area: 80 m2, perimeter: 36 m, height: «0.3 m|0.5 m»")],
  ["void/wall transmittance", raised("area: 80 m2, perimeter: 36 m, wall transmittance: «1.5 W/(m2 K)|1.0 W/(m2 K)»")],
  ["void/openings", raised("area: 80 m2, perimeter: 36 m, openings: «1500 mm2/m|2000 mm2/m»")],
  ["void/wind", raised("area: 80 m2, perimeter: 36 m, wind: «4 m/s|5 m/s»")],
  ["void/shelter", raised("area: 80 m2, perimeter: 36 m, shelter: «sheltered|exposed»")],
  ["void/ground insulation", raised("area: 80 m2, perimeter: 36 m, ground insulation: «0.5 m2 K/W|1 m2 K/W»")],
  ["void/temperature", raised("area: 80 m2, perimeter: 36 m, humidity: 80 %, temperature: «8 °C|9 °C»")],
  ["void/humidity", raised("area: 80 m2, perimeter: 36 m, temperature: 8 °C, humidity: «80 %|90 %»")],
  ["build-up/space/area", store("area: «24 m2|30 m2», external: [ { area: 30 m2, transmittance: 0.5 W/(m2 K) } ], air changes: 1 /h, volume: 60 m3")],
  ["build-up/space/external/area", store("area: 24 m2, external: [ { area: «30 m2|40 m2», transmittance: 0.5 W/(m2 K) } ], air changes: 1 /h, volume: 60 m3")],
  ["build-up/space/external/transmittance", store("area: 24 m2, external: [ { area: 30 m2, transmittance: «0.5 W/(m2 K)|0.6 W/(m2 K)» } ], air changes: 1 /h, volume: 60 m3")],
  ["build-up/space/air changes", store("area: 24 m2, external: [ { area: 30 m2, transmittance: 0.5 W/(m2 K) } ], air changes: «1 /h|2 /h», volume: 60 m3")],
  ["build-up/space/volume", store("area: 24 m2, external: [ { area: 30 m2, transmittance: 0.5 W/(m2 K) } ], air changes: 1 /h, volume: «60 m3|70 m3»")],
  ["build-up/junction factors/name", of("junction factors: [ { name: «reveal|corner», factor: 0.6 } ]")],
  ["build-up/junction factors/factor", of("junction factors: [ { name: reveal, factor: «0.6|0.9» } ]")],
  ["build-up/leak/length", of("leak: { length: «1 m|2 m», width: 1 mm }")],
  ["build-up/leak/width", of("leak: { length: 1 m, width: «1 mm|2 mm» }")],
  ["build-up/leak/pressure", of("leak: { length: 1 m, width: 1 mm, pressure: «2 Pa|4 Pa» }")],
  ["trapped water/layer", of("trapped water: { layer: «2|3» }")],
  ["trapped water/amount", of("trapped water: { layer: 3, amount: «1 kg/m2|2 kg/m2» }")],
  ["trapped water/reading", of("trapped water: { layer: 3, reading: «26 %|28 %» }", { layers: LAYERS.replace("oriented strand board", "softwood timber") })],
  ["trapped water/start", of("trapped water: { layer: 3, start: «October|March» }")],
  ["change/swap", variant("{ swap: «breather membrane|oriented strand board», for: { material: plywood, thickness: 9 mm } }"), compared],
  ["change/for", variant("{ swap: breather membrane, for: { material: plywood, thickness: «9 mm|12 mm» } }"), compared],
  ["change/set", variant("{ set: «mineral wool slab|oriented strand board», thickness: 100 mm }"), compared],
  ["change/add", variant("{ add: { material: plywood, thickness: «9 mm|12 mm» }, after: mineral wool slab }"), compared],
  ["change/remove", variant("{ remove: «breather membrane|oriented strand board» }"), compared],
  ["change/move", variant("{ move: «gypsum plasterboard|mineral wool slab», after: oriented strand board }"), compared],
  ["change/before", variant("{ move: oriented strand board, before: «mineral wool slab|gypsum plasterboard» }"), compared],
  ["change/after", variant("{ move: gypsum plasterboard, after: «mineral wool slab|oriented strand board» }"), compared],
]; // biome-ignore format: a row a key

/** What a file with one of the values between « | » comes to, as text. */
export function toldOf([, text, told = worked]: KeyEffect, value: 0 | 1): string {
  const marked = /«([^|«»]*)\|([^«»]*)»/;
  if (!marked.test(text)) throw new Error(`no two values are marked in:\n${text}`);
  const file = text.replace(marked, (_, one: string, other: string) => [one, other][value]!);
  const reading = readProject(file, TABLES);
  if (!reading.ok) throw new Error(reading.problems.map((problem) => problemInText(wordProblem(problem))).join("\n"));
  return JSON.stringify(told(reading.value));
}
