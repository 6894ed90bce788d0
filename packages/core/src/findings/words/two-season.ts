import { WETTEST_CLASS } from "../../further-checks/two-season/two-season-scope.ts";
import type { TwoSeasonData } from "../../result/types.ts";
import { placeInWords, sectionPhrase } from "./places.ts";
import type { Named } from "./wording.ts";

/** The wettest plane of the two-season check with its section; null where nothing condenses. */
export function planeInWords({ place, sectionId }: TwoSeasonData, buildUp: Pick<Named, "layers">): string | null {
  return place === null ? null : `${placeInWords(place, buildUp)}${sectionPhrase(sectionId)}`;
}

/** Why the two-season check does not apply; null where it does. */
export function reasonInWords(check: TwoSeasonData, buildUp: Pick<Named, "layers">): string | null {
  switch (check.why) {
    case null:
      return null;
    case "not against outdoor air":
      return "it is for build-ups that face outdoors";
    case "not heated":
      return "it is for heated rooms";
    case "cooled":
      return "it is not for cooled rooms";
    case "pool or steam":
      return "it is not for pools and steam rooms";
    case "wetter than its class":
      return `it is for rooms up to humidity class ${WETTEST_CLASS}, and this one is wetter`;
    case "more than one plane":
      return `water condenses at more than one plane (${planeInWords(check, buildUp)}); the standard itself says how to continue`;
  }
}
