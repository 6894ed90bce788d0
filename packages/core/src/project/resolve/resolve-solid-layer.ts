import type { ProblemPath } from "../../problems/types.ts";
import { plainDigits } from "../../quantities/format-quantity.ts";
import { leastThickness, thicknessMeant } from "../least-thickness.ts";
import type { ReadingContext } from "../reading-context.ts";
import type { WrittenLayer } from "../schema/schema-layer.ts";
import type { Fasteners, LayerGaps, Material, SolidLayer, Taping } from "../types.ts";
import { resolveMaterial } from "./resolve-material.ts";
import {
  inThickness,
  isPolythene,
  type MaterialInThickness,
  sheetOfPolythene,
  THICKNESS_OF_GAUGE,
} from "./special-sheets.ts";

/**
 * Makes a layer of a material, or a sheet.
 *
 * @param written - its keys, of the right shape
 * @param path - where it stands
 * @param context - tables and problems
 * @returns the layer without framing, or null after adding a problem
 */
export function resolveSolidLayer(
  written: WrittenLayer,
  path: ProblemPath,
  context: ReadingContext,
): SolidLayer | null {
  const material = resolveMaterial(written.material!, [...path, "material"], context, written.thickness?.value ?? null);
  if (material === null) return null;
  const kind = kindOfLayer(material, written, path, context);
  if (kind === null || !insulationKeysFit(written, kind, path, context)) return null;
  return {
    type: kind.type,
    name: written.name ?? kind.material.name,
    material: kind.material,
    thickness: kind.thickness,
    framing: null,
    fit: written.fit ?? "continuous",
    fasteners: fastenersOf(written.fasteners),
    gaps: gapsOf(written.gaps),
    purpose: written.purpose ?? null,
    bonded: written.bonded ?? false,
    gapBesideFraming: written["gap beside framing"]?.value ?? null,
    taped: tapingOf(written.taped),
    emissivityInner: written["facing emissivity inner"]?.value ?? kind.material.emissivity,
    emissivityOuter: written["facing emissivity outer"]?.value ?? kind.material.emissivity,
    facingInner: written["facing sd inner"]?.value ?? kind.material.facingInner ?? 0,
    facingOuter: written["facing sd outer"]?.value ?? kind.material.facingOuter ?? 0,
  };
}

/** Decides whether a layer is a sheet or a material in a thickness; thin polythene is a sheet. */
function kindOfLayer(
  material: Material,
  written: WrittenLayer,
  path: ProblemPath,
  context: ReadingContext,
): MaterialInThickness | null {
  const { collector, file } = context;
  const thickness = written.thickness?.value;
  const inGauge = /gauge/.test(file.source.writtenAt([...path, "thickness"]) ?? "");
  if (material.conductivity === null) {
    if (thickness === undefined) return { type: "sheet", material, thickness: 0 };
    collector.add("sheet-with-thickness", [...path, "thickness"], {
      name: material.name,
      isPolythene: isPolythene(material) ? "yes" : "no",
      write: isPolythene(material) ? shippedPolythene(thickness, context) : null,
    });
    return null;
  }
  if (thickness === undefined) {
    collector.addAtKey("thickness-missing", [...path, "thickness"], { name: material.name });
    return null;
  }
  if (inGauge && !isPolythene(material)) {
    collector.add("gauge-not-polythene", [...path, "thickness"], {
      name: material.name,
      write: `${plainDigits(thickness * 1000)} mm`,
    });
    return null;
  }
  if (inGauge) return { type: "sheet", material: sheetOfPolythene(material, thickness), thickness: 0 };
  const least = leastThickness(material);
  if (thickness < least) {
    const meant = thicknessMeant(thickness);
    collector.add("thinner-than-made", [...path, "thickness"], {
      name: material.name,
      least: millimetres(least),
      write: meant === null ? null : millimetres(meant),
    });
    return null;
  }
  return inThickness(material, thickness);
}

function millimetres(thickness: number): string {
  return `${plainDigits(thickness * 1000)} mm`;
}

/** The table's polythene sheet of a given thickness, found by gauge or millimetres; null if there is none. */
function shippedPolythene(thickness: number, { findMaterial }: ReadingContext): string | null {
  const gauge = plainDigits(thickness / THICKNESS_OF_GAUGE);
  const names = [`polythene sheet ${gauge} gauge`, `polyethylene sheet ${plainDigits(thickness * 1000)} mm`];
  return names.find((name) => findMaterial(name).found !== null) ?? null;
}

/** Checks `fit` and `fasteners`: a sheet takes neither, and a recess must be less than the layer's thickness. */
function insulationKeysFit(
  written: WrittenLayer,
  { type, material, thickness }: MaterialInThickness,
  path: ProblemPath,
  { collector }: ReadingContext,
): boolean {
  const keys = (["fit", "fasteners"] as const).filter((key) => written[key] !== undefined);
  if (type === "sheet") {
    for (const key of keys) collector.addAtKey("key-not-for-sheet", [...path, key], { key, name: material.name });
    return keys.length === 0;
  }
  const recess = written.fasteners?.recess?.value ?? 0;
  const endsInside = recess === 0 || recess < thickness;
  if (!endsInside) {
    collector.add("recess-too-deep", [...path, "fasteners", "recess"], {
      thickness: `${plainDigits(thickness * 1000)} mm`,
    });
  }
  return endsInside;
}

function fastenersOf(written: WrittenLayer["fasteners"]): Fasteners | null {
  if (written === undefined) return null;
  return {
    perArea: written["per area"].value,
    diameter: written.diameter.value,
    conductivity: written.conductivity.value,
    recess: written.recess?.value ?? 0,
  };
}

function tapingOf(written: WrittenLayer["taped"]): Taping | null {
  if (written === undefined) return null;
  if (written === "no") return { kind: "no" };
  return written === "yes" ? { kind: "over the framing" } : { kind: "onto the framing", reach: written.value };
}

function gapsOf(written: WrittenLayer["gaps"]): LayerGaps | null {
  if (written === undefined) return null;
  if ("value" in written) return { share: written.value, laps: null };
  if (written.diameter !== undefined) {
    const holes = { diameter: written.diameter.value, perArea: written["per area"]!.value };
    return { share: (Math.PI / 4) * holes.diameter ** 2 * holes.perArea, laps: null, holes };
  }
  const laps = { width: written.width!.value, spacing: written.spacing!.value };
  return { share: laps.width / laps.spacing, laps };
}
