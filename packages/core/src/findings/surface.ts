import { lowestFactor } from "../heat/surface.ts";
import { formatNumber } from "../quantities/format-quantity.ts";
import { roomInWords } from "../rooms/room-in-words.ts";
import { capital } from "./figures-in-words.ts";
import type { Evidence, RuledFinding } from "./types.ts";

/**
 * The surfaces: drops and mould, on the room's face and on the one towards another room, and at junctions.
 * Source: ISO 13788:2012 clause 5 (from memory).
 */
export function surfaceFindings(evidence: Evidence): RuledFinding[] {
  const faces = [ownFace(evidence), farFace(evidence)].filter((face) => face !== null);
  return [...faces.flatMap((face) => FACE_RULES.flatMap((rule) => rule(face))), ...coldJunctions(evidence)];
}

interface CriticalMonth {
  month: string;
  factor: number;
}

/** A face with the air before it: what it has, and what the critical months ask. */
interface Face {
  /** "the room surface", "the face towards the store". */
  name: string;
  /** "the room", "that room". */
  room: string;
  /** Put after a code: nothing for the room's own face. */
  codeEnd: "" | "-other-face";
  lowest: { where: string; factor: number };
  /** Factor of the surface as a whole [–]. */
  whole: number;
  mould: CriticalMonth | null;
  condensation: CriticalMonth | null;
  condensationMonths: readonly string[];
}

function ownFace({ surface }: Evidence): Face {
  const whole = surface.temperatureFactors.find(({ where }) => where === "combined") ?? surface.temperatureFactors[0]!;
  return {
    name: "the room surface",
    room: "the room",
    codeEnd: "",
    lowest: lowestFactor(surface),
    whole: whole.factor,
    mould: surface.critical.mould,
    condensation: surface.critical.condensation,
    condensationMonths: surface.condensationMonths,
  };
}

function farFace({ surface, buildUp }: Evidence): Face | null {
  const other = surface.otherFace;
  if (other === null) return null;
  return {
    name: `the face towards ${roomInWords(buildUp.faces)}`,
    room: "that room",
    codeEnd: "-other-face",
    lowest: { where: other.where, factor: other.temperatureFactor },
    whole: other.combined,
    mould: other.required === null ? null : { month: other.criticalMonth!, factor: other.required },
    condensation: other.condensation,
    condensationMonths: other.condensationMonths,
  };
}

/** What is asked of each face. */
const FACE_RULES: readonly ((face: Face) => RuledFinding[])[] = [noConstructionMeets, mouldOnFace, dropsOnFace];

function noConstructionMeets({ mould, room, name, codeEnd }: Face): RuledFinding[] {
  if (mould === null || !(mould.factor > 1)) return [];
  return [
    {
      code: `surface-needs-drier-air${codeEnd}`,
      severity: "caution",
      effect: "condition",
      message: `In ${mould.month} ${room} is so damp that no construction keeps ${codeEnd === "" ? "its surface" : name} below 80 % (the required temperature factor is ${figure(mould.factor)}, over 1). That is a matter of ventilation, not of insulation.`,
      advice: "Make less vapour or change more air; wipeable, tiled or mineral surfaces stand more.",
      source: "ISO 13788:2012 clause 5 (from memory)",
      figures: { required: mould.factor, month: mould.month },
    },
  ];
}

function mouldOnFace({ mould, lowest, whole, name, room, codeEnd }: Face): RuledFinding[] {
  if (mould === null || mould.factor > 1 || !(lowest.factor < mould.factor)) return [];
  const everywhere = whole < mould.factor;
  const driest = `keep ${room} drier: less vapour made, more air changed`;
  return [
    {
      code: `surface-mould${codeEnd}`,
      severity: everywhere ? "fault" : "caution",
      effect: everywhere ? "change by number" : "condition",
      message: everywhere
        ? `Mould can grow on ${name}: its temperature factor is ${figure(lowest.factor)} (${lowest.where}), ${mould.month} asks for ${figure(mould.factor)}.`
        : `${capital(name)} ${lowest.where} falls short of what keeps mould away: temperature factor ${figure(lowest.factor)}, ${mould.month} asks for ${figure(mould.factor)}. The surface as a whole meets it with ${figure(whole)}.`,
      advice: everywhere
        ? `Insulate more, or ${driest}.`
        : "A layer of insulation across the framing closes the gap; so does a drier room.",
      source: "ISO 13788:2012 clause 5, critical surface humidity 80 % (from memory)",
      figures: {
        factor: lowest.factor,
        where: lowest.where,
        combined: whole,
        required: mould.factor,
        month: mould.month,
      },
    },
  ];
}

function dropsOnFace({ condensation, condensationMonths, lowest, whole, name, room, codeEnd }: Face): RuledFinding[] {
  if (condensation === null || condensation.factor > 1 || !(lowest.factor < condensation.factor)) return [];
  return [
    {
      code: `surface-condensation${codeEnd}`,
      severity: "fault",
      effect: whole < condensation.factor ? "change by number" : "condition",
      message: `Drops form on ${name} (${lowest.where}) in ${condensationMonths.join(", ")}: temperature factor ${figure(lowest.factor)}, ${figure(condensation.factor)} is needed.`,
      advice: `Insulate more, or keep ${room} drier.`,
      source: "ISO 13788:2012 clause 5 (from memory)",
      figures: { factor: lowest.factor, required: condensation.factor, month: condensation.month },
    },
  ];
}

/** Junctions are held against the face whose room is the warmer: this room's, or the other one's where this is colder. */
function coldJunctions(evidence: Evidence): RuledFinding[] {
  const mould = ownFace(evidence).mould ?? farFace(evidence)?.mould ?? null;
  if (mould === null) return [];
  return evidence.surface.junctions
    .filter(({ meetsMould }) => meetsMould === false)
    .map(({ name, factor }) => ({
      code: "junction-mould",
      severity: "caution",
      effect: "condition",
      message: `The junction "${name}" has a temperature factor of ${figure(factor)}; ${mould.month} asks for ${figure(mould.factor)}.`,
      advice: "Insulate the junction, or keep the room drier.",
      source: "ISO 13788:2012 clause 5 with a factor as stated (from memory)",
      figures: { factor, required: mould.factor, month: mould.month },
    }));
}

function figure(factor: number): string {
  return formatNumber(factor, 2);
}
