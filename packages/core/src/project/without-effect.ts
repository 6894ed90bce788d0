/** Code of the note on a key that changes nothing, because of another key or for want of one. */
export const WITHOUT_EFFECT = "without-effect";
