import type { Printed } from "./printed.ts";

/** A node of the sum: the two surfaces, and the places with water or the one nearest to it. */
export interface NodeByHand {
  node: number;
  place: string;
  short: string;
  /** From the room air to here [m²·K/W]. */
  resistance: Printed;
  /** [°C] */
  temperature: Printed;
  /** [Pa] */
  saturation: Printed;
  /** [m] */
  sd: Printed;
  /** Vapour pressure [Pa]. */
  pressure: Printed;
}

/** Water passing between two neighbouring nodes in the month. */
export interface FlowByHand {
  from: number;
  to: number;
  /** [g/m²]; positive outwards. */
  grams: Printed;
}

/** The gain or loss at a place with water. */
export interface BalanceByHand {
  node: number;
  place: string;
  arrives: Printed;
  leaves: Printed;
  /** [g/m²] */
  change: Printed;
  /** Held when the month began [g/m²]; a loss cannot be greater. */
  before: Printed;
  /** Change after that limit [g/m²]. */
  counted: Printed;
  /** The same figure from the unrounded calculation [g/m²]. */
  calculated: Printed;
}

/** The deciding month worked step by step with rounded figures. */
export interface MoistureByHand {
  month: string;
  days: number;
  indoor: { temperature: Printed; pressure: Printed };
  outdoor: { temperature: Printed; pressure: Printed };
  /** True where the outer surface was taken colder than the air, under a clear sky. */
  underSky: boolean;
  totalResistance: Printed;
  /** Grams that pass through one metre of still air for one pascal over the month. */
  gramsPerPascal: Printed;
  nodes: NodeByHand[];
  flows: FlowByHand[];
  balances: BalanceByHand[];
}
