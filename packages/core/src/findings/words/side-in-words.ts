import type { BuildUp } from "../../project/types.ts";
import type { Side } from "../../result/types.ts";

/** A side in words for a sentence: "the room", "the damp room", "outdoors", "the ground". */
export function sideInWords(side: Side, { room, faces }: Pick<BuildUp, "room" | "faces">): string {
  const name = side === "inside" ? room : faces;
  if (name === "outdoors") return name;
  return name === "indoor" ? "the room" : `the ${name}`;
}
