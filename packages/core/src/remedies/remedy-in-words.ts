import { inSpeech } from "../problems/wording.ts";
import { formatQuantity } from "../quantities/format-quantity.ts";
import type { BetweenLayers, DrierBy, NamedSheet, OuterProtection, RemedyStep } from "../result/types.ts";
import { airChangesInWords, airChangesPerHour } from "../rooms/describe-room.ts";
import { ownRoomInWords } from "../rooms/room-in-words.ts";

/**
 * What a remedy does, as the beginning of a sentence, without its capital letter.
 *
 * @param steps - one change, or two that go together
 * @returns for example "polyethylene sheet 0.15 mm (sd 50 m) added on the warm side, between …; and …"
 */
export function remedyInWords(steps: readonly RemedyStep[]): string {
  return steps.map(stepInWords).join("; and ");
}

function stepInWords(step: RemedyStep): string {
  switch (step.kind) {
    case "gaps closed":
      return `the gaps in ${step.layers.join(" and ")} closed: laps, edges and holes taped`;
    case "leak closed":
      return "the stated leak closed on the room side: tape or sealant, boxes and pipes sealed";
    case "framing taped over":
      return `foil tape over the ${step.framing}, from board to board, on the room side of ${inSpeech(step.layers, "and")}`;
    case "left out":
      return `${step.layer} left out`;
    case "sheet added":
      return `${sheetInWords(step.sheet)} added on the warm side, ${betweenInWords(step.place)}`;
    case "sheet exchanged":
      return `${sheetInWords(step.sheet)} on the warm side instead of ${step.for}`;
    case "outer sheet opened":
      return `${sheetInWords(step.sheet)} outside instead of ${step.for}`;
    case "outer board opened":
      return `${step.board} (sd ${formatQuantity(step.sd, "sd")}) outside instead of ${step.for}${NEEDS_OTHER_BRACING}`;
    case "sheet moved":
      return `${step.layer} moved to the warm side, ${betweenInWords(step.place)}${step.leaves === null ? "" : `, with a ${step.leaves} in its old place`}`;
    case "air widened":
      return `${millimetres(step.thickness)} of ventilated height above the insulation, open at both ends by a continuous 25 mm`;
    case "cavity":
      return (
        `${millimetres(step.thickness)} of well-ventilated air, open at both ends, ${betweenInWords(step.place)}` +
        (step.withSheet ? ", with a breather membrane on the insulation" : "") +
        (step.needsBracing ? NEEDS_OTHER_BRACING : "")
      );
    case "insulated outside":
      return `${millimetres(step.thickness)} of ${step.board} outside, without a break, ${betweenInWords(step.place)}${PROTECTION[step.protection ?? "none"]}`;
    case "insulation thickened":
      return `${step.layer} ${millimetres(step.thickness)} thick instead of ${millimetres(step.was)}`;
    case "insulation moved":
      return insulationMoved(step);
    case "room kept drier":
      return `${ownRoomInWords(step.room)} kept drier: ${drierInWords(step.by)} (a change of use or ventilation, not of the build-up; it must really happen)`;
  }
}

/** Added where a board braced the frame and no longer does. */
const NEEDS_OTHER_BRACING = " (the frame then needs other bracing)";

/** Added after the place of a board. */
const PROTECTION: Readonly<Record<NonNullable<OuterProtection> | "none", string>> = {
  none: "",
  lining: ", lined for fire (the lining not counted)",
  cladding: ", behind ventilated cladding (not counted)",
  "roof covering": ", under a ventilated roof covering (not counted)",
};

function insulationMoved(step: Extract<RemedyStep, { kind: "insulation moved" }>): string {
  const { board, thickness, outside, sheet, protection, isRoof, takenOut } = step;
  return (
    `the insulation moved out of the frame: ${millimetres(thickness)} of ${board} outside ${outside ?? "the frame"}` +
    (sheet === null ? "" : ` on a vapour layer (${sheetInWords(sheet)})`) +
    PROTECTION[protection ?? "none"] +
    (isRoof ? ": a warm roof, the frame left empty" : ", the frame left empty") +
    (takenOut.length === 0 ? "" : ` and ${takenOut.join(" and ")} below it taken out`)
  );
}

function drierInWords(by: DrierBy): string {
  switch (by.kind) {
    case "class":
      return `humidity class ${by.class} instead of ${by.was}`;
    case "points":
      return `relative humidity ${Math.round(by.less * 100)} points lower`;
    case "use":
      return "normal instead of high use";
    case "air changes":
      return `${airChangesInWords(by.airChanges)} an hour instead of ${airChangesPerHour(by.was)}`;
  }
}

/** A sheet with its sd, unless its name already gives it. */
function sheetInWords({ name, sd }: NamedSheet): string {
  return / sd /.test(name) ? name : `${name} (sd ${sd} m)`;
}

/**
 * A place between two layers, in words.
 *
 * @param place - the names of the two layers
 * @returns for example "between gypsum plasterboard and mineral wool slab"
 */
export function betweenInWords({ inner, outer }: BetweenLayers): string {
  if (inner === null) return `on the room face of ${outer}`;
  return outer === null ? `on the outer face of ${inner}` : `between ${inner} and ${outer}`;
}

function millimetres(thickness: number): string {
  return formatQuantity(thickness, "thickness");
}
