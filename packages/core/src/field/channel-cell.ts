import { framingStuff } from "./cell-stuffs.ts";
import { requireCellQuestion } from "./given.ts";
import { layerStack } from "./layer-stack.ts";
import { type Cell, type CellQuestion, surroundCell } from "./repeating-cell.ts";
import { emptyScene, fill } from "./scene.ts";

/**
 * One spacing of a build-up framed with metal channels: the web at x = 0, both flanges towards +x, the cell's ends midway
 * between two webs.
 *
 * @param question - layers, the framing (a channel, as deep as the layers it runs through), surfaces
 * @returns the cell
 * Source: ISO 6946:2017 clause 6.7.2.1 refers metal through insulation to ISO 10211 (from memory); sharp bends are this
 *   project's rule.
 * @throws RangeError when the framing is not a channel, or runs through no layer
 */
export function channelCell(question: Omit<CellQuestion, "jointOf">): Cell {
  requireCellQuestion(question);
  const { counted, framing, surfaces, sheets } = question;
  const { origin } = framing;
  if (origin.kind !== "channel") throw new RangeError(`${framing.name} is no channel`);
  const rows = layerStack(counted, framing, sheets);
  const framed = rows.filter(({ isFramed }) => isFramed);
  if (framed.length === 0) throw new RangeError(`${framing.name} runs through no layer`);
  const scene = emptyScene();
  const half = origin.spacing / 2;
  for (const { y0, y1, stuff } of rows) fill(scene, stuff, { x0: -half, x1: half, y0, y1 });
  const { sheet, flange, lip } = origin.channel;
  const metal = framingStuff(framing);
  const [left, right] = [-sheet / 2, flange - sheet / 2];
  const [near, far] = [framed[0]!.y0, framed.at(-1)!.y1];
  fill(scene, metal, { x0: left, x1: left + sheet, y0: near, y1: far });
  fill(scene, metal, { x0: left, x1: right, y0: near, y1: near + sheet });
  fill(scene, metal, { x0: left, x1: right, y0: far - sheet, y1: far });
  fill(scene, metal, { x0: right - sheet, x1: right, y0: near, y1: near + lip });
  fill(scene, metal, { x0: right - sheet, x1: right, y0: far - lip, y1: far });
  const depth = surroundCell(scene, rows, surfaces, -half, half);
  return { scene, rows, width: origin.spacing, framingEdge: right, depth };
}
