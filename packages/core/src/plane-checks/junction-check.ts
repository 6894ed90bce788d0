import { MONTH_NAMES } from "../constants.ts";
import { plainStuff } from "../field/cell-stuffs.ts";
import { coldestOfJunction, type JunctionHeat, junctionHeat } from "../field/junctions/junction-heat.ts";
import { type Side, sideOf } from "../field/junctions/side.ts";
import { metalBridging } from "../heat/bridging.ts";
import { CRITICAL_SURFACE_HUMIDITY, requiredTemperatureFactor } from "../heat/temperature-factor.ts";
import type { HeatCalculation } from "../heat/types.ts";
import type { BuildUp, Junction } from "../project/types.ts";
import type { AssumedMeasure, JunctionChange, MonthName } from "../result/types.ts";
import type { Site } from "../surroundings/far-side-months.ts";
import { drawnJunction, type SettledJunction } from "./junction-question.ts";

/** The result of a junction. */
export interface JunctionCheck {
  junction: Junction;
  /** The build-ups that meet, the wall first; an outer corner of one wall has it once. */
  buildUps: readonly BuildUp[];
  /** Why it is not calculated; null where it is. */
  beyond: "other rooms" | "not outdoors" | "metal" | null;
  assumed: readonly AssumedMeasure[];
  /** fRsi required against mould in the critical month [–]; null where no month requires one. */
  required: { factor: number; month: MonthName } | null;
  heat: JunctionHeat | null;
  /** Changes that make it warmer. */
  alternatives: readonly { change: JunctionChange; temperatureFactor: number }[];
}

/** Unfavourable values for dimensions not stated: more timber than usual, a hardwood frame, flush with the outside. */
const UNFAVOURABLE = { posts: "solid", rim: 0.09, plates: 2, trimmers: 3, conductivity: 0.18, setBack: 0 } as const;

/**
 * A junction's ψ and temperature factor, the factor required, and the effect of changes.
 *
 * @param junction - as stated in the file
 * @param buildUps - the build-ups it names, the wall first
 * @param heats - their heat figures
 * @param site - outdoor air and rooms
 * @returns figures, or why there are none
 * Source: ISO 10211:2017 for the heat, ISO 13788:2012 clause 5 for the requirement (from memory).
 */
export function junctionCheck(
  junction: Junction,
  buildUps: readonly BuildUp[],
  heats: readonly HeatCalculation[],
  site: Site,
): JunctionCheck {
  const beyond = whyNot(buildUps);
  const distinct = [...new Set(buildUps)];
  if (beyond !== null)
    return { junction, buildUps: distinct, beyond, assumed: [], required: null, heat: null, alternatives: [] };
  const { settled, assumed } = settle(junction, heats.map(sideOf));
  const { draw, level, upright } = drawnJunction(settled);
  const heat = junctionHeat(draw, level, upright);
  const alternatives = changesOf(settled)
    .map(({ change, changed }) => {
      const drawn = drawnJunction(changed);
      return { change, ...coldestOfJunction(drawn.draw, drawn.level, drawn.upright) };
    })
    .filter(({ temperatureFactor }) => temperatureFactor > heat.temperatureFactor)
    .map(({ change, temperatureFactor }) => ({ change, temperatureFactor }));
  const required = requiredFactor(buildUps[0]!, site);
  return { junction, buildUps: distinct, beyond, assumed, required, heat, alternatives };
}

/** The slugs of the build-ups that a junction names, the wall first. */
export function partsOf(junction: Junction): readonly string[] {
  if (junction.kind === "outer corner") return junction.walls;
  if (junction.kind === "window side") return [junction.wall];
  return [junction.wall, junction.kind === "floor edge" ? junction.floor : junction.roof];
}

/** Why there is no result: ψ and its bounds hold for one room and outdoor air, without metal. */
function whyNot(buildUps: readonly BuildUp[]): JunctionCheck["beyond"] {
  if (buildUps.some(({ room }) => room !== buildUps[0]!.room)) return "other rooms";
  if (buildUps.some(({ faces }) => faces !== "outdoors")) return "not outdoors";
  const isMetal = ({ layers }: BuildUp): boolean => layers.some(({ framing }) => framing?.origin.kind === "channel");
  return buildUps.some((buildUp) => isMetal(buildUp) || metalBridging(buildUp) !== null) ? "metal" : null;
}

