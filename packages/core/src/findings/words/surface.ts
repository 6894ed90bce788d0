import { MONTH_NAMES } from "../../constants.ts";
import { pieceInWords } from "../../further-checks/wood/wood-moisture.ts";
import { formatNumber, formatQuantity } from "../../quantities/format-quantity.ts";
import type {
  FaceCondensation,
  FaceMould,
  FaceNeedsDrierAir,
  MonthName,
  PieceOfWood,
  SectionId,
  SurfaceFindings,
} from "../../result/types.ts";
import { roomInWords } from "../../rooms/room-in-words.ts";
import { capital, joined, monthsInWords } from "../figures-in-words.ts";
import { keepDry } from "./keep-dry.ts";
import { placeInWords, sectionPhrase } from "./places.ts";
import type { Named, Said, Wordings } from "./wording.ts";

const SURFACE = "ISO 13788:2012 clause 5";

/** Findings on surfaces, on mould between layers and on wood. */
export const SURFACE_WORDINGS: Wordings<keyof SurfaceFindings> = {
  "surface-needs-drier-air": ({ figures }) => needsDrierAir(figures, OWN_FACE, "its surface"),
  "surface-needs-drier-air-other-face": ({ figures }, buildUp) => {
    const face = otherFace(buildUp);
    return needsDrierAir(figures, face, face.name);
  },
  "surface-mould": ({ figures }) => mould(figures, OWN_FACE),
  "surface-mould-other-face": ({ figures }, buildUp) => mould(figures, otherFace(buildUp)),
  "surface-condensation": ({ figures }) => drops(figures, OWN_FACE),
  "surface-condensation-other-face": ({ figures }, buildUp) => drops(figures, otherFace(buildUp)),
  "metal-drips": ({ figures: { layer, months } }, { layers }) => ({
    says: `It will drip in ${months.length} months: water runs off ${layers[layer]!.name} on the room side in ${monthsInWords(months)}.`,
    more: ["Nothing keeps the room's air from metal as cold as outdoors."],
    advice: "Insulate the metal, with a vapour layer or bonded foam on its room side.",
    source: SURFACE,
  }),
  "room-too-damp": ({ figures: { room, months, month, relativeHumidity, limit } }) => ({
    says: `${capital(roomInWords(room))} itself is damp enough for mould in ${countOfMonths(months)}: ${humidity(relativeHumidity)} in ${month}, where mould can grow above ${humidity(limit)}.`,
    more: ["No layer in the partition changes that."],
    advice: `Ventilate or heat ${roomInWords(room)} until it stays under ${humidity(limit)}.`,
    source: "growth limit of Hukka and Viitanen 1999",
  }),
  "junction-mould": ({ figures: { name, factor, workedOut, required, month } }) => ({
    says: `Mould can grow at the junction "${name}": temperature factor ${figure(factor)}, ${month} requires ${figure(required)}.`,
    advice: workedOut
      ? `Change the junction "${name}" (Junctions, in the annex, has what is enough), or keep the room drier.`
      : `Insulate the junction "${name}", or keep the room drier.`,
    source: `ISO 13788:2012 clause 5, with ${workedOut ? "a factor calculated in the plane to ISO 10211:2017" : "the stated factor"}`,
  }),
  "mould-at-interface": ({ figures, severity }, buildUp) => ({
    says:
      `Mould can grow on ${figures.food} ${placeInWords(figures.place, buildUp)}${sectionPhrase(figures.section)}: in ${monthsInWords(figures.months)} the air there exceeds the growth limit, at most ` +
      `${humidity(figures.relativeHumidity)} in ${figures.month} (limit ${humidity(figures.limit)} at ${formatQuantity(figures.temperature, "temperature")}, outdoors ${humidity(figures.outdoors)}).`,
    more: [
      severity === "fault" ? `In ${countOfMonths(figures.monthsNearlyWet)} it is 95 % or more.` : "",
      figures.places > 1 ? `Of ${figures.places} such places, this one is humid for longest.` : "",
    ],
    advice: severity === "note" ? null : severity === "fault" ? drierOrWarmer(figures, buildUp) : keepDry(buildUp),
    source: "growth limit of Hukka and Viitanen 1999, above outdoor humidity (this project's rule)",
  }),
  "wood-moisture": ({ figures, severity }, buildUp) => {
    const { piece, section, moisture, limit, months, monthsWithOutdoors, monthsSaturated, others } = figures;
    const name = (wood: PieceOfWood): string => pieceInWords(wood, buildUp.layers);
    const counted = months.length > 0 ? months : monthsWithOutdoors;
    const over = `The wood moisture of ${name(piece)}${sectionPhrase(section)} reaches ${formatQuantity(moisture, "moisture content")} at equilibrium, over ${formatQuantity(limit, "moisture content")} in ${countOfMonths(counted)}`;
    return {
      says:
        severity === "fault"
          ? `The wood moisture of ${name(piece)}${sectionPhrase(section)} is at fibre saturation, where wood decays, in ${countOfMonths(monthsSaturated)}: ${formatQuantity(moisture, "moisture content")}.`
          : months.length > 0
            ? `${over}.`
            : `${over}: no more than outdoor air alone would cause.`,
      more: [months.length > 0 && others.length > 0 ? `Also over it: ${joined(others.map(name))}.` : ""],
      advice:
        severity === "note"
          ? null
          : severity === "fault"
            ? drierWood(name(piece), figures, buildUp)
            : `${keepDry(buildUp)} ${capital(name(piece))} must stay under ${formatQuantity(limit, "moisture content")} by a moisture meter; at equilibrium it reaches ${formatQuantity(moisture, "moisture content")}.`,
      source: "FPL Wood Handbook chapter 4 for the equilibrium; 20 % is common practice",
    };
  },
};

