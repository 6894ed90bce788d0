/** A timber wall with a vapour layer and ventilated cladding. */
export const STARTER_WALL = `build-ups:
  - name: Wall
    element: wall
    target: 0.25 W/(m2 K)     # the U-value you are asked for; delete the line if there is none
    # wetted by rain: sheltered   # for brick, render or boarding without a ventilated gap: no, sheltered or yes
    framings:
      studs: { material: softwood timber, width: 45 mm, spacing: 600 mm }
      # Plates, rails and noggins are added to the studs: 7.5 % of the area unless you say  other timber: 10 %
      # Light steel:  studs: { material: steel, channel: { sheet: 1.2 mm, flange: 50 mm, lip: 12 mm }, spacing: 600 mm }
    layers:                   # from the room outwards
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: polyethylene sheet 0.15 mm }                        # a sheet takes no thickness
      - { material: mineral wool slab, thickness: 195 mm, framing: studs }
      # or foil-faced boards cut between the studs, with how they meet them:
      # - { material: foil-faced PIR board, thickness: 90 mm, framing: studs, taped: yes, gap beside framing: 2 mm }
      - { material: oriented strand board, thickness: 11 mm }
      - { material: breather membrane }
      - { air: 25 mm, ventilation: well }                               # none, slight or well
      - { material: softwood timber, thickness: 20 mm }                 # cladding
      # A material that is not in the table ("warmside materials WORD" searches it) goes into braces:
      # - { material: { name: my board, conductivity: 0.04 W/(m K), vapour resistance factor: 5 }, thickness: 60 mm }
    # Is an extra layer worth it? Remove these # and run:  warmside compare FILE
    # variants:
    #   - name: wood fibre outside
    #     changes: [ { add: { material: wood fibre insulation board, thickness: 60 mm }, after: oriented strand board } ]
    #   - name: deeper studs
    #     changes: [ { set: mineral wool slab, thickness: 245 mm } ]
# Corners, edges and window sides are colder than the wall. Remove these # to have them calculated:
# junctions:
#   - { name: Corner, outer corner: [Wall], posts: 3 }                  # 2, 3 or solid
#   - { name: Window side, window side: Wall, trimmers: 2, frame: { width: 70 mm, depth: 68 mm, set back: 30 mm } }
`;
