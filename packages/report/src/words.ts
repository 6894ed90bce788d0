import {
  type BuildUpResult,
  type ClimateResult,
  type Element,
  type FindingSeverity,
  type JudgementWord,
  type SectionId,
  type SensitivityResult,
  sectionInWords,
} from "@warmside/core";

/** Headings and labels of the page, one word for each thing. */

/** What a verdict of *dry*, or a judgement of *sound*, does not cover; stands beside the word wherever it is given. */
export const NOT_COVERED = "vapour diffusion only: no rain, leaks, moving air, construction moisture or damp ground";

/** The meaning of a judgement, in a clause. */
export const JUDGEMENT_MEANING: Readonly<Record<JudgementWord, string>> = {
  sound: "no moisture finding asks for a change",
  "sound with conditions": "sound if the conditions listed are met",
  "change it": "do not build it like this",
  "beyond this method": "the monthly method cannot answer",
};

export const ELEMENT_WORDS: Readonly<Record<Element, string>> = {
  wall: "Wall",
  "flat roof": "Flat roof",
  "pitched roof": "Pitched roof",
  floor: "Floor",
  partition: "Partition",
};

export const SEVERITY_WORDS: Readonly<Record<FindingSeverity, string>> = {
  fault: "Fault",
  caution: "Caution",
  note: "Note",
};

/**
 * A heat-flow path, for a sentence.
 *
 * @param section - which path
 * @returns for example "between the framing"; "one path" where there is one only
 */
export function pathWords(section: SectionId): string {
  return section.kind === "whole" ? "one path" : sectionInWords(section);
}

/** A sentence with a capital first letter: texts that begin with a layer's name have a small one. */
export function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Months' names shortened for column heads. */
export function shortMonth(month: string): string {
  return month.slice(0, 3);
}

/**
 * What lies at the two ends of a build-up, as short as a label.
 *
 * @param buildUp - a build-up of the result
 * @returns words for the room side and the far side
 */
export function sideWords(buildUp: Pick<BuildUpResult, "room" | "faces" | "element">): { room: string; far: string } {
  const room = buildUp.room === "indoor" ? "room" : buildUp.room;
  return { room, far: FAR_SIDES[buildUp.faces] ?? (buildUp.faces === "indoor" ? "indoor room" : buildUp.faces) };
}

/**
 * What lies at the two ends of a build-up, for a sentence.
 *
 * @param buildUp - a build-up of the result
 * @returns such as "from the room “drying” to the outside"
 */
export function fromRoomToFarSide(buildUp: Pick<BuildUpResult, "room" | "faces" | "element">): string {
  const { far } = sideWords(buildUp);
  const farSide =
    buildUp.faces in FAR_SIDES
      ? `the ${far}`
      : buildUp.faces === "indoor"
        ? "the indoor room"
        : roomWords(buildUp.faces);
  return `from ${roomWords(buildUp.room)} to ${farSide}`;
}

/**
 * A room, for a sentence.
 *
 * @param name - the room's name in the file
 * @returns the name in quotation marks, bare where it is a room by its own words, and "the room" for the only one
 * @example roomWords("drying") // "the room “drying”"
 */
export function roomWords(name: string): string {
  if (name === "indoor") return "the room";
  return /\broom\b/i.test(name) ? `the ${name}` : `the room “${name}”`;
}

/**
 * The place of a climate in words: what its table calls it, else the table's own name.
 *
 * @param climate - the climate of the result
 * @returns such as "London Heathrow" for the table heathrow
 */
export function climatePlace({ name, origin }: Pick<ClimateResult, "name" | "origin">): string {
  const place = origin.map((line) => /^place:\s*(\S.*)$/.exec(line.trim())?.[1]).find((found) => found !== undefined);
  return place ?? name;
}

const FAR_SIDES: Readonly<Record<string, string>> = { outdoors: "outside", ground: "ground", void: "void below" };

/** The assumptions of the sensitivity runs as tables name them. */
export const ASSUMPTIONS: Readonly<Record<SensitivityResult["name"], string>> = {
  "one in ten colder year": "1-in-10 cold year",
  "one in ten warmer year": "1-in-10 warm year",
  "heated every day": "heated every day",
  "unfavourable vapour resistance": "less favourable tabulated μ and sd",
  "vapour layer ten times more open": "vapour layer ten times more open",
  "no vapour layer": "no vapour layer",
  "wetter room": "wetter room (one humidity class up)",
};
