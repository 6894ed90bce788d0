import { pieceInWords } from "../../further-checks/wood/wood-moisture.ts";
import { sectionName } from "../../heat/paths.ts";
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
import { placeByMaterials, sectionInBrackets } from "./places.ts";
import type { Named, Said, Wordings } from "./wording.ts";

const SURFACE = "ISO 13788:2012 clause 5 (from memory)";

/** Findings of surfaces, of mould inside and of wood. */
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
  "junction-mould": ({ figures: { name, factor, workedOut, required, month } }) => ({
    says: `The junction "${name}" has a temperature factor of ${figure(factor)}; ${month} asks for ${figure(required)}.`,
    advice: "Insulate the junction, or keep the room drier.",
    source: `ISO 13788:2012 clause 5 with a factor ${workedOut ? "worked out in the plane to ISO 10211:2017" : "as stated"} (from memory)`,
  }),
  "mould-at-interface": ({ figures, severity }, buildUp) => ({
    says:
      `Mould can grow ${placeByMaterials(figures.place)}${sectionInBrackets(figures.section)}, on ${figures.food}: in ${monthsInWords(figures.months)} the air there is more humid than mould needs, at most ` +
      `${humidity(figures.relativeHumidity)} in ${figures.month} (limit ${humidity(figures.limit)} at ${formatQuantity(figures.temperature, "temperature")}, outdoors ${humidity(figures.outdoors)}).`,
    more: [figures.places > 1 ? `It is one of ${figures.places} such places, the one that is humid longest.` : ""],
    advice: severity === "note" ? null : drierOrWarmer(figures, buildUp),
    source: "growth limit of Hukka and Viitanen 1999 (from memory), above outdoor humidity (this project's rule)",
  }),
  "wood-moisture": ({ figures, severity }, buildUp) => {
    const { piece, section, moisture, limit, months, monthsWithOutdoors, others } = figures;
    const name = (wood: PieceOfWood): string => pieceInWords(wood, buildUp.layers);
    const counted = months.length > 0 ? months : monthsWithOutdoors;
    const over = `${name(piece)}${sectionInBrackets(section)} would come to ${formatQuantity(moisture, "moisture content")} moisture, over ${formatQuantity(limit, "moisture content")} in ${countOfMonths(counted)}`;
    return {
      says:
        months.length > 0
          ? `${over}, if the air at its face stayed so for ever: an equilibrium, which overstates short wet spells.`
          : `${over}: no more than the air outdoors does to any wood at that time of year.`,
      more: [months.length > 0 && others.length > 0 ? `Also over it: ${joined(others.map(name))}.` : ""],
      advice:
        severity === "note"
          ? null
          : `Keep the air at ${name(piece)} drier: a tighter vapour layer on the warm side, or more open layers on the cold side.`,
      source: "FPL Wood Handbook chapter 4 for the equilibrium (from memory); 20 % is common practice",
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
    more: ["That is a matter of ventilation, not of insulation."],
    advice: "Make less vapour or change more air; wipeable, tiled or mineral surfaces stand more.",
    source: SURFACE,
  };
}

function mould({ factor, section, combined, required, month }: FaceMould, { name, room }: FaceInWords): Said {
  const source = "ISO 13788:2012 clause 5, critical surface humidity 80 % (from memory)";
  if (combined < required) {
    return {
      says: `Mould can grow on ${name}: its temperature factor is ${figure(factor)} (${where(section)}), ${month} asks for ${figure(required)}.`,
      advice: `Insulate more, or keep ${room} drier: less vapour made, more air changed.`,
      source,
    };
  }
  return {
    says: `${capital(name)} ${where(section)} falls short of what keeps mould away: temperature factor ${figure(factor)}, ${month} asks for ${figure(required)}.`,
    more: [`The surface as a whole meets it with ${figure(combined)}.`],
    advice: "A layer of insulation across the framing closes the gap; so does a drier room.",
    source,
  };
}

function drops({ factor, section, required, months }: FaceCondensation, { name, room }: FaceInWords): Said {
  return {
    says: `Drops form on ${name} (${where(section)}) in ${months.join(", ")}: temperature factor ${figure(factor)}, ${figure(required)} is needed.`,
    advice: `Insulate more, or keep ${room} drier.`,
    source: SURFACE,
  };
}

function where(section: SectionId | null): string {
  return section === null ? "combined" : sectionName(section);
}

function humidity(value: number): string {
  return formatQuantity(value, "relative humidity");
}

function figure(factor: number): string {
  return formatNumber(factor, 2);
}

/** What keeps a place inside drier or warmer, by the side that the vapour comes from. */
function drierOrWarmer({ warmSide }: SurfaceFindings["mould-at-interface"], { faces }: Named): string {
  if (faces === "void") {
    return "Cover the bare ground of the void, keep its openings clear, and insulate below that place so that it stays warmer.";
  }
  return warmSide === "inside"
    ? "Let less vapour reach that place (a tighter vapour layer on its room side) or more leave it (more open layers outside it), or insulate outside it so that it stays warmer."
    : "Let less vapour reach that place from the far side, or more leave it towards the room: nothing tight on its room side.";
}

function countOfMonths(months: readonly MonthName[]): string {
  return months.length === 1 ? `one month, ${months[0]}` : `${months.length} months (${joined(months)})`;
}
