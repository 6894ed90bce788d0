import type { AirLayer, Framing, Material, SolidLayer } from "../project/types.ts";

/** A new sheet of a material, without framing or gaps. */
export function sheetLayer(of: Material): SolidLayer {
  return solidLayer("sheet", of, 0);
}

/** A new unbroken layer of a material; thickness [m]. */
export function boardLayer(of: Material, thickness: number): SolidLayer {
  return solidLayer("material", of, thickness);
}

/** Well-ventilated air, open at both ends; thickness [m]. */
export function ventilatedAir(thickness: number, framing: Framing | null): AirLayer {
  return {
    type: "air",
    name: `ventilated air ${Math.round(thickness * 1000)} mm`,
    thickness,
    ventilation: "well",
    ventilationArea: null,
    open: "both ends",
    resistance: null,
    emissivity: null,
    framing,
  };
}

/** Still air in place of insulation. */
export function emptiedLayer(of: SolidLayer): AirLayer {
  return {
    type: "air",
    name: `space left by ${of.name}`,
    thickness: of.thickness,
    ventilation: "none",
    ventilationArea: null,
    open: null,
    resistance: null,
    emissivity: null,
    framing: of.framing,
  };
}

function solidLayer(type: "material" | "sheet", of: Material, thickness: number): SolidLayer {
  return {
    type,
    name: of.name,
    material: of,
    thickness,
    framing: null,
    fit: "continuous",
    fasteners: null,
    gaps: null,
    purpose: null,
    bonded: false,
    gapBesideFraming: null,
    taped: null,
    emissivityInner: of.emissivity,
    emissivityOuter: of.emissivity,
    facingInner: of.facingInner ?? 0,
    facingOuter: of.facingOuter ?? 0,
  };
}
