import type { MonthName, PieceOfWood, Place, SectionId, WarmSide } from "../places.ts";

/** A face that no construction can keep dry enough: factors [–]. */
export interface FaceNeedsDrierAir {
  /** [–] */
  required: number;
  month: MonthName;
}

/** A face on which mould can grow: factors [–]. */
export interface FaceMould {
  /** [–] */
  factor: number;
  /** The section with that factor; null for the face as a whole. */
  section: SectionId | null;
  /** Factor of the face as a whole [–]. */
  combined: number;
  /** [–] */
  required: number;
  month: MonthName;
}

/** A face on which drops form: factors [–]. */
export interface FaceCondensation {
  /** [–] */
  factor: number;
  section: SectionId | null;
  /** [–] */
  required: number;
  month: MonthName;
  /** Every month with drops. */
  months: readonly MonthName[];
}

/** Figures of findings on surfaces, on mould between layers and on wood, by code. */
export interface SurfaceFindings {
  "surface-needs-drier-air": FaceNeedsDrierAir;
  "surface-needs-drier-air-other-face": FaceNeedsDrierAir;
  "surface-mould": FaceMould;
  "surface-mould-other-face": FaceMould;
  "surface-condensation": FaceCondensation;
  "surface-condensation-other-face": FaceCondensation;
  /** Uninsulated metal over a heated room: index of its layer, from 0, and the months in which it drips. */
  "metal-drips": { layer: number; months: readonly MonthName[] };
  /** A room of a partition that is itself over the growth limit: its name, and the most humid month. */
  "room-too-damp": {
    room: string;
    months: readonly MonthName[];
    month: MonthName;
    /** [–] */
    relativeHumidity: number;
    /** [–] */
    limit: number;
  };
  /** fRsi of the junction, and the one that keeps mould away [–]. */
  "junction-mould": { name: string; factor: number; workedOut: boolean; required: number; month: MonthName };
  "mould-at-interface": {
    /** Whether masonry or logs that rain may wet lie outermost: a tighter room side would hold the rain in. */
    holdsRain: boolean;
    section: SectionId;
    place: Place;
    /** The material that would feed mould. */
    food: string;
    /** Months at 95 % or more on timber or board. */
    monthsNearlyWet: readonly MonthName[];
    months: readonly MonthName[];
    /** The most humid month, with its air [–], [°C]. */
    month: MonthName;
    /** [–] */
    relativeHumidity: number;
    /** [–] */
    limit: number;
    /** [°C] */
    temperature: number;
    /** [°C] */
    outdoors: number;
    /** How many such places there are. */
    places: number;
    warmSide: WarmSide;
  };
  "wood-moisture": {
    /** Whether masonry or logs that rain may wet lie outermost: a tighter room side would hold the rain in. */
    holdsRain: boolean;
    /** Whether the room of a partition is itself too damp, so that no layer helps. */
    isOfRoom: boolean;
    section: SectionId;
    piece: PieceOfWood;
    /** Most moisture, and the limit, as fractions of dry mass [–]. */
    moisture: number;
    /** [–] */
    limit: number;
    /** Months over the limit due to the build-up, and the same including those due to outdoor air alone. */
    months: readonly MonthName[];
    monthsWithOutdoors: readonly MonthName[];
    /** Months at fibre saturation that the build-up causes. */
    monthsSaturated: readonly MonthName[];
    /** Other pieces over the limit. */
    others: readonly PieceOfWood[];
  };
}
