/** Least sd of a tight layer [m]. Source: ISO 13788:2012 clause 7 names 10 m each side (from memory). */
export const TIGHT = 10;