/** A face in a sentence: "the room surface" of "the room", "the face towards the store" of "that room". */
interface FaceInWords {
  name: string;
  room: string;
}

const OWN_FACE: FaceInWords = { name: "the room surface", room: "the room" };

function otherFace({ faces }: Named): FaceInWords {
  return { name: `the face towards ${roomInWords(faces)}`, room: "that room" };
}

function needsDrierAir({ required, month }: FaceNeedsDrierAir, { room }: FaceInWords, surface: string): Said {
  return {
    says: `In ${month} ${room} is so damp that no construction keeps ${surface} below 80 % (the required temperature factor is ${figure(required)}, over 1).`,
    more: ["Ventilation is the answer, not insulation."],
    advice: "Make less vapour or ventilate more. Tiled, mineral or wipeable surfaces tolerate more damp.",
    source: SURFACE,
  };
}

function mould({ factor, section, combined, required, month }: FaceMould, { name, room }: FaceInWords): Said {
  const source = "ISO 13788:2012 clause 5, critical surface humidity 80 %";
  if (combined < required) {
    return {
      says: `Mould can grow on ${name}: its temperature factor is ${figure(factor)}${where(section)}, and ${month} requires ${figure(required)}.`,
      advice: `Insulate more, or keep ${room} drier: make less vapour, ventilate more.`,
      source,
    };
  }
  return {
    says: `${capital(name)}${where(section)} is too cold to keep mould away: its temperature factor is ${figure(factor)}, and ${month} requires ${figure(required)}.`,
    more: [`The surface as a whole has ${figure(combined)} and meets it.`],
    advice: "Insulate across the framing, or keep the room drier.",
    source,
  };
}

function drops({ factor, section, required, months }: FaceCondensation, { name, room }: FaceInWords): Said {
  return {
    says: `Drops form on ${name}${where(section)} in ${joined(months)}: its temperature factor is ${figure(factor)} and must be ${figure(required)}.`,
    advice: `Insulate more, or keep ${room} drier.`,
    source: SURFACE,
  };
}

function where(section: SectionId | null): string {
  return section === null ? "" : sectionPhrase(section);
}

function humidity(value: number): string {
  return formatQuantity(value, "relative humidity");
}

function figure(factor: number): string {
  return formatNumber(factor, 2);
}

/** For masonry and logs that rain may wet: they must stay able to dry to the room side. */
const INSULATED_OUTSIDE =
  "insulate outside and keep the rain off; a tighter layer on the room side would hold the rain in.";

/** How to let wood dry, by the origin of its water. */
function drierWood(piece: string, { holdsRain, isOfRoom }: SurfaceFindings["wood-moisture"], { faces }: Named): string {
  if (holdsRain) return `Keep the air at ${piece} drier: ${INSULATED_OUTSIDE}`;
  if (faces === "void")
    return `Keep the air at ${piece} drier: cover the bare ground of the void and keep its openings clear.`;
  if (isOfRoom) return `Keep the air at ${piece} drier: ventilate or heat the damper room.`;
  return `Keep the air at ${piece} drier: a tighter vapour layer on the warm side, or more open layers on the cold side.`;
}

/** How to keep a place between layers drier or warmer, by the side that vapour comes from. */
function drierOrWarmer({ warmSide, holdsRain }: SurfaceFindings["mould-at-interface"], { faces }: Named): string {
  if (holdsRain) return capital(INSULATED_OUTSIDE);
  if (faces === "void") {
    return "Cover the bare ground of the void, keep its openings clear, and insulate below that place to keep it warmer.";
  }
  return warmSide === "inside"
    ? "Use a tighter vapour layer on its room side, more open layers outside it, or insulation outside it to keep it warmer."
    : "Hold vapour back on its outer side, and keep its room side open to vapour.";
}

function countOfMonths(months: readonly MonthName[]): string {
  if (months.length === 1) return `one month, ${months[0]}`;
  const others = MONTH_NAMES.filter((month) => !months.includes(month));
  if (others.length === 0) return "every month";
  const named = months.length <= MONTH_NAMES.length / 2 ? joined(months) : `all but ${joined(others)}`;
  return `${months.length} months (${named})`;
}