function requiredFactor({ room }: BuildUp, { rooms, outdoor }: Site): JunctionCheck["required"] {
  const air = rooms.get(room)!;
  return MONTH_NAMES.reduce<JunctionCheck["required"]>((most, month, index) => {
    const inside = { temperature: air.temperature[index]!, vapourPressure: air.vapourPressure[index]! };
    const factor = requiredTemperatureFactor(inside, outdoor.temperature[index]!, CRITICAL_SURFACE_HUMIDITY.mould);
    return factor !== null && factor > (most?.factor ?? -1) ? { factor, month } : most;
  }, null);
}

function settle(junction: Junction, sides: readonly Side[]): { settled: SettledJunction; assumed: AssumedMeasure[] } {
  const assumed: AssumedMeasure[] = [];
  const [wall, other] = sides as [Side, Side];
  const measure = (
    key: "rim" | "blocking" | "set back" | "conductivity" | "plates" | "trimmers",
    said: number | null,
    value: number,
  ): number => {
    if (said === null) assumed.push({ key, value });
    return said ?? value;
  };
  if (junction.kind === "outer corner") {
    const posts = junction.posts ?? UNFAVOURABLE.posts;
    if (junction.posts === null) assumed.push({ key: "posts", value: posts });
    return { settled: { kind: junction.kind, sides: [wall, other], posts }, assumed };
  }
  if (junction.kind === "window side") {
    const { width, depth, conductivity, setBack } = junction.frame;
    const settled: SettledJunction = {
      kind: junction.kind,
      sides: [wall],
      trimmers: measure("trimmers", junction.trimmers, UNFAVOURABLE.trimmers),
      width,
      depth,
      conductivity: measure("conductivity", conductivity, UNFAVOURABLE.conductivity),
      setBack: measure("set back", setBack, UNFAVOURABLE.setBack),
      reveal: 0,
    };
    return { settled, assumed };
  }
  const rim =
    junction.kind === "floor edge"
      ? measure("rim", junction.rim, UNFAVOURABLE.rim)
      : measure("blocking", junction.blocking, UNFAVOURABLE.rim);
  const plates = measure("plates", junction.plates, UNFAVOURABLE.plates);
  return { settled: { kind: junction.kind, sides: [wall, other], rim, plates }, assumed };
}

/** Insulation tried outside, as wood fibre board, and in a reveal [m]; its λ [W/(m·K)]. */
const TRIED_OUTSIDE = 0.04;
const TRIED_IN_REVEAL = 0.02;
const TRIED_CONDUCTIVITY = 0.04;

/** Thickness of a rim or blocking of one usual timber [m]. */
const ONE_TIMBER = 0.045;

/** Changes that could make a junction warmer, each on its own. */
function changesOf(settled: SettledJunction): { change: JunctionChange; changed: SettledJunction }[] {
  if (settled.kind === "window side") {
    const {
      sides: [wall],
      depth,
      setBack,
    } = settled;
    const middle = (wall.plies[wall.frame]!.thickness - depth) / 2;
    const moved: JunctionChange = { kind: "set back", measure: middle };
    const lined: JunctionChange = { kind: "insulation in the reveal", thickness: TRIED_IN_REVEAL };
    return [
      ...(middle > setBack ? [{ change: moved, changed: { ...settled, setBack: middle } }] : []),
      { change: lined, changed: { ...settled, reveal: TRIED_IN_REVEAL } },
    ];
  }
  const outside: JunctionChange = { kind: "insulation outside", thickness: TRIED_OUTSIDE };
  if (settled.kind === "outer corner") {
    const fewer = ([3, 2] as const).filter((posts) => settled.posts === "solid" || posts < settled.posts);
    const [wall, other] = settled.sides;
    return [
      ...fewer.map((posts) => ({ change: { kind: "posts" as const, posts }, changed: { ...settled, posts } })),
      { change: outside, changed: { ...settled, sides: [insulatedOutside(wall), insulatedOutside(other)] } },
    ];
  }
  const [wall, level] = settled.sides;
  const kind = settled.kind === "floor edge" ? ("rim" as const) : ("blocking" as const);
  return [
    ...(settled.rim > ONE_TIMBER
      ? [{ change: { kind, measure: ONE_TIMBER }, changed: { ...settled, rim: ONE_TIMBER } }]
      : []),
    { change: outside, changed: { ...settled, sides: [insulatedOutside(wall), level] } },
  ];
}

function insulatedOutside(side: Side): Side {
  const stuff = plainStuff("insulation outside", TRIED_CONDUCTIVITY);
  return {
    ...side,
    plies: [{ thickness: TRIED_OUTSIDE, stuff, timber: null }, ...side.plies],
    frame: side.frame + 1,
    thickness: side.thickness + TRIED_OUTSIDE,
    resistance: side.resistance + TRIED_OUTSIDE / TRIED_CONDUCTIVITY,
  };
}
