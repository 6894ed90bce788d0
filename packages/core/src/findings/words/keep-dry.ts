import type { Named } from "./wording.ts";

/**
 * What to maintain where dampness is a condition, by its origin. A condition is something to maintain; a change is a
 * remedy.
 *
 * @param buildUp - what it is and what it faces
 * @returns advice, a sentence
 */
export function keepDry({ element, faces }: Pick<Named, "element" | "faces">): string {
  if (faces === "void")
    return "Keep the bare ground of the void covered and its openings clear, and look at that place after the first year.";
  return element === "partition"
    ? "Keep both rooms no damper than the file says, and look at that place after the first winter."
    : "Keep the room no damper than the file says, and look at that place after the first winter.";
}
