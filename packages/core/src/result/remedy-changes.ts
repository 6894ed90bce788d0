/** A framing as the project file states it: its name, or its values where it belongs to one layer. */
export type FramingAsWritten =
  | string
  | { material: string; fraction: string }
  | { material: string; width: string; spacing: string; "other timber"?: string }
  | { material: string; spacing: string; channel: { sheet: string; flange: string; lip: string } };

/** A layer as the project file states it: quantities with their units. */
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

/** One change in the form of variants: exactly one verb that names a layer. */
export type ChangeAsWritten =
  | { swap: string; for: LayerAsWritten }
  | ({ set: string } & LayerAsWritten)
  | { add: LayerAsWritten; before: string }
  | { add: LayerAsWritten; after: string }
  | { remove: string }
  | { move: string; before: string }
  | { move: string; after: string };

/** A change of the layers, one of an ordered list. */
export interface LayerChange {
  /** Index, from 0, of the changed or added layer, among the layers as changed so far. */
  at: number;
  /** Index, from 0, of a moved layer after the move; null for other changes. */
  to: number | null;
  /** The change as a variant states it; where two layers share a name, only `at` tells them apart. */
  change: ChangeAsWritten;
}

/** A change of a room: its new humidity, as the project file states it. */
export interface RoomChange {
  room: string;
  humidity: string | readonly string[] | { production: string; volume: string; "air changes": string };
}
