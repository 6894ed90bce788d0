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

/** What a rectangle of a picture is drawn as. */
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

/** A section in the plane as data for a drawing: places in metres, to a tenth of a millimetre. */
export interface PlanePicture {
  /** What is shown [m]. */
  frame: PictureBox;
  stuffs: DrawnStuff[];
  /** Later ones cover earlier ones; `stuff` is an index into `stuffs`. */
  rectangles: (PictureBox & { stuff: number })[];
  /** Lines of equal temperature [°C], each with its places [m]. */
  isotherms: { value: number; points: [number, number][] }[];
  /** Places with water, the wettest first: part of the most at one of them [–]. */
  water: { x: number; y: number; share: number }[];
  /** Where the words for the two airs stand [m]. */
  airs: { side: "inside" | "outside"; x: number; y: number }[];
  /** The coldest place of the room's surface [m]; null where the picture tells of water. */
  coldest: { x: number; y: number } | null;
  /** The strip of 50 mm with most water, as it runs through the picture from y0 to y1 [m]; null without water. */
  strip: { y0: number; y1: number } | null;
}
