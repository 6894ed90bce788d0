/** Most condensate anywhere, and where a touching layer takes up no water [kg/m²]. Source: DIN 4108-3 (from memory). */
export const MOST_CONDENSATE = 1;
export const MOST_CONDENSATE_ON_TIGHT = 0.5;

/** Most condensate in timber and in wood-based board, share of dry mass [–]. Source: DIN 4108-3 (from memory). */
export const MOST_IN_TIMBER = 0.05;
export const MOST_IN_BOARD = 0.03;
