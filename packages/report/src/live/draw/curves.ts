import { dewPoint, type SectionMonth, type SectionResult, saturationPressure } from "@warmside/core";
import type { Lens } from "../state/state.ts";

/** The two lines at one point: what the air there can hold, and what it holds. */
export interface Pair {
  limit: number;
  held: number;
}

/** A node of the section with its depth [m] and both values. */
export interface CurveNode extends Pair {
  node: number;
  depth: number;
}

/** The two lines through a section in one month, in °C or in Pa. */
export interface Curves {
  room: Pair;
  nodes: CurveNode[];
  far: Pair;
  /** Lowest and highest value of the whole year, so that the scale stays while months go by. */
  range: [number, number];
}

/**
 * The lines of a month: temperature and dew point, or saturation and vapour pressure.
 *
 * @param section - the heat-flow path
 * @param month - 0 to below 12; a fraction lies between two months
 * @param lens - which pair
 * @returns both lines from the room's air to the air beyond
 */
export function curvesOf(section: SectionResult, month: number, lens: Lens): Curves {
  const { indoor, outdoor, nodes } = monthAt(section, month);
  return {
    room: pairOfAir(indoor, lens),
    nodes: nodes.map((node) => ({ node: node.node, depth: node.depth, ...pairOfNode(node, lens) })),
    far: pairOfAir(outdoor, lens),
    range: rangeOf(section, lens),
  };
}

/** Share of the range at which a value stands. */
export function shareOf({ range: [low, high] }: Curves, value: number): number {
  return (value - low) / (high - low);
}

/** A month, or what lies between two of them. */
export function monthAt(section: SectionResult, month: number): SectionMonth {
  const whole = Math.floor(month);
  const share = month - whole;
  const one = section.months[whole % 12]!;
  if (share === 0) return one;
  const other = section.months[(whole + 1) % 12]!;
  const mix = (from: number, to: number): number => from + (to - from) * share;
  const air = (from: SectionMonth["indoor"], to: SectionMonth["indoor"]): SectionMonth["indoor"] => ({
    temperature: mix(from.temperature, to.temperature),
    vapourPressure: mix(from.vapourPressure, to.vapourPressure),
  });
  return {
    ...(share < 0.5 ? one : other),
    indoor: air(one.indoor, other.indoor),
    outdoor: air(one.outdoor, other.outdoor),
    nodes: one.nodes.map((node, index) => {
      const next = other.nodes[index]!;
      return {
        ...node,
        temperature: mix(node.temperature, next.temperature),
        saturationPressure: mix(node.saturationPressure, next.saturationPressure),
        vapourPressure: mix(node.vapourPressure, next.vapourPressure),
      };
    }),
  };
}

function pairOfAir({ temperature, vapourPressure }: SectionMonth["indoor"], lens: Lens): Pair {
  return lens === "temperature"
    ? { limit: temperature, held: dewPoint(vapourPressure) }
    : { limit: saturationPressure(temperature), held: vapourPressure };
}

function pairOfNode(node: SectionMonth["nodes"][number], lens: Lens): Pair {
  return lens === "temperature"
    ? { limit: node.temperature, held: dewPoint(node.vapourPressure) }
    : { limit: node.saturationPressure, held: node.vapourPressure };
}

function rangeOf(section: SectionResult, lens: Lens): [number, number] {
  const known = ranges.get(section)?.[lens];
  if (known !== undefined) return known;
  const pairs = section.months.flatMap(({ indoor, outdoor }) => [pairOfAir(indoor, lens), pairOfAir(outdoor, lens)]);
  const low = lens === "pressure" ? 0 : Math.min(...pairs.map(({ held }) => held));
  const high = Math.max(...pairs.map(({ limit }) => limit));
  const room = (high - low) * SPARE;
  const range: [number, number] = [lens === "pressure" ? 0 : low - room, high + room];
  ranges.set(section, { ...ranges.get(section), [lens]: range });
  return range;
}

const ranges = new WeakMap<SectionResult, Partial<Record<Lens, [number, number]>>>();
/** Share of the range kept free above and below. */
const SPARE = 0.06;
