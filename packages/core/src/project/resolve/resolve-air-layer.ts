import { THICKEST_STILL_AIR, UNVENTILATED_UP_TO, WELL_VENTILATED_FROM } from "../../constants.ts";
import type { ProblemPath } from "../../problems/types.ts";
import { plainDigits } from "../../quantities/format-quantity.ts";
import { readQuantity } from "../../quantities/read-quantity.ts";
import type { ReadingContext } from "../reading-context.ts";
import type { WrittenLayer } from "../schema/schema-layer.ts";
import type { AirLayer, Ventilation } from "../types.ts";
import { WITHOUT_EFFECT } from "../without-effect.ts";

/**
 * Makes an air layer.
 *
 * @param written - its keys, of the right shape
 * @param path - where it stands
 * @param isUpright - true if its openings are given per metre of length, false if per square metre
 * @param context - problems
 * @returns the layer without framing, or null after adding a problem
 */
export function resolveAirLayer(
  written: WrittenLayer,
  path: ProblemPath,
  isUpright: boolean,
  context: ReadingContext,
): AirLayer | null {
  const thickness = written.air!.value;
  const ventilation = written.ventilation!;
  const area = ventilationArea(written["ventilation area"], path, isUpright, context);
  const isOpenAsSaid = endsFit(written, path, context);
  if (area === "faulty" || !openingsFit(ventilation, area, path, context) || !isOpenAsSaid) return null;
  const isCalculated = ventilation !== "well" && written.resistance === undefined;
  if (thickness > THICKEST_STILL_AIR && isCalculated) {
    context.collector.add("air-too-deep", [...path, "air"], { deepest: "300 mm" });
    return null;
  }
  noteIdleKeys(written, path, context);
  return {
    type: "air",
    name: written.name ?? nameOfAirLayer(thickness),
    thickness,
    ventilation,
    ventilationArea: area,
    open: written.open ?? null,
    resistance: written.resistance?.value ?? null,
    emissivity: written.emissivity?.value ?? null,
    framing: null,
  };
}

/**
 * The name of an air layer to which the file gives none.
 *
 * @param thickness - [m]
 * @returns for example "air layer, 25 mm"
 */
export function nameOfAirLayer(thickness: number): string {
  return `air layer, ${plainDigits(thickness * 1000)} mm`;
}

function ventilationArea(
  written: string | undefined,
  path: ProblemPath,
  isUpright: boolean,
  context: ReadingContext,
): number | null | "faulty" {
  if (written === undefined) return null;
  const reading = readQuantity(written, isUpright ? "ventilation area upright" : "ventilation area level");
  if (reading.ok) return reading.value;
  for (const problem of reading.problems) context.collector.adopt(problem, [...path, "ventilation area"]);
  return "faulty";
}

/** Whether the openings suit the ventilation that the file gives. */
function openingsFit(
  ventilation: Ventilation,
  area: number | null,
  path: ProblemPath,
  context: ReadingContext,
): boolean {
  if (area === null) return true;
  const meant = area <= UNVENTILATED_UP_TO ? "none" : area < WELL_VENTILATED_FROM ? "slight" : "well";
  if (meant === ventilation) return true;
  context.collector.add("ventilation-contradicts", [...path, "ventilation area"], { ventilation, meant });
  return false;
}

/** Whether the ends are as open as the ventilation that the file gives requires. */
function endsFit({ ventilation, open }: WrittenLayer, path: ProblemPath, context: ReadingContext): boolean {
  const isOpen = open === "both ends" || open === "one end";
  const contradicts = open !== undefined && (ventilation === "none" ? isOpen : ventilation === "well" && !isOpen);
  if (contradicts) context.collector.add("open-contradicts", [...path, "open"], { ventilation: ventilation! });
  return !contradicts;
}

/** Notes keys that change nothing because of other keys of the layer. */
function noteIdleKeys(
  { ventilation, resistance, emissivity }: WrittenLayer,
  path: ProblemPath,
  context: ReadingContext,
): void {
  const note = (key: "resistance" | "emissivity", why: string): void =>
    context.note(WITHOUT_EFFECT, [...path, key], `${key} changes nothing: ${why}`);
  const isWell = ventilation === "well";
  if (isWell && resistance !== undefined) note("resistance", "well-ventilated air counts as outdoor air");
  if (isWell && emissivity !== undefined) note("emissivity", "well-ventilated air counts as outdoor air");
  else if (resistance !== undefined && emissivity !== undefined) note("emissivity", "the resistance is stated");
}
