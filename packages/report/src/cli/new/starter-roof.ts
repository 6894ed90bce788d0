/** A warm flat roof: insulation on the deck, everything under it warm. */
export const STARTER_ROOF = `build-ups:
  - name: Roof
    element: flat roof        # or: pitched roof, with  pitch: 35 °
    target: 0.18 W/(m2 K)     # the U-value you are asked for; delete the line if there is none
    framings:
      joists: { material: softwood timber, width: 47 mm, spacing: 400 mm }
    layers:                   # from the room outwards
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { air: 150 mm, ventilation: none, framing: joists }             # between the joists; none, slight or well
      - { material: oriented strand board, thickness: 18 mm }           # deck
      - { material: vapour control layer sd 100 m }                     # a sheet takes no thickness
      - { material: foil-faced PIR board, thickness: 120 mm }           # above the deck: a warm roof
      - { material: EPDM sheet, thickness: 1.2 mm, purpose: weather skin }
      # With insulation between the joists (a cold roof) leave at least 50 mm of ventilated air above it:
      # - { air: 50 mm, ventilation: well, open: both ends }
`;
