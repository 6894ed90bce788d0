import { leakAirFlow, leakWaterFlow } from "../further-checks/leak/leak-flow.ts";
import { requireNumber } from "../require.ts";
import { holeResistance, slitResistance } from "../vapour/gap-resistance.ts";
import { sdWithGaps } from "../vapour/layer-sd.ts";

/**
 * sd of a sheet with part of its area missing; not a lower bound, since vapour converges on narrow openings.
 *
 * @param sd - of the whole sheet [m], 0.0001 to 10⁶
 * @param share - missing part of the area [–], 0 to 1
 * @returns sd [m]
 * @throws TypeError or RangeError when an input is not a number or is out of range
 * Source: conductances in parallel, the air of a gap with an sd of 0.01 m.
 * @example sdWithMissingShare(50, 0.001) // 8.3347
 */
export function sdWithMissingShare(sd: number, share: number): number {
  requireNumber(sd, "sd", "m", 1e-4, 1e6);
  requireNumber(share, "share", "", 0, 1);
  return sdWithGaps(sd, share);
}

/**
 * Vapour resistance of the material on one side of a long slit in a sheet, per metre of slit.
 *
 * @param factor - μ of the material [–], 1 to 10⁶
 * @param depth - H, its thickness [m], 0.0001 to 10
 * @param width - w of the slit [m], 10⁻⁶ to 1
 * @param spacing - from slit to slit [m], over the width
 * @returns (μ/π)·ln(16H/(πw)) for a narrow slit [–]; divided by the length of slit per square metre it is an sd [m]
 * @throws TypeError or RangeError when an input is not a number or is out of range
 * Source: conformal mapping of a strip with a slit in one face.
 * @example resistanceBesideSlit(1, 0.1, 0.001, 1) // 1.984
 */
export function resistanceBesideSlit(factor: number, depth: number, width: number, spacing: number): number {
  requireNumber(factor, "factor", "", 1, 1e6);
  requireNumber(depth, "depth", "m", 1e-4, 10);
  requireNumber(width, "width", "m", 1e-6, 1);
  requireNumber(spacing, "spacing", "m", width, 1000);
  return slitResistance(factor, depth, width, spacing);
}

/**
 * Vapour resistance of the material on one side of a round hole in a sheet.
 *
 * @param factor - μ of the material [–], 1 to 10⁶
 * @param depth - H, its thickness [m], 0.0001 to 10
 * @param radius - a of the hole [m], 10⁻⁵ to 1
 * @returns μ·(1/(4a) − ln 2/(2πH)) [1/m] for a ≤ H; divided by the number of holes per square metre it is an sd [m]
 * @throws TypeError or RangeError when an input is not a number or is out of range
 * Source: spreading from a disc into a slab.
 * @example resistanceBesideHole(1, 0.1, 0.005) // 48.9
 */
export function resistanceBesideHole(factor: number, depth: number, radius: number): number {
  requireNumber(factor, "factor", "", 1, 1e6);
  requireNumber(depth, "depth", "m", 1e-4, 10);
  requireNumber(radius, "radius", "m", 1e-5, 1);
  return holeResistance(factor, depth, radius);
}

/**
 * Water that room air, leaking through a gap, deposits at a cold plane.
 *
 * @param area - area of the gap per square metre [m²/m²], 0 to 1
 * @param pressure - Δp across it [Pa], 0 to 1000
 * @param insideTemperature - θi [°C], −60 to 60
 * @param insideVapourPressure - pi [Pa], 0 to 20 000
 * @param planeTemperature - θ of the plane [°C], −60 to 60
 * @returns g [kg/(m²·s)], where all air is assumed to cool to the plane
 * @throws TypeError or RangeError when an input is not a number or is out of range
 * Source: orifice flow V̇ = 0.6·A·√(2Δp/ρ), ρ 1.2 kg/m³, and the ideal gas.
 * @example waterFromLeak(0.0001, 2, 20, 1168.47, 0) * 1e7 // 4.518
 */
export function waterFromLeak(
  area: number,
  pressure: number,
  insideTemperature: number,
  insideVapourPressure: number,
  planeTemperature: number,
): number {
  requireNumber(area, "area", "m²/m²", 0, 1);
  requireNumber(pressure, "pressure", "Pa", 0, 1000);
  requireNumber(insideTemperature, "insideTemperature", "°C", -60, 60);
  requireNumber(insideVapourPressure, "insideVapourPressure", "Pa", 0, 20_000);
  requireNumber(planeTemperature, "planeTemperature", "°C", -60, 60);
  return leakWaterFlow(leakAirFlow(area, pressure), insideVapourPressure, insideTemperature, planeTemperature);
}
