import { sumOfResistances } from "../heat/sum-of-resistances.ts";
import { lowestFactor } from "../heat/surface.ts";
import type { MonthName, SurfaceResult } from "../result/types.ts";
import { CONDITION, found, OVER_LIMIT } from "./found.ts";
import type { Evidence, RuledFinding } from "./types.ts";

/**
 * The surfaces: condensation and mould on the room's face, on a face towards another room, and at junctions.
 * Source: ISO 13788:2012 clause 5 (from memory).
 */
export function surfaceFindings(evidence: Evidence): RuledFinding[] {
  const dripping = metalDrips(evidence);
  const own = dripping.length > 0 ? null : ownFace(evidence);
  const faces = [own, farFace(evidence)].filter((face) => face !== null);
  return [
    ...dripping,
    ...faces.flatMap((face) => FACE_RULES.flatMap((rule) => rule(face))),
    ...coldJunctions(evidence),
  ];
}

/** Resistance below which there is no insulation [m²·K/W] (this project's rule). */
const NO_INSULATION = 0.5;

/** Bare metal over a heated room: it drips, which outweighs mould. Source: METHOD.md, Roofs (common practice). */
function metalDrips({ buildUp, room, calculation, surface }: Evidence): RuledFinding[] {
  const { counted } = calculation.heat;
  const inner = counted.find(({ layer }) => layer.type !== "air");
  const isMetal = inner?.layer.type === "material" && inner.layer.material.kind === "metal";
  const isBare = isMetal && sumOfResistances(counted) < NO_INSULATION && buildUp.faces === "outdoors";
  if (!isBare || room.temperature.kind === "unheated" || surface.condensationMonths.length === 0) return [];
  return [found("metal-drips", OVER_LIMIT, { layer: inner!.index, months: surface.condensationMonths })];
}

type CriticalMonth = NonNullable<SurfaceResult["critical"]["mould"]>;

/** A face with its temperature factors and the requirements of the critical months. */
interface Face {
  isOther: boolean;
  lowest: Pick<SurfaceResult["temperatureFactors"][number], "sectionId" | "factor">;
  /** Factor of the surface as a whole [–]. */
  whole: number;
  mould: CriticalMonth | null;
  condensation: CriticalMonth | null;
  condensationMonths: readonly MonthName[];
}

function ownFace({ surface }: Evidence): Face {
  const whole = surface.temperatureFactors.find(({ sectionId }) => sectionId === null);
  return {
    isOther: false,
    lowest: lowestFactor(surface),
    whole: (whole ?? surface.temperatureFactors[0]!).factor,
    mould: surface.critical.mould,
    condensation: surface.critical.condensation,
    condensationMonths: surface.condensationMonths,
  };
}

function farFace({ surface }: Evidence): Face | null {
  const other = surface.otherFace;
  if (other === null) return null;
  return {
    isOther: true,
    lowest: { sectionId: other.sectionId, factor: other.temperatureFactor },
    whole: other.combined,
    mould: other.required === null ? null : { month: other.criticalMonth!, factor: other.required },
    condensation: other.condensation,
    condensationMonths: other.condensationMonths,
  };
}

/** The rules for each face. */
const FACE_RULES: readonly ((face: Face) => RuledFinding[])[] = [noConstructionMeets, mouldOnFace, dropsOnFace];

function noConstructionMeets({ mould, isOther }: Face): RuledFinding[] {
  if (mould === null || !(mould.factor > 1)) return [];
  const code = isOther ? "surface-needs-drier-air-other-face" : "surface-needs-drier-air";
  return [found(code, CONDITION, { required: mould.factor, month: mould.month })];
}

function mouldOnFace({ mould, lowest, whole, isOther }: Face): RuledFinding[] {
  if (mould === null || mould.factor > 1 || !(lowest.factor < mould.factor)) return [];
  const code = isOther ? "surface-mould-other-face" : "surface-mould";
  return [
    found(code, whole < mould.factor ? OVER_LIMIT : CONDITION, {
      factor: lowest.factor,
      section: lowest.sectionId,
      combined: whole,
      required: mould.factor,
      month: mould.month,
    }),
  ];
}

function dropsOnFace({ condensation, condensationMonths, lowest, whole, isOther }: Face): RuledFinding[] {
  if (condensation === null || condensation.factor > 1 || !(lowest.factor < condensation.factor)) return [];
  const code = isOther ? "surface-condensation-other-face" : "surface-condensation";
  const effect = whole < condensation.factor ? "change by number" : "condition";
  return [
    found(
      code,
      { severity: "fault", effect },
      {
        factor: lowest.factor,
        section: lowest.sectionId,
        required: condensation.factor,
        month: condensation.month,
        months: condensationMonths,
      },
    ),
  ];
}

/** Junctions are compared with the face in the warmer room: this one, or the other one where this room is colder. */
function coldJunctions(evidence: Evidence): RuledFinding[] {
  const mould = ownFace(evidence).mould ?? farFace(evidence)?.mould ?? null;
  if (mould === null) return [];
  return evidence.surface.junctions
    .filter(({ meetsMould }) => meetsMould === false)
    .map(({ name, factor, workedOut }) =>
      found("junction-mould", CONDITION, { name, factor, workedOut, required: mould.factor, month: mould.month }),
    );
}
