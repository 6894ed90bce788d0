import type { ProblemPath } from "../../problems/types.ts";
import { usualOtherTimber } from "../other-timber.ts";
import type { ReadingContext } from "../reading-context.ts";
import type { WrittenFraming } from "../schema/schema-material.ts";
import type { Element, Framing, Material } from "../types.ts";
import { keysOf, textAt } from "../value-at.ts";
import { nameInPrint, saysAnd } from "./framings-apart.ts";
import { findMaterial, resolveMaterial } from "./resolve-material.ts";

/** A build-up's framings by name; null for a framing with problems of its own. */
export type Framings = ReadonlyMap<string, Framing | null>;

/**
 * Reads the framings that a build-up names.
 *
 * @param path - where the build-up stands
 * @param element - what the build-up is, for the share of other timber
 * @param context - data, tables and problems
 * @returns the framings, with an entry for every name
 */
export function resolveFramings(path: ProblemPath, element: Element, context: ReadingContext): Framings {
  const framings = new Map<string, Framing | null>();
  for (const name of keysOf(context.file.data, [...path, "framings"])) {
    const framingPath = [...path, "framings", name];
    const isNameable = checkName(name, framings, framingPath, context);
    const written = context.shape.at<WrittenFraming>(framingPath);
    if (written === null) checkFramingNames(framingPath, context);
    const framing = written && resolveFraming(name, written, element, framingPath, false, context);
    framings.set(name, isNameable ? framing : null);
  }
  return framings;
}

/** Paths through a build-up are named after its framings, so no two paths may get the same name. */
function checkName(name: string, earlier: Framings, path: ProblemPath, context: ReadingContext): boolean {
  const twin = [...earlier.keys()].find((other) => nameInPrint(other) === nameInPrint(name));
  if (saysAnd(name)) context.collector.addAtKey("framing-name-and", path, { name });
  else if (twin !== undefined) context.collector.addAtKey("framing-name-twice", path, { name: nameInPrint(name) });
  return !saysAnd(name) && twin === undefined;
}

/**
 * Makes one framing.
 *
 * @param name - its name
 * @param written - its values in the file
 * @param element - what the build-up is
 * @param path - where it stands
 * @param ofOneLayer - true when written inside a layer
 * @param context - tables and problems
 * @returns the framing, or null after adding a problem
 */
export function resolveFraming(
  name: string,
  written: WrittenFraming,
  element: Element,
  path: ProblemPath,
  ofOneLayer: boolean,
  context: ReadingContext,
): Framing | null {
  const material = resolveMaterial(written.material, [...path, "material"], context);
  if (material === null) return null;
  if (material.conductivity === null) {
    context.collector.add("framing-of-sheet", [...path, "material"], { name: material.name });
    return null;
  }
  if (written.channel !== undefined) return channelFraming(name, material, written, path, ofOneLayer, context);
  if (written.fraction !== undefined) {
    return { name, material, share: written.fraction.value, origin: { kind: "fraction" }, ofOneLayer };
  }
  const width = written.width!.value;
  const spacing = written.spacing!.value;
  const otherTimber = written["other timber"]?.value ?? usualOtherTimber(element);
  const share = width / spacing + otherTimber;
  if (!(share < 1)) {
    context.collector.add("framing-fills-all", path, { share: `${Math.round(share * 100)} %` });
    return null;
  }
  const otherTimberByDefault = written["other timber"] === undefined;
  return {
    name,
    material,
    share,
    origin: { kind: "width and spacing", width, spacing, otherTimber, otherTimberByDefault },
    ofOneLayer,
  };
}

/** Framing of metal channels: only the web bridges the layer in a straight path. */
function channelFraming(
  name: string,
  material: Material,
  written: WrittenFraming,
  path: ProblemPath,
  ofOneLayer: boolean,
  context: ReadingContext,
): Framing | null {
  if (material.kind !== "metal" && material.group !== "metal") {
    context.collector.add("channel-not-metal", [...path, "material"], { name: material.name });
    return null;
  }
  const { sheet, flange, lip } = written.channel!;
  const spacing = written.spacing!.value;
  const channel = { sheet: sheet.value, flange: flange.value, lip: lip?.value ?? 0 };
  return { name, material, share: sheet.value / spacing, origin: { kind: "channel", channel, spacing }, ofOneLayer };
}

/** Checks the names inside a framing that has other problems. */
export function checkFramingNames(path: ProblemPath, context: ReadingContext): void {
  const name = textAt(context.file.data, [...path, "material"]);
  if (name !== null) findMaterial(name, [...path, "material"], context);
}
