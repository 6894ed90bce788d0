import type { BuildUpCalculation, SectionCalculation } from "../../calculate-build-up.ts";
import { MONTH_NAMES } from "../../constants.ts";
import type { BuildUp, TrappedWater } from "../../project/types.ts";
import type { TrappedWaterData } from "../../result/types.ts";
import type { Slice } from "../../vapour/section-slices.ts";
import { type DryingRun, followTrappedWater } from "../../year/trapped-water.ts";
import { nodeAt, placeOf, slicesTouching } from "../section-nodes/places.ts";
import { type WhatIfSection, whatIfSection } from "../section-nodes/what-if-section.ts";
import { cutInTheMiddle } from "./cut-in-the-middle.ts";
import { dryingVariants } from "./drying-variants.ts";
import { liesAlong, trappedAmount } from "./trapped-amount.ts";

/** Least sd on each side for clause 7 to apply [m]. Source: ISO 13788:2012 clause 7 (from memory). */
export const TIGHT_SIDE = 10;

/**
 * Trapped water: follows each stated amount or reading until the build-up is dry again.
 *
 * @param calculation - the build-up's figures
 * @param vapourLayer - indices of the vapour layer's layers
 * @returns one result for each stated amount in a counted layer, for the section that dries slowest
 * Source: ISO 13788:2012 clause 7 (from memory), for a layer between two tight ones; other uses are this project's.
 */
export function trappedWater(calculation: BuildUpCalculation, vapourLayer: readonly number[]): TrappedWaterData[] {
  const { buildUp } = calculation;
  return buildUp.trappedWater.flatMap((stated) => {
    const runs = calculation.sections.flatMap((section) => runInSection(stated, section, calculation));
    const [first, ...others] = runs;
    if (first === undefined) return [];
    const slowest = others.reduce((slow, run) => (bySpeed(days(run), days(slow)) > 0 ? run : slow), first);
    return [resultOf(stated, slowest, calculation, vapourLayer)];
  });
}

interface WetSection {
  section: SectionCalculation;
  wet: WhatIfSection;
  node: number;
  amount: number;
  run: DryingRun;
}

function runInSection(
  stated: TrappedWater,
  section: SectionCalculation,
  calculation: BuildUpCalculation,
): WetSection[] {
  const { buildUp } = calculation;
  if (!liesAlong(stated, buildUp.layers[stated.layer]!, section.path)) return [];
  const amount = trappedAmount(stated, buildUp);
  const started = startIn(section.slices, stated, amount, calculation);
  return started === null ? [] : [{ section, amount, ...started }];
}

/** Places the water in the middle of its layer along these slices and follows it. */
function startIn(
  slices: readonly Slice[],
  stated: TrappedWater,
  amount: number,
  calculation: BuildUpCalculation,
): { wet: WhatIfSection; node: number; run: DryingRun } | null {
  const cut = cutInTheMiddle(slices, stated.layer);
  if (cut === null) return null;
  const wet = whatIfSection(calculation, cut.slices);
  const node = nodeAt(wet.line, cut.sd);
  if (node === 0 || node === wet.line.count - 1) return null;
  return { wet, node, run: followTrappedWater(wet, node, amount, stated.startMonth) };
}

function resultOf(
  stated: TrappedWater,
  { section, wet, node, amount, run }: WetSection,
  calculation: BuildUpCalculation,
  vapourLayer: readonly number[],
): TrappedWaterData {
  const { buildUp } = calculation;
  // A change that puts the water at a surface leaves nothing to follow and is not offered.
  const variants = dryingVariants(section.slices, stated.layer, vapourLayer, buildUp).flatMap(({ by, slices }) => {
    const started = startIn(slices, stated, amount, calculation);
    return started === null ? [] : [{ by, daysToDry: started.run.daysToDry }];
  });
  const place = run.nodeElsewhere === null ? null : placeOf(slicesTouching(wet.slices, wet.faces, run.nodeElsewhere));
  const inLayer = run.held.map((held) => heldInLayer(held, wet, stated.layer, node));
  return {
    layer: stated.layer,
    sectionId: section.id,
    amount,
    startMonth: MONTH_NAMES[stated.startMonth]!,
    daysToDry: run.daysToDry,
    mostHeldElsewhere: run.mostHeldElsewhere,
    place,
    toRoom: run.toRoom,
    toFarSide: run.toFarSide,
    withinScope: liesBetweenTightSides(section.slices, stated.layer),
    held: inLayer,
    heldElsewhere: run.held.map(
      (held, index) => held.reduce((sum, amountHeld) => sum + amountHeld, 0) - inLayer[index]!,
    ),
    variants: variants.sort((a, b) => bySpeed(a.daysToDry, b.daysToDry)),
  };
}

/** Water at the nodes inside a layer, without its faces [kg/m²]; always includes the node where water was placed. */
function heldInLayer(held: Float64Array, wet: WhatIfSection, layer: number, node: number): number {
  return held.reduce((sum, amount, index) => {
    const { inner, outer } = slicesTouching(wet.slices, wet.faces, index);
    const inside = index === node || (inner?.layer === layer && outer?.layer === layer);
    return inside ? sum + amount : sum;
  }, 0);
}

function liesBetweenTightSides(slices: readonly Slice[], layer: number): boolean {
  const sum = (counts: (slice: Slice) => boolean): number =>
    slices.filter(counts).reduce((total, { sd }) => total + sd, 0);
  return sum((slice) => slice.layer < layer) >= TIGHT_SIDE && sum((slice) => slice.layer > layer) >= TIGHT_SIDE;
}

function days({ run }: WetSection): number | null {
  return run.daysToDry;
}

/** Fewest days first; not dry within ten years last. */
function bySpeed(a: number | null, b: number | null): number {
  if (a === null || b === null) return Number(a === null) - Number(b === null);
  return a - b;
}

/** Whether stated water lies in a layer that is not counted: at or outside a well-ventilated layer. */
export function liesOutsideCountedLayers(stated: TrappedWater, buildUp: BuildUp): boolean {
  const end = buildUp.layers.findIndex((layer) => layer.type === "air" && layer.ventilation === "well");
  return end !== -1 && stated.layer >= end;
}
