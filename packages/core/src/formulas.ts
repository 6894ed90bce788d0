/**
 * The formulas of the trade by name, in SI. Each checks its inputs and names its source. Runs unchanged in a browser.
 */

// air
export { dewPoint } from "./air/dew-point.ts";
export { humidityByVolume, relativeHumidity, vapourPressure } from "./air/humidity.ts";
export { saturationPressure } from "./air/saturation-pressure.ts";

// heat, vapour, wood
export { type LayerForLimits, type LimitsOfResistance, limitsOfResistance } from "./formulas/bridged-build-up.ts";
export { type CondensationYear, condensationYear } from "./formulas/condensation-year.ts";
export { correctedTransmittance } from "./formulas/corrected-transmittance.ts";
export { slabOnGround, suspendedFloor } from "./formulas/floors.ts";
export { requiredSurfaceFactor, surfaceTemperatureFactor } from "./formulas/inside-surface.ts";
export { resistanceBesideHole, resistanceBesideSlit, sdWithMissingShare, waterFromLeak } from "./formulas/openings.ts";
export { stillAirLayerResistance } from "./formulas/still-air-layer.ts";
export { type VapourProfile, vapourProfile } from "./formulas/vapour-profile.ts";
export { equilibriumMoistureOfWood, mouldGrowthLimit } from "./formulas/wood-and-mould.ts";
