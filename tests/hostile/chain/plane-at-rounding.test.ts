import { expect, test } from "vitest";
import { resultOf } from "./run-chain.ts";

/** Invented months, as wild as a table may be. */
const WEATHER = `# invented for a test
# altitude: 25 m
month,temperature_C,relative_humidity_pct
1,14.6,59.6
2,-28.9,69.1
3,29.9,22.1
4,-60.0,68.4
5,-38.5,30.6
6,16.9,38.9
7,-60.0,10.0
8,33.2,10.0
9,-46.0,36.2
10,-17.2,63.4
11,50.0,57.9
12,-52.2,50.6
`;

/** A film of 0.3 mm of air beside a board of ten kilometres of it: what a node gains is lost in what flows through it. */
const TEXT = `project: Alder Row
climate: weather.csv
severity: +2 K
humidity margin: 1.284
indoor: { unheated: true, pool: true }
build-ups:
  - name: Kiln floor
    element: floor
    faces: void
    void:
      temperature: [17.97 °C, 19.51 °C, 19.72 °C, -5.532 °C, 25 °C, 15.09 °C, -15.3 °C, -20 °C, 18.73 °C, 2.464 °C, -10.29 °C, -5.677 °C]
      humidity: [100 %, 53.89 %, 96.54 %, 50.36 %, 49.4 %, 100 %, 53.59 %, 32.36 %, 66.76 %, 48.96 %, 69.35 %, 70.4 %]
    framings:
      battens: { material: softwood timber, fraction: 0.7948 % }
      mortar: { material: mortar protected, fraction: 15.01 % }
    layers:
      - { material: { name: board, conductivity: 0.0619 W/(m K), vapour resistance factor: 498400, wet vapour resistance factor: 100.5, facing emissivity: 0.405, kind: plastic }, thickness: 20.69 mm }
      - { material: { name: film, vapour resistance: 0.00138 MN s/g, kind: metal }, gaps: { width: 12.88 mm, spacing: 1.977 m }, purpose: radon membrane, facing sd inner: 1.131 m, facing sd outer: 0.3903 m, framing: battens }
      - { material: asphalt, thickness: 173.9 mm }
      - { air: 42.97 mm, ventilation: slight, ventilation area: 1022 mm2/m2, open: closed, resistance: 0.1364 m2 K/W, emissivity: 0.5267, framing: mortar }
      - { air: 247.7 mm, ventilation: well, ventilation area: 66730 mm2/m2, open: one end, resistance: 1.216 m2 K/W, emissivity: 0.383 }
`;

test("a month in the plane ends where what a node gains is less than rounding knows of it", () => {
  const result = resultOf({ text: TEXT, supplies: { file: () => ({ text: WEATHER }) } });
  expect(result!.buildUps[0]!.findings.map(({ code }) => code)).toContain("interrupted-layer");
});

/** A film as open as a micrometre of air between a foil and a slab of steel: what passes it drowns what passes them. */
const OPEN_BETWEEN_TIGHT = `project: Alder Row
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 3 }
build-ups:
  - name: Kiln wall
    element: wall
    framings: { battens: { material: softwood timber, fraction: 26.35 % } }
    layers:
      - { air: 55.77 mm, ventilation: none }
      - { material: ferritic stainless steel, thickness: 27.8 mm, framing: battens }
      - { material: { name: film, sd: 0.0001 m, kind: plastic }, gaps: { diameter: 10.61 mm, per area: 100 /m2 }, facing sd inner: 1500 m, facing sd outer: 0.01 m }
      - { material: { name: board, conductivity: 0.012 W/(m K), vapour resistance factor: 1000000, facing sd: 577.5 m }, thickness: 10 mm }
`;

test("a film of next to no sd between tight layers leaves the plane its equations", () => {
  expect(
    resultOf({ text: OPEN_BETWEEN_TIGHT, supplies: { file: () => ({ failure: "there is none" }) } }),
  ).not.toBeNull();
});
