/**
 * Heat and vapour in the plane: effects that straight sections of a build-up cannot show. Runs unchanged in a browser
 * and reads no file. Rules: METHOD.md, The plane.
 */

export { channelCell } from "./field/channel-cell.ts";
export type { MeshRule } from "./field/graded-lines.ts";
export { type BoundedHeat, heatWithinBounds } from "./field/heat-within-bounds.ts";
export { type Isoline, isolines } from "./field/isolines.ts";
export { type JunctionHeat, junctionHeat } from "./field/junctions/junction-heat.ts";
export { floorEdge, roofEdge } from "./field/junctions/level-edge.ts";
export { outerCorner } from "./field/junctions/outer-corner.ts";
export { type Side, sideOf } from "./field/junctions/side.ts";
export { frameAsSide, windowSide } from "./field/junctions/window-side.ts";
export { type Mesh, meshOf } from "./field/mesh.ts";
export { type HeatField, heatField, lowestSurfaceFactor, temperaturesOf } from "./field/plane-heat.ts";
export {
  type DrawnStuff,
  type PictureBox,
  type PictureQuestion,
  type PictureView,
  type PlanePicture,
  planePicture,
} from "./field/plane-picture.ts";
export { type PlaneYear, planeYear } from "./field/plane-vapour.ts";
export { type Cell, type CellQuestion, drawnFraming, type Joint, repeatingCell } from "./field/repeating-cell.ts";
export { type Box, drawnScene, type Piece, type Scene, type Stuff, type SurroundingAir } from "./field/scene.ts";
export { type WorstStrip, worstStrip } from "./field/strips.ts";
