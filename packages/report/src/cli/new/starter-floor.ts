/** A raised timber floor over open air. */
export const STARTER_FLOOR = `build-ups:
  - name: Floor
    element: floor
    faces: outdoors           # open air below. A void with few openings: void, a slab: ground (both need more keys)
    target: 0.22 W/(m2 K)     # the U-value you are asked for; delete the line if there is none
    framings:
      joists: { material: softwood timber, width: 47 mm, spacing: 400 mm }
    layers:                   # from the room downwards
      - { material: oriented strand board, thickness: 22 mm }           # glued at every joint it is the vapour layer
      - { material: mineral wool slab, thickness: 200 mm, framing: joists }
      - { material: breather membrane sd 0.02 m }                       # holds the wool and keeps wind out
      # No polythene under a raised floor: leaks and spills could never dry.
`;
