import {
  type Project,
  problemInText,
  readProject,
  type Supplies,
  type WordedProblem,
  wordProblem,
} from "@warmside/core";

/** The project file of the contracts, whole; the damp room two kelvin warmer, as 16 °C cannot hold class 5 at De Bilt. */
export const CONTRACT_PROJECT = `project: Alder Row pottery studio
reference: AR-7                       # optional
climate: de-bilt                      # a name from climate/, or the path of a CSV of the same shape
severity: mean year                   # or: one in ten colder | one in ten warmer | +2 K
indoor:                               # the room of every build-up that names none
  heating: 20 °C
  humidity: class 3
rooms:
  damp room: { heating: 18 °C, humidity: class 5 }
  store: { unheated: true }
build-ups:
  - name: Studio wall
    element: wall                     # wall | flat roof | pitched roof | floor | partition
    room: indoor                      # where its layers begin (default indoor)
    faces: outdoors                   # outdoors | ground | void | a room's name (default outdoors)
    target: 0.25 W/(m2 K)             # optional
    framings:                         # timber that runs through several layers
      studs: { material: softwood timber, width: 45 mm, spacing: 600 mm }
    layers:                           # from the room outwards
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: polyethylene sheet 0.15 mm }
      - { material: mineral wool slab, thickness: 140 mm, framing: studs }
      - { material: oriented strand board, thickness: 11 mm }
      - { material: breather membrane }
      - { air: 25 mm, ventilation: well }
      - { material: softwood timber, thickness: 20 mm }
`;

/** A small project; tests change one piece of it. */
export const SMALL_PROJECT = `project: Alder Row pottery studio
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 3 }
rooms:
  damp room: { heating: 18 °C, humidity: 60 % }
build-ups:
  - name: Studio wall
    element: wall
    framings:
      studs: { material: softwood timber, width: 45 mm, spacing: 600 mm }
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: polyethylene sheet 0.15 mm }
      - { material: mineral wool slab, thickness: 140 mm, framing: studs }
      - { air: 25 mm, ventilation: well }
      - { material: softwood timber, thickness: 20 mm }
`;

