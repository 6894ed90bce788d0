/** One layer of a bridged build-up, with its bridge. */
export interface BridgedLayer {
  /** R of the layer [m²·K/W], ≥ 0. */
  resistance: number;
  /** Share of the area that the bridge takes [–], 0 to 1; 0 without a bridge. */
  share: number;
  /** R through the bridge [m²·K/W], above 0. */
  bridgeResistance: number;
}

/** A heat-flow path: its share of the area [–] and the sum of its layers' resistances [m²·K/W]. */
export interface ResistancePath {
  share: number;
  resistance: number;
}

/**
 * Upper and lower limits of the total resistance of a bridged build-up.
 *
 * @param paths - distinct heat-flow paths, with shares that add up to 1
 * @param layers - the layers, each with its bridge
 * @param surfaces - Rsi + Rse and any resistance outside the layers [m²·K/W], above 0
 * @returns R′ of all paths in parallel and R″, layer by layer [m²·K/W]
 * Source: ISO 6946:2017 clause 6.7.2 (from memory).
 */
export function combinedLimits(
  paths: readonly ResistancePath[],
  layers: readonly BridgedLayer[],
  surfaces: number,
): { upperLimit: number; lowerLimit: number } {
  const conductance = paths.reduce((sum, { share, resistance }) => sum + share / (surfaces + resistance), 0);
  const upperLimit = 1 / conductance;
  const lowerLimit = surfaces + layers.reduce((sum, layer) => sum + bridgedResistance(layer), 0);
  return { upperLimit, lowerLimit };
}

/** Resistance of one layer with its bridge in parallel [m²·K/W]. Source: ISO 6946:2017 clause 6.7.2.4 (from memory). */
export function bridgedResistance({ resistance, share, bridgeResistance }: BridgedLayer): number {
  if (!(share > 0 && resistance > 0)) return resistance;
  const conductance = (1 - share) / resistance + share / bridgeResistance;
  return 1 / conductance;
}
