/** Timber posts in an outer corner: two, three, or solid timber. */
export type CornerPosts = 2 | 3 | "solid";

/** The frame of a window or door. */
export interface WindowFrame {
  /** Width seen from the room [m]. */
  width: number;
  /** From its room face to its outer face [m]. */
  depth: number;
  /** λ [W/(m·K)]; null when not given. */
  conductivity: number | null;
  /** From the outer face of the wall's framing to the frame's outer face [m]; null when not given. */
  setBack: number | null;
}

/**
 * Where build-ups meet. Build-ups are named by their slugs; null means that the file does not say.
 * An outer corner of a wall with itself has the same slug twice.
 */
export type Junction =
  | { kind: "outer corner"; name: string; walls: readonly [string, string]; posts: CornerPosts | null }
  | { kind: "floor edge"; name: string; wall: string; floor: string; rim: number | null; plates: number | null }
  | { kind: "roof edge"; name: string; wall: string; roof: string; blocking: number | null; plates: number | null }
  | { kind: "window side"; name: string; wall: string; trimmers: number | null; frame: WindowFrame };
