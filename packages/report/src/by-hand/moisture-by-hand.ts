import {
  DAYS_IN_MONTH,
  MONTH_NAMES,
  SECONDS_PER_DAY,
  saturationPressure,
  VAPOUR_PERMEABILITY_OF_AIR,
} from "@warmside/core";
import { GRAMS_PER_KILOGRAM } from "../numbers.ts";
import { placeOf, resistanceTo, shortPlaceOf } from "../places.ts";
import type { SectionView } from "../section-view.ts";
import { DECIMALS, type Printed, printed } from "./printed.ts";
import type { BalanceByHand, FlowByHand, MoistureByHand, NodeByHand } from "./types.ts";

/**
 * The deciding month of a section as worked with a pocket calculator: every figure follows from the printed ones.
 *
 * @param view - the section
 * @param surfaces - Rsi and Rse as used for temperatures and vapour [m²·K/W]
 * @returns the steps
 * Source: ISO 13788:2012 clauses 6.3 and 6.4 (from memory).
 */
export function moistureByHand(view: SectionView, surfaces: { inside: number; outside: number }): MoistureByHand {
  const { deciding, section } = view;
  const layersResistance = section.layers.reduce((sum, { resistance }) => sum + resistance, 0);
  const totalResistance = printed(surfaces.inside + layersResistance + surfaces.outside, DECIMALS.resistance);
  const indoor = air(deciding.indoor);
  const skyOffset = view.buildUp.moisture?.skyOffset ?? 0;
  const felt = deciding.outdoor.temperature - skyOffset;
  const outdoor = { ...air(deciding.outdoor), temperature: printed(felt, DECIMALS.temperature) };
  const days = DAYS_IN_MONTH[MONTH_NAMES.indexOf(deciding.month as (typeof MONTH_NAMES)[number])] ?? 0;
  const gramsPerPascal = printed(VAPOUR_PERMEABILITY_OF_AIR * days * SECONDS_PER_DAY * GRAMS_PER_KILOGRAM, 5);
  const chosen = chosenNodes(view);
  const last = deciding.nodes.length - 1;
  const decimalsOfSd = decimalsApart(chosen.map((node) => deciding.nodes[node]!.sd));
  const nodes = chosen.map((node): NodeByHand => {
    const resistance = printed(surfaces.inside + resistanceTo(view, node), DECIMALS.resistance);
    const share = resistance.value / totalResistance.value;
    const fall = indoor.temperature.value - outdoor.temperature.value;
    const temperature = printed(indoor.temperature.value - fall * share, DECIMALS.temperature);
    const saturation = printed(saturationPressure(temperature.value), DECIMALS.pressure);
    return {
      node,
      place: placeOf(view, node),
      short: shortPlaceOf(view, node),
      resistance,
      temperature,
      saturation,
      sd: printed(deciding.nodes[node]!.sd, decimalsOfSd),
      pressure: saturation,
    };
  });
  setPressures(nodes, last, indoor.pressure.value, outdoor.pressure.value, deciding.planes.length > 0);
  const flows = deciding.planes.length > 0 ? flowsBetween(nodes, gramsPerPascal.value) : [];
  const underSky = skyOffset > 0;
  const base = {
    month: deciding.month,
    days,
    indoor,
    outdoor,
    underSky,
    totalResistance,
    gramsPerPascal,
    nodes,
    flows,
  };
  return { ...base, balances: balancesOf(view, nodes, flows) };
}

/** Decimals that tell the sd of neighbours apart: a flow is divided by their distance, however thin the layer. */
function decimalsApart(sd: readonly number[]): number {
  const ways = sd.slice(1).map((value, index) => value - sd[index]!);
  return Math.max(DECIMALS.sd, 1 - Math.floor(Math.log10(Math.min(...ways))));
}

function air(state: { temperature: number; vapourPressure: number }): { temperature: Printed; pressure: Printed } {
  return {
    temperature: printed(state.temperature, DECIMALS.temperature),
    pressure: printed(state.vapourPressure, DECIMALS.pressure),
  };
}

/** The surfaces with the wet nodes of the month between them, or the node nearest to saturation. */
function chosenNodes(view: SectionView): number[] {
  const last = view.deciding.nodes.length - 1;
  const wet = view.deciding.planes.map(({ node }) => node);
  const nearest = view.section.leastMargin?.node;
  const between = wet.length > 0 ? wet : nearest === undefined ? [] : [nearest];
  return [...new Set([0, ...between, last])].sort((one, other) => one - other);
}

function setPressures(nodes: NodeByHand[], last: number, inside: number, outside: number, wet: boolean): void {
  const surface = (node: NodeByHand, ofAir: number): Printed =>
    printed(Math.min(ofAir, node.saturation.value), DECIMALS.pressure);
  const first = nodes[0]!;
  const final = nodes.at(-1)!;
  first.pressure = surface(first, inside);
  final.pressure = surface(final, outside);
  if (wet) return;
  for (const node of nodes) {
    if (node === first || node.node === last) continue;
    const share = node.sd.value / final.sd.value;
    node.pressure = printed(
      first.pressure.value - (first.pressure.value - final.pressure.value) * share,
      DECIMALS.pressure,
    );
  }
}

function flowsBetween(nodes: readonly NodeByHand[], gramsPerPascal: number): FlowByHand[] {
  return nodes.slice(1).map((node, index) => {
    const before = nodes[index]!;
    const drive = before.pressure.value - node.pressure.value;
    const way = node.sd.value - before.sd.value;
    return { from: before.node, to: node.node, grams: printed((gramsPerPascal * drive) / way, DECIMALS.grams) };
  });
}

function balancesOf(view: SectionView, nodes: readonly NodeByHand[], flows: readonly FlowByHand[]): BalanceByHand[] {
  return view.deciding.planes.flatMap((plane) => {
    const arrives = flows.find(({ to }) => to === plane.node)?.grams;
    const leaves = flows.find(({ from }) => from === plane.node)?.grams;
    if (!arrives || !leaves) return [];
    const change = printed(arrives.value - leaves.value, DECIMALS.grams);
    const before = printed((plane.held - plane.change) * GRAMS_PER_KILOGRAM, DECIMALS.grams);
    const counted = printed(Math.max(change.value, -before.value), DECIMALS.grams);
    const calculated = printed(plane.change * GRAMS_PER_KILOGRAM, DECIMALS.grams);
    const place = nodes.find(({ node }) => node === plane.node)?.place ?? "";
    return [{ node: plane.node, place, arrives, leaves, change, before, counted, calculated }];
  });
}
