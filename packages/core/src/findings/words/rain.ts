import type { CladdingKind, RainFindings } from "../../result/types.ts";
import type { Named, Wordings } from "./wording.ts";

const RULE = "METHOD.md, Rain (this project's rule on common practice)";
const TRANSIENT = "Ask for a transient assessment to EN 15026.";

/** Findings on rain on walls. */
export const RAIN_WORDINGS: Wordings<keyof RainFindings> = {
  "rain-not-said": ({ figures: { layer, kind } }, buildUp) => ({
    says: `Rain decides this wall: ${nameOf(layer, buildUp)} takes up water, and ${BEHIND[kind]} lies behind it with no drained, ventilated gap.`,
    more: ["The method has no rain, and the file does not say whether rain reaches the wall."],
    advice: `Say in the file whether rain reaches it: \`wetted by rain: no\`, \`sheltered\` or \`yes\`. ${CURE[kind]}`,
    source: RULE,
  }),
  "rain-kept-off": ({ figures: { layer, said } }, buildUp) => ({
    says: `The answer depends on rain being kept off ${nameOf(layer, buildUp)}${said === "sheltered" ? ", which the file calls sheltered" : ""}.`,
    advice: `Keep rain off ${nameOf(layer, buildUp)}: eaves or a roof over it, gutters whole, no splash at its foot.`,
    source: RULE,
  }),
  "rain-wetted-masonry": ({ figures: { layer, kind } }, buildUp) => ({
    says: `Driving rain wets ${nameOf(layer, buildUp)}, and ${BEHIND[kind]} lies behind it: the monthly method has no rain, and less heat reaches the outside to dry it.`,
    advice: `${TRANSIENT} ${CURE[kind]}`,
    source: "ISO 13788:2012 clause 1",
  }),
  "sun-driven-moisture": ({ figures: { layer, isSure } }, buildUp) => ({
    says: isSure
      ? `Sun on rain-wet ${nameOf(layer, buildUp)} drives its moisture inwards, into a cooled building: the monthly method has neither sun nor rain.`
      : `In a cooled building the sun drives moisture out of rain-wet ${nameOf(layer, buildUp)} inwards, which the monthly method does not see.`,
    advice: isSure
      ? TRANSIENT
      : "Ventilate the gap behind the cladding top and bottom, and leave tight sheets and vinyl off the room side.",
    source: "common practice",
  }),
  "outer-leaf-drains": ({ figures: { layer } }, buildUp) => ({
    says: `The wall depends on its outer leaf, ${nameOf(layer, buildUp)}, draining: rain that passes it must run off inside the cavity.`,
    advice: "Keep the outer leaf draining: weep holes and trays clear, ties clean, pointing whole.",
    source: RULE,
  }),
};

/** The materials behind the cladding, in words. */
const BEHIND: Readonly<Record<CladdingKind, string>> = {
  masonry: "insulation or timber",
  render: "insulation or timber",
  log: "insulation",
  boarding: "the frame",
};

/** The usual remedy. */
const CURE: Readonly<Record<CladdingKind, string>> = {
  masonry:
    "Insulate masonry outside, or inside only where rain is kept off: about R 1.0, bonded over its whole face, under plaster that is open to vapour.",
  render:
    "Render on timber or straw wants deep eaves and a dry foot, or a carrier board with a drained, ventilated gap behind it.",
  log: "Insulate logs outside, behind a ventilated cladding.",
  boarding: "Boarding wants a breather membrane and a ventilated gap of 20 mm behind it.",
};

function nameOf(layer: number, { layers }: Named): string {
  return layers[layer]!.name;
}
