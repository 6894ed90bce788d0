/** Characters that control a terminal instead of being shown on it. */
export const ACTING_ON_A_TERMINAL: RegExp =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what this looks for
  /[\u0000-\u001f\u007f-\u009f\u061c\u200b-\u200f\u2028-\u202e\u2060-\u2069\ufeff]|\p{Surrogate}/gu;
