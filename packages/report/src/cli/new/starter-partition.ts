/** A timber wall between a damp room and the room of the project's head. */
export const STARTER_PARTITION = `# Further rooms, each with a name. An unheated one:  store: { unheated: true }
rooms:
  damp room:                  # where clay or washing dries
    heating: 18 °C
    humidity: class 4         # 1 store … 5 laundry, or a measured value: 65 %
    # cooling: 24 °C          # where it is cooled in a hot climate; then also  humidity when cooled: 55 %

build-ups:
  - name: Partition
    element: partition
    room: damp room           # where its layers begin: the damper of the two rooms
    faces: indoor             # the other side. A wall, roof or floor faces outdoors, ground, void or a room too
    target: 0.35 W/(m2 K)     # the U-value you are asked for; delete the line if there is none
    framings:
      studs: { material: softwood timber, width: 45 mm, spacing: 600 mm }
    layers:                   # from the damp room to the other
      - { material: gypsum plasterboard moisture-resistant, thickness: 12.5 mm }
      - { material: polyethylene sheet 0.15 mm }                        # a sheet takes no thickness
      - { material: mineral wool slab, thickness: 140 mm, framing: studs }
      - { material: gypsum plasterboard, thickness: 12.5 mm }
`;
