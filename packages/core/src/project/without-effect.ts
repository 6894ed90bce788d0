/** Code of the note that a key of the file changes nothing, given with others or without them. */
export const WITHOUT_EFFECT = "without-effect";