/** A project that uses every key there is, but for variants. */
export const EVERY_KEY = `
project: Alder Row pottery studio
reference: AR-7
query:
  question: May the walls be closed as drawn?
  to: Building control
  site: Alder Row
  prepared by: the owner
  date: 2024-05-01
  drawings: [101, AR-7/02]
climate: de-bilt
severity: +1 K
altitude: 340 m
lapse rate: 6.0 K/km
humidity margin: 1.10
materials: my.csv
prices: my-prices.csv
currency: £
hour rate: 25
heat price: 0.12 /kWh
accept: [odd-thickness]
climates for place: [oslo, Melbourne Florida]
indoor: { heating: 20 °C, heated days: 3, otherwise: 8 °C, cooling: 26 °C, humidity when cooled: 55 %, humidity: { production: 6 kg/day, volume: 90 m3, air changes: 0.6 /h }, bursts of steam: false, pool: false }
rooms:
  kiln room: { temperature: by outdoor temperature, humidity: high by outdoor temperature, bursts of steam: true }
  damp room: { temperature: [18 °C, 18 °C, 18 °C, 18 °C, 19 °C, 20 °C, 21 °C, 21 °C, 20 °C, 19 °C, 18 °C, 18 °C], humidity: [60 %, 60 %, 60 %, 60 %, 60 %, 60 %, 60 %, 60 %, 60 %, 60 %, 60 %, 60 %], pool: true }
  store: { unheated: true }
build-ups:
  - name: Studio wall
    element: wall
    room: indoor
    faces: outdoors
    target: 0.25 W/(m2 K)
    area: 24 m2
    openings: 3 m2
    length: 8 m
    wetted by rain: true
    unheated skin: true
    junction factors: [ { name: window reveal, factor: 0.75 } ]
    two-season check: true
    leak: { length: 1 m, width: 1 mm, pressure: 2 Pa }
    trapped water: [ { layer: 3, amount: 1 kg/m2, start: October }, { layer: outer boarding, reading: 28 % }, { layer: mineral wool slab } ]
    variable resistance: true
    framings:
      studs: { material: softwood timber, width: 45 mm, spacing: 600 mm, other timber: 7.5 % }
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm, name: lining }
      - { material: { name: smart sheet, sd by humidity: [ [30 %, 10 m], [80 %, 0.5 m] ], basis: declared }, purpose: vapour layer, gaps: 0.1 % }
      - { material: mineral wool slab, thickness: 140 mm, framing: studs, fit: gaps, fasteners: { per area: 2.5 /m2, diameter: 4 mm, conductivity: 17 W/(m K), recess: 20 mm } }
      - { material: breather membrane, gaps: { width: 2 mm, spacing: 1.2 m } }
      - { material: foil-faced PIR board, thickness: 40 mm, facing emissivity inner: 0.05, facing emissivity outer: 0.05, facing sd inner: 1500 m, facing sd outer: 1500 m }
      - { air: 25 mm, ventilation: well, ventilation area: 2000 mm2/m, open: both ends, resistance: 0.1 m2 K/W, emissivity: 0.9 }
      - { material: softwood timber, thickness: 700 mm, name: outer boarding }
  - name: Roof
    element: pitched roof
    pitch: 5 °
    clear sky: true
    roof space: felt or boards
    layers: [ { material: my board, thickness: 20 mm } ]
  - name: Slab
    element: floor
    faces: ground
    ground: { area: 80 m2, perimeter: 36 m, wall thickness: 0.4 m, soil: sand or gravel, edge insulation: { resistance: 1.5 m2 K/W, thickness: 50 mm, depth: 0.6 m }, membrane: true }
    layers: [ { material: concrete 2200, thickness: 100 mm } ]
  - name: Raised floor
    element: floor
    faces: void
    void: { area: 80 m2, perimeter: 36 m, soil: rock, wall thickness: 0.4 m, height: 0.4 m, wall transmittance: 1.7 W/(m2 K), openings: 1500 mm2/m, wind: 5 m/s, shelter: exposed, ground insulation: 0.5 m2 K/W, temperature: 8 °C, humidity: 90 % }
    layers: [ { material: softwood floorboards, thickness: 20 mm } ]
  - name: Store wall
    element: partition
    faces: store
    space: { area: 24 m2, external: [ { area: 30 m2, transmittance: 0.5 W/(m2 K) } ], air changes: 1 /h, volume: 60 m3 }
    layers: [ { material: plywood, thickness: 12 mm } ]
`;

/** The tables that it names. */
export const FILES_OF_EVERY_KEY: Readonly<Record<string, string>> = {
  "my.csv": "name,conductivity_W_mK,mu_dry,sd_m\nmy board,0.1,5,\n",
  "my-prices.csv":
    "material,per,price,covers_m2,waste_pct,hours_per_m2\nmineral wool slab,m2,4.5,,10,0.1\nbreather membrane,roll,60,50,,\n",
};

/** The small project with one piece replaced; a piece that is not there fails the test that asks for it. */
export function changed(piece: string, by: string, project: string = SMALL_PROJECT): string {
  if (!project.includes(piece)) throw new Error(`the project has no piece "${piece}"`);
  return project.replace(piece, () => by);
}

/** Files by name; anything else is not there. */
export function suppliesOf(files: Readonly<Record<string, string>>): Supplies {
  return {
    file: (path) => {
      const text = files[path];
      return text === undefined ? { failure: "there is no such file" } : { text };
    },
  };
}

/** The project, which must be read without a problem. */
export function projectOf(text: string, files: Readonly<Record<string, string>> = {}): Project {
  const reading = readProject(text, suppliesOf(files));
  if (!reading.ok) throw new Error(reading.problems.map((problem) => problemInText(wordProblem(problem))).join("\n"));
  return reading.value;
}

/** The problems in words; empty when there are none. */
export function problemsOf(text: string, files: Readonly<Record<string, string>> = {}): WordedProblem[] {
  const reading = readProject(text, suppliesOf(files));
  return reading.ok ? [] : reading.problems.map(wordProblem);
}
