import type { Ply, Side } from "./side.ts";

/** Two plies that meet at a junction; null where a side has none left. */
export interface Ring {
  level: Ply | null;
  upright: Ply | null;
  /** Position of the ring: outside the main frames, the frames themselves, or inside them. */
  position: "outer" | "frame" | "inner";
  /** Outer edges of the two plies [m] from the outer corner: x of the upright one, y of the level one. */
  x: number;
  y: number;
}

/**
 * The plies of two sides that meet, from outside inwards, paired so that both main frames are one ring.
 *
 * @param level - the side that lies along x
 * @param upright - the side that stands along y
 * @returns rings with their places [m]
 */
export function ringsOf(level: Side, upright: Side): Ring[] {
  const rings: Ring[] = [];
  const outer = Math.max(level.frame, upright.frame);
  const inner = Math.max(level.plies.length - level.frame, upright.plies.length - upright.frame);
  let [x, y] = [0, 0];
  for (let step = -outer; step < inner; step += 1) {
    const ring: Ring = {
      level: level.plies[level.frame + step] ?? null,
      upright: upright.plies[upright.frame + step] ?? null,
      position: step < 0 ? "outer" : step === 0 ? "frame" : "inner",
      x,
      y,
    };
    rings.push(ring);
    x += ring.upright?.thickness ?? 0;
    y += ring.level?.thickness ?? 0;
  }
  return rings;
}
