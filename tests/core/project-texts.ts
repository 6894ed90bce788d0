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
