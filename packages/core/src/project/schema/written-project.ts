import type { QuantityName } from "../../quantities/quantity-names.ts";
import type {
  Element,
  InsulationFit,
  LayerPurpose,
  MaterialKind,
  PriceUnit,
  RoofSpace,
  Soil,
  UnderfloorVoid,
  ValueBasis,
  Ventilation,
  WettedByRain,
} from "../types.ts";

/**
 * The project as it stands in the file: its keys, quantities read to SI, names not yet looked up.
 * The schema checks it; the resolving functions turn it into a `Project`.
 */

/** A quantity that was read: which one, and its value in SI. */
export interface ReadValue {
  quantity: QuantityName;
  value: number;
}

export interface WrittenProject {
  project: string;
  reference?: string;
  query?: WrittenQuery;
  climate: string;
  severity?: WrittenSeverity;
  altitude?: ReadValue;
  "lapse rate"?: ReadValue;
  "humidity margin"?: ReadValue;
  materials?: string;
  prices?: string | WrittenPrice[];
  currency?: string;
  "hour rate"?: ReadValue;
  "heat price"?: ReadValue;
  accept?: string[];
  "climates for place"?: string[];
  indoor?: WrittenRoom;
  rooms?: Record<string, WrittenRoom>;
  "build-ups": WrittenBuildUp[];
  junctions?: WrittenJunction[];
  "rain of the heating season"?: ReadValue;
}

/** A year by name, or its offset from the mean year. */
export type WrittenSeverity = "mean year" | "one in ten colder" | "one in ten warmer" | ReadValue;

export interface WrittenQuery {
  question?: string;
  to?: string;
  site?: string;
  "prepared by"?: string;
  date?: string;
  drawings?: string[];
}

export interface WrittenBalance {
  production: ReadValue;
  volume: ReadValue;
  "air changes": ReadValue;
}

export interface WrittenRoom {
  heating?: ReadValue;
  temperature?: ReadValue | ReadValue[] | "by outdoor temperature";
  unheated?: true;
  cooling?: ReadValue;
  humidity?: WrittenHumidity;
  "humidity when cooled"?: ReadValue;
  "heated days"?: ReadValue;
  otherwise?: ReadValue;
  "bursts of steam"?: boolean;
  pool?: boolean;
}

export type WrittenHumidity =
  | { kind: "class"; class: 1 | 2 | 3 | 4 | 5 }
  | { kind: "constant"; share: ReadValue }
  | { kind: "by outdoor temperature"; level: "normal" | "high" }
  | ReadValue[]
  | WrittenBalance;

export interface WrittenMaterial {
  name: string;
  conductivity?: ReadValue;
  "vapour resistance factor"?: ReadValue;
  "wet vapour resistance factor"?: ReadValue;
  density?: ReadValue;
  "specific heat"?: ReadValue;
  emissivity?: ReadValue;
  kind?: MaterialKind;
  source?: string;
  sd?: ReadValue;
  "vapour resistance"?: ReadValue;
  permeance?: ReadValue;
  "sd by humidity"?: (readonly [ReadValue, ReadValue])[];
  "facing sd"?: ReadValue;
  "facing emissivity"?: ReadValue;
  spread?: ReadValue;
  basis?: ValueBasis;
}

export interface WrittenFraming {
  material: string | WrittenMaterial;
  fraction?: ReadValue;
  width?: ReadValue;
  spacing?: ReadValue;
  "other timber"?: ReadValue;
  channel?: { sheet: ReadValue; flange: ReadValue; lip?: ReadValue };
}

