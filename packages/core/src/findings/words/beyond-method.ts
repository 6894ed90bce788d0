import { formatQuantity } from "../../quantities/format-quantity.ts";
import type { BeyondFindings, TouchedRoomFigures } from "../../result/types.ts";
import { ownRoomInWords, roomInWords } from "../../rooms/room-in-words.ts";
import { capital } from "../figures-in-words.ts";
import type { Wordings } from "./wording.ts";

const TRANSIENT_FOR_WET_ROOMS = "Ask for a transient assessment to EN 15026 by someone used to such rooms.";

/** Findings that put a build-up beyond the method, each with what to ask for instead. */
export const BEYOND_WORDINGS: Wordings<keyof BeyondFindings> = {
  "metal-bridging": ({ figures: { framing, material, conductivity, limit, isChannel } }) => ({
    says: `Metal bridges the insulation (${framing} of ${material}, λ ${conductivity} W/(m·K), limit ${limit}): the combined method does not cover it.`,
    advice: isChannel
      ? "Ask for a detailed calculation to ISO 10211: channels are calculated here only in build-ups that face outdoors or a room."
      : "Write C or U studs with their measures, for example `{ material: steel, channel: { sheet: 1.2 mm, flange: 50 mm, lip: 12 mm }, spacing: 600 mm }`: they are then calculated in the plane. A share of the area is not enough for metal. For anything else ask for a detailed calculation to ISO 10211.",
    source: "ISO 6946:2017 clause 6.7.2.1",
  }),
  "layers-from-outside": ({ figures: { innermost, outermost } }, { layers }) => {
    const inner = innermost === null ? "" : `${layers[innermost]!.name} on the room side`;
    const outer = outermost === null ? "" : `${layers[outermost]!.name} outermost`;
    return {
      says: `The layers look written from outside: ${[inner, outer].filter((part) => part !== "").join(", ")}.`,
      more: ["Layers run from the room outwards; until that is settled, the figures mean nothing."],
      advice: "Turn the list round, or write `accept: [layers-from-outside]` where the order is meant.",
      source: "this project's rule (METHOD.md, Lists written from outside)",
    };
  },
  "unheated-metal-skin": () => ({
    says: "On clear nights a thin metal skin over an unheated room gets colder than the air and drips, whatever the monthly means say.",
    advice: "Ask for advice on an absorbent lining or ventilation.",
    source: "common practice",
  }),
  "ground-feeds-water": () => ({
    says: "The floor lies on the ground without a membrane: the ground feeds it water and vapour.",
    advice: "Add a damp-proof membrane; then the floor can be assessed.",
    source: "common practice",
  }),
  "bursts-of-steam": ({ figures }) => ({
    says: `${capital(touchedRoom(figures))} has short hot bursts of steam, which monthly means do not show.`,
    advice: TRANSIENT_FOR_WET_ROOMS,
    source: "ISO 13788:2012 clause 1",
  }),
  "wetter-than-class-5": ({ figures }) => {
    const { hasPool, excess, classFive, humidityMargin } = figures;
    const name = touchedRoom(figures);
    const margin = humidityMargin === 1 ? "" : ` with the project's margin of ${humidityMargin}`;
    return {
      says: hasPool
        ? `${capital(name)} has a pool: it is wetter than any humidity class.`
        : `In the coldest month ${name} holds ${formatQuantity(excess, "vapour pressure")} more vapour than outdoors; class 5, the wettest, has ${formatQuantity(classFive, "vapour pressure")}${margin}.`,
      advice: TRANSIENT_FOR_WET_ROOMS,
      source: "ISO 13788:2012 Annex A",
    };
  },
};

function touchedRoom({ room, side }: TouchedRoomFigures): string {
  return side === "inside" ? ownRoomInWords(room) : roomInWords(room);
}
