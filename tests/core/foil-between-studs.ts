/** Foil-faced boards cut between studs, in a wall whose corner has too many posts. */
export const FOIL_BETWEEN_STUDS = `project: Joints
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 3 }
build-ups:
  - name: Wall
    element: wall
    framings:
      studs: { material: softwood timber, width: 45 mm, spacing: 600 mm }
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: foil-faced PIR board, thickness: 90 mm, framing: studs }
      - { material: oriented strand board, thickness: 11 mm }
      - { material: breather membrane }
      - { air: 25 mm, ventilation: well }
      - { material: softwood timber, thickness: 20 mm }
`;
