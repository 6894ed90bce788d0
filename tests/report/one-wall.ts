import { assessProject, type ProjectResult, readProjectOrThrow } from "@warmside/core";
import { demoProject } from "./demo.ts";

/** One wall of the demo, really assessed. */
export function oneWall(): ProjectResult {
  const project = demoProject();
  return assessProject({ ...project, buildUps: project.buildUps.slice(0, 1) });
}

/** A roof that lies, a floor on the ground and a wall that must change, at Heathrow. Invented. */
export function roofFloorWall(): ProjectResult {
  return assessProject(
    readProjectOrThrow(`
project: Alder Row glaze workshop
climate: heathrow
indoor: { heating: 19 °C, humidity: class 2 }
build-ups:
  - name: Pitched roof
    element: pitched roof
    pitch: 35 °
    target: 0.18 W/(m2 K)
    framings: { rafters: { material: softwood timber, width: 47 mm, spacing: 400 mm } }
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: vapour control layer sd 20 m }
      - { material: mineral wool slab, thickness: 175 mm, framing: rafters }
      - { material: breather membrane }
      - { air: 25 mm, ventilation: well, open: both ends }
      - { name: tiles, material: { name: clay tiles, conductivity: 1 W/(m K), vapour resistance factor: 30 }, thickness: 15 mm }
  - name: Ground floor
    element: floor
    faces: ground
    target: 0.22 W/(m2 K)
    ground: { area: 48 m2, perimeter: 28 m, wall thickness: 0.3 m, soil: clay or silt, membrane: true }
    layers:
      - { material: plywood, thickness: 18 mm }
      - { material: extruded polystyrene, thickness: 100 mm }
      - { material: polyethylene sheet 0.25 mm, purpose: damp-proof membrane }
      - { material: concrete 2200, thickness: 100 mm }
  - name: Wall without a vapour layer
    element: wall
    target: 0.25 W/(m2 K)
    framings: { studs: { material: softwood timber, width: 45 mm, spacing: 600 mm } }
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: mineral wool slab, thickness: 140 mm, framing: studs }
      - { material: oriented strand board, thickness: 11 mm }
      - { material: breather membrane }
      - { air: 25 mm, ventilation: well, open: both ends }
      - { name: cladding, material: softwood timber, thickness: 20 mm }
`),
  );
}

/** Floors over a void, and on the ground with insulation along the edge, level and upright. */
export function floorsOfEveryKind(): ProjectResult {
  return assessProject(
    readProjectOrThrow(`
project: Alder Row clay store
climate: heathrow
indoor: { heating: 19 °C, humidity: class 2 }
build-ups:
  - name: Floor over a void
    element: floor
    faces: void
    void: { area: 60 m2, perimeter: 34 m, height: 0.45 m, openings: 1500 mm2/m, wall thickness: 0.3 m, wall transmittance: 0.6 W/(m2 K), soil: clay or silt }
    framings: { joists: { material: softwood timber, width: 45 mm, spacing: 400 mm } }
    layers:
      - { material: particleboard, thickness: 22 mm }
      - { material: mineral wool slab, thickness: 150 mm, framing: joists }
      - { material: breather membrane }
  - name: Slab with level edge insulation
    element: floor
    faces: ground
    ground: { area: 60 m2, perimeter: 34 m, wall thickness: 0.3 m, soil: sand or gravel, membrane: true, edge insulation: { resistance: 1.4 m2 K/W, thickness: 50 mm, width: 1 m } }
    layers:
      - { material: screed cement and sand, thickness: 65 mm }
      - { material: extruded polystyrene, thickness: 60 mm }
      - { material: polyethylene sheet 0.25 mm, purpose: damp-proof membrane }
      - { material: concrete 2200, thickness: 100 mm }
  - name: Slab with upright edge insulation
    element: floor
    faces: ground
    ground: { area: 60 m2, perimeter: 34 m, wall thickness: 0.3 m, soil: rock, membrane: true, edge insulation: { resistance: 1.4 m2 K/W, thickness: 50 mm, depth: 0.6 m } }
    layers:
      - { material: screed cement and sand, thickness: 65 mm }
      - { material: polyethylene sheet 0.25 mm, purpose: damp-proof membrane }
      - { material: concrete 2200, thickness: 100 mm }
`),
  );
}
