/** The top of a project that lacks its build-ups. */
export const head = "project: P\nclimate: de-bilt\nindoor: { heating: 20 °C, humidity: class 3 }\n";
export const PLYWOOD = "      - { material: plywood, thickness: 12 mm }\n";
/** A build-up of layers as written. */
export const wall = (name: string, layers: string): string =>
  `  - name: ${name}\n    element: wall\n    layers:\n${layers}`;
/** Pieces of text one after the other. */
export const many = (count: number, make: (index: number) => string, joint = ""): string =>
  Array.from({ length: count }, (_, index) => make(index)).join(joint);
/** Build-ups of fifty layers each. */
export const inLayers = (count: number, make: (index: number) => string): string =>
  `${head}build-ups:\n${many(count / 50, (index) =>
    wall(
      `W${index}`,
      many(50, (layer) => make(index * 50 + layer)),
    ),
  )}`;

/** Files that took seconds to minutes before, for a number of the thing that they are full of. */
export const CROWDED_FILES: Readonly<Record<string, (count: number) => string>> = {
  "a part repeated": (count) => `project: &a P\nclimate: [${"*a,".repeat(count)}]\n`,
  "keys without values in braces": (count) =>
    `${head}build-ups: [ { name: W, element: wall, ${many(count, (index) => `${index + 10_000} m`, ", ")} } ]\n`,
  "keys joined to their values": (count) =>
    `${head}build-ups: [ { ${many(count, (index) => `a${index + 10_000}:b`, ", ")} } ]\n`,
  "unknown keys": (count) =>
    `${head}${many(count, (index) => `key${index + 10_000}: 1\n`)}build-ups:\n${wall("W", PLYWOOD)}`,
  "misspelt keys": (count) => inLayers(count, () => "      - { materal: plywood, thicknes: 12 mm }\n"),
  "unknown materials": (count) =>
    inLayers(count, (index) => `      - { material: plywod ${index + 10_000}, thickness: 12 mm }\n`),
  "unknown framings": (count) =>
    inLayers(count, (index) => `      - { material: plywood, thickness: 12 mm, framing: studz ${index + 10_000} }\n`),
  "quantities without units": (count) => inLayers(count, () => "      - { material: plywood, thickness: 12 }\n"),
  "build-ups": (count) => `${head}build-ups:\n${many(count, (index) => wall(`W${index + 10_000}`, PLYWOOD))}`,
  "lines indented with tabs": (count) => "a:\n\tb: c\n".repeat(count / 2),
  "marks without meaning": (count) => "!a ".repeat(count),
};
