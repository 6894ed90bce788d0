/** What a framing is in the project file: its name, or its values where it belongs to one layer. */
export type FramingAsWritten =
  | string
  | { material: string; fraction: string }
  | { material: string; width: string; spacing: string; "other timber"?: string }
  | { material: string; spacing: string; channel: { sheet: string; flange: string; lip: string } };

/** A layer as the project file takes it: quantities with their units. */
export interface LayerAsWritten {
  material?: string;
  thickness?: string;
  air?: string;
  name?: string;
  framing?: FramingAsWritten;
  purpose?: string;
  gaps?: string;
  taped?: string;
  ventilation?: string;
  "ventilation area"?: string;
  open?: string;
}

/** One change in the language of variants: exactly one verb, naming a layer. */
export type ChangeAsWritten =
  | { swap: string; for: LayerAsWritten }
  | ({ set: string } & LayerAsWritten)
  | { add: LayerAsWritten; before: string }
  | { add: LayerAsWritten; after: string }
  | { remove: string }
  | { move: string; before: string }
  | { move: string; after: string };

/** A change of the layers, to be made in its turn. */
export interface LayerChange {
  /** Index, from 0, of the layer that it is made to, or that the added layer gets, in the layers as changed so far. */
  at: number;
  /** Index, from 0, where a moved layer stands afterwards; null for the other changes. */
  to: number | null;
  /** The same for a variant of the build-up; a name that two layers share does not tell them apart, `at` does. */
  change: ChangeAsWritten;
}

/** A change of a room: what its humidity says afterwards, as the project file takes it. */
export interface RoomChange {
  room: string;
  humidity: string | readonly string[] | { production: string; volume: string; "air changes": string };
}
