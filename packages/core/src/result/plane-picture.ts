import type { MaterialKind } from "../project/types.ts";

/** A rectangle of a picture: x runs to the right, y down [m]. */
export interface PictureBox {
  /** [m] */
  x0: number;
  /** [m] */
  x1: number;
  /** [m] */
  y0: number;
  /** [m] */
  y1: number;
}

/** The material of a rectangle in a picture. */
export interface DrawnStuff {
  name: string;
  type: "material" | "air" | "sheet";
  kind: MaterialKind | null;
  group: string | null;
  /** [W/(m·K)]; null for a sheet. */
  conductivity: number | null;
  /** [kg/m³] */
  density: number | null;
}

/** A section in the plane, as data for a drawing: coordinates in metres, to a tenth of a millimetre. */
export interface PlanePicture {
  /** The part shown [m]. */
  frame: PictureBox;
  stuffs: DrawnStuff[];
  /** Later ones cover earlier ones; `stuff` is an index into `stuffs`. */
  rectangles: (PictureBox & { stuff: number })[];
  /** Isotherms [°C], each with its points [m]. */
  isotherms: { value: number; points: [number, number][] }[];
  /** Places with water, the wettest first; the share is relative to the wettest [–]. */
  water: { x: number; y: number; share: number }[];
  /** Positions of the labels of the air on both sides [m]. */
  airs: { side: "inside" | "outside"; x: number; y: number }[];
  /** The coldest place of the room's surface [m]; null where the picture shows water. */
  coldest: { x: number; y: number } | null;
  /** The strip of 50 mm with most water, from y0 to y1 of the picture [m]; null without water. */
  strip: { y0: number; y1: number } | null;
}
