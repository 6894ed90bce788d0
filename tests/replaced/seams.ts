/** What the replaced modules are told, and what they tell. No call is kept unless a test asks for it: there are too many. */
export const seams: {
  /** How often a build-up was calculated, whoever asked for it. */
  calculations: number;
  /** Quantities as they are parsed, while somebody listens. */
  parsed: [digits: string, unit: string][] | null;
  /** Whether a month in the plane finds its work used up. */
  isPlaneTooWet: boolean;
} = { calculations: 0, parsed: null, isPlaneTooWet: false };
