import { USUAL_EMISSIVITY } from "../constants.ts";
import { checkMaterial } from "../given/build-up.ts";
import { findInTables, materialTable } from "../materials/material-table.ts";
import { ProblemsError } from "../problems/problems-error.ts";
import type { Material, MaterialKind } from "../project/types.ts";
import { requireText } from "../require.ts";
import { SHIPPED_MATERIALS } from "../shipped-tables.ts";
import { checked } from "./given-or-thrown.ts";

/** Values of a material with a thickness, or of a sheet. */
export type MaterialValues = {
  name: string;
  kind?: MaterialKind;
  /** [kg/m³] */
  density?: number;
  /** [–] (default 0.9) */
  emissivity?: number;
  source?: string;
} & (
  | {
      /** λ [W/(m·K)] */
      conductivity: number;
      /** μ [–], dry */
      vapourResistanceFactor: number;
      /** μ [–], wet (default the dry one) */
      vapourResistanceFactorWet?: number;
      /** sd of the facing on each face [m] */
      facing?: number;
    }
  | {
      /** [m] */
      sd: number;
    }
);

/**
 * A material: one from the shipped table by name, or one of your own by its values.
 *
 * @param values - a name in the table, in any case and spacing; or values in SI, each within the range of METHOD.md
 * @returns the material
 * @throws ProblemsError with every problem, in the words of the project file's reader
 * @example material("softwood timber").conductivity // 0.13
 */
export function material(values: string | MaterialValues): Material {
  return typeof values === "string" ? materialNamed(values) : checked(materialOf(values), checkMaterial, values.name);
}

function materialNamed(name: string): Material {
  requireText(name, "material");
  TABLE ??= materialTable(SHIPPED_MATERIALS);
  const answer = findInTables(name, [TABLE]);
  if (answer.found !== null) return answer.found;
  const { near, alike, question } = answer;
  const details = { name, near, alike, question, air: null, thickness: null, isSheet: "no" };
  throw new ProblemsError([{ code: "material-unknown", path: [], position: null, received: name, details }]);
}

/** Made on first use. */
let TABLE: ReturnType<typeof materialTable> | null = null;

function materialOf(values: MaterialValues): Material {
  const isSheet = "sd" in values;
  const facing = isSheet ? null : (values.facing ?? null);
  const dry = isSheet ? null : values.vapourResistanceFactor;
  return {
    name: values.name,
    group: null,
    kind: values.kind ?? null,
    density: values.density ?? null,
    conductivity: isSheet ? null : values.conductivity,
    specificHeat: null,
    vapourResistanceFactorDry: dry,
    vapourResistanceFactorWet: isSheet ? null : (values.vapourResistanceFactorWet ?? dry),
    equivalentAirLayerThickness: isSheet ? values.sd : null,
    equivalentAirLayerThicknessByHumidity: null,
    emissivity: values.emissivity ?? USUAL_EMISSIVITY,
    facingInner: facing,
    facingOuter: facing,
    source: values.source ?? "given by the program",
    basis: "declared",
    spread: null,
  };
}
