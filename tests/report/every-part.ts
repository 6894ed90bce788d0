import { assessProject, type ProjectResult, readProjectOrThrow } from "@warmside/core";

/**
 * A project that brings out every part of the page: crossed framing, framing by its share, a slab, a floor over a void,
 * a cooled room in a hot place, water in several places, further checks, metal through the insulation. Invented.
 */
export const EVERY_PART = `
project: Alder Row, every part
climate: oslo
altitude: 400 m
indoor: { heating: 21 °C, humidity: class 4 }
rooms:
  store: { unheated: true }
build-ups:
  - name: Crossed framing, three wet places
    element: wall
    framings:
      studs: { material: softwood timber, width: 45 mm, spacing: 600 mm }
      battens: { material: softwood timber, width: 50 mm, spacing: 600 mm, other timber: 0 % }
    junction factors: [ { name: window reveal, factor: 0.72 } ]
    leak: { length: 1 m, width: 1 mm }
    two-season check: true
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: mineral wool slab, thickness: 45 mm, framing: battens }
      - { material: mineral wool slab, thickness: 145 mm, framing: studs, fit: gaps }
      - { material: oriented strand board, thickness: 18 mm }
      - { material: polyethylene sheet 0.15 mm }
      - { air: 25 mm, ventilation: slight, ventilation area: 1000 mm2/m }
      - { material: plywood, thickness: 12 mm }
  - name: Framing by its share
    element: pitched roof
    pitch: 35 °
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: mineral wool slab, thickness: 200 mm, framing: { material: softwood timber, fraction: 9 % } }
      - { material: breather membrane }
  - name: Slab
    element: floor
    faces: ground
    ground: { area: 80 m2, perimeter: 36 m, wall thickness: 0.3 m, soil: clay or silt, membrane: true }
    layers:
      - { material: plywood, thickness: 18 mm }
      - { name: board, material: { name: foam board, conductivity: 0.035 W/(m K), vapour resistance factor: 100 }, thickness: 100 mm }
      - { material: polyethylene sheet 0.25 mm, purpose: damp-proof membrane }
  - name: Metal through it
    element: wall
    framings:
      rails: { material: { name: steel section, conductivity: 50 W/(m K), vapour resistance factor: 1000000, kind: metal }, width: 2 mm, spacing: 600 mm, other timber: 0 % }
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: mineral wool slab, thickness: 100 mm, framing: rails }
      - { material: plywood, thickness: 12 mm }
  - name: To the store
    element: partition
    faces: store
    trapped water: { layer: 2, amount: 1 kg/m2 }
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: mineral wool slab, thickness: 90 mm }
      - { material: gypsum plasterboard, thickness: 12.5 mm }
`;

/** That project, really assessed. */
export function everyPart(): ProjectResult {
  return assessProject(readProjectOrThrow(EVERY_PART));
}