export interface WrittenLayer {
  name?: string;
  material?: string | WrittenMaterial;
  thickness?: ReadValue;
  framing?: string | WrittenFraming;
  fit?: InsulationFit;
  fasteners?: { "per area": ReadValue; diameter: ReadValue; conductivity: ReadValue; recess?: ReadValue };
  /** A share, or exactly one of two pairs. */
  gaps?: ReadValue | { width?: ReadValue; spacing?: ReadValue; diameter?: ReadValue; "per area"?: ReadValue };
  purpose?: LayerPurpose;
  bonded?: boolean;
  "gap beside framing"?: ReadValue;
  taped?: "no" | "yes" | ReadValue;
  "facing emissivity inner"?: ReadValue;
  "facing emissivity outer"?: ReadValue;
  "facing sd inner"?: ReadValue;
  "facing sd outer"?: ReadValue;
  air?: ReadValue;
  ventilation?: Ventilation;
  /** Its unit depends on how the layer lies, so it is read when that is known. */
  "ventilation area"?: string;
  open?: "both ends" | "one end" | "closed";
  resistance?: ReadValue;
  emissivity?: ReadValue;
}

/** One change of a variant: exactly one verb, and what goes with it; `set` goes with keys of a layer. */
export interface WrittenChange extends WrittenLayer {
  swap?: string;
  for?: WrittenLayer;
  set?: string;
  add?: WrittenLayer;
  remove?: string;
  move?: string;
  before?: string;
  after?: string;
}

export interface WrittenVariant {
  name: string;
  changes: WrittenChange[];
}

/** A row of the price list in the project file. */
export interface WrittenPrice {
  material: string;
  thickness?: ReadValue;
  per: PriceUnit;
  price?: ReadValue;
  covers?: ReadValue;
  width?: ReadValue;
  lap?: ReadValue;
  waste?: ReadValue;
  hours?: ReadValue;
}

export interface WrittenGround {
  area: ReadValue;
  perimeter: ReadValue;
  "wall thickness"?: ReadValue;
  soil?: Soil;
  "edge insulation"?: { resistance: ReadValue; thickness: ReadValue; width?: ReadValue; depth?: ReadValue };
  membrane?: boolean;
}

export interface WrittenVoid {
  area?: ReadValue;
  perimeter?: ReadValue;
  "wall thickness"?: ReadValue;
  soil?: Soil;
  height?: ReadValue;
  "wall transmittance"?: ReadValue;
  openings?: ReadValue;
  wind?: ReadValue;
  shelter?: UnderfloorVoid["shelter"];
  "ground insulation"?: ReadValue;
  temperature?: ReadValue | ReadValue[];
  humidity?: ReadValue | ReadValue[];
}

export interface WrittenTrappedWater {
  layer: string | number;
  amount?: ReadValue;
  reading?: ReadValue;
  start?: number;
}

/** A junction: exactly one kind, naming its build-ups. */
export interface WrittenJunction {
  name: string;
  "outer corner"?: string | string[];
  "floor edge"?: string[];
  "roof edge"?: string[];
  "window side"?: string;
  posts?: 2 | 3 | "solid";
  rim?: ReadValue;
  blocking?: ReadValue;
  plates?: number;
  trimmers?: number;
  frame?: { width: ReadValue; depth: ReadValue; conductivity?: ReadValue; "set back"?: ReadValue };
}

export interface WrittenBuildUp {
  name: string;
  element: Element;
  room?: string;
  faces?: string;
  target?: ReadValue;
  pitch?: ReadValue;
  span?: ReadValue;
  "clear sky"?: boolean;
  area?: ReadValue;
  openings?: ReadValue;
  length?: ReadValue;
  "wetted by rain"?: WettedByRain;
  "unheated skin"?: boolean;
  framings?: Record<string, WrittenFraming>;
  layers: WrittenLayer[];
  ground?: WrittenGround;
  void?: WrittenVoid;
  space?: {
    area: ReadValue;
    external: { area: ReadValue; transmittance: ReadValue }[];
    "air changes": ReadValue;
    volume: ReadValue;
  };
  "roof space"?: RoofSpace;
  "junction factors"?: { name: string; factor: ReadValue }[];
  "two-season check"?: boolean;
  leak?: { length: ReadValue; width: ReadValue; pressure?: ReadValue };
  "trapped water"?: WrittenTrappedWater | WrittenTrappedWater[];
  "variable resistance"?: boolean;
  variants?: WrittenVariant[];
}
