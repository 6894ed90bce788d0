import { USUAL_EMISSIVITY } from "../constants.ts";
import { comparable } from "../problems/near-names.ts";
import { orderProblems } from "../problems/order-problems.ts";
import type { Problem, Reading } from "../problems/types.ts";
import type { Material, ValueBasis } from "../project/types.ts";
import { requireText } from "../require.ts";
import { readTable, type TableForm, type TableRow } from "../tables/read-table.ts";
import { type CellReader, cellReader } from "../tables/table-cells.ts";
import { inFile } from "../tables/table-problem.ts";

/** Columns of a material table; their names include the units. */
export const MATERIAL_COLUMNS: TableForm = {
  what: "material table",
  required: ["name", "conductivity_W_mK", "mu_dry", "sd_m"],
  optional: [
    "group", "kind", "density_kg_m3", "specific_heat_J_kgK", "mu_wet", "emissivity",
    "facing_sd_m", "facing_emissivity", "spread_class", "source",
  ],
}; // biome-ignore format: short names side by side

/**
 * Reads a table of materials. Rows with a conductivity and a μ are materials with a thickness; rows with sd are sheets.
 *
 * @param text - the table
 * @param file - its path, for messages
 * @returns the materials, or every problem at once, ordered by line
 */
export function readMaterialTable(text: string, file: string): Reading<Material[]> {
  requireText(text, "text");
  requireText(file, "file");
  const { rows, problems } = readTable(text, MATERIAL_COLUMNS);
  const firstLine = new Map<string, number>();
  const materials: Material[] = [];
  for (const row of rows) {
    const cells = cellReader(row, problems);
    const material = materialOf(row, file, cells, problems);
    const key = comparable(row.cells.name ?? "");
    const earlier = firstLine.get(key);
    if (earlier !== undefined) cells.refuse("row-twice", { earlier }, row.cells.name ?? null);
    else firstLine.set(key, row.line);
    if (material !== null) materials.push(material);
  }
  return problems.length > 0
    ? { ok: false, problems: inFile(orderProblems(problems), file) }
    : { ok: true, value: materials };
}

function materialOf(row: TableRow, file: string, cells: CellReader, problems: readonly Problem[]): Material | null {
  const before = problems.length;
  const name = cells.text("name");
  if (name === null) {
    cells.refuse("row-without-name");
    return null;
  }
  const dry = cells.quantity("mu_dry", "vapour resistance factor");
  const facingSd = cells.quantity("facing_sd_m", "sd");
  const emissivity = cells.quantity("emissivity", "emissivity");
  const spreadClass = cells.word("spread_class", ["tabulated", "common", "assumed"]);
  const material: Material = {
    name,
    group: cells.text("group"),
    kind: cells.word("kind", ["wood", "board", "mineral", "metal", "plastic", "paper"]),
    density: cells.quantity("density_kg_m3", "density"),
    conductivity: cells.quantity("conductivity_W_mK", "conductivity"),
    specificHeat: cells.quantity("specific_heat_J_kgK", "specific heat"),
    vapourResistanceFactorDry: dry,
    vapourResistanceFactorWet: cells.quantity("mu_wet", "vapour resistance factor") ?? dry,
    equivalentAirLayerThickness: cells.quantity("sd_m", "sd"),
    equivalentAirLayerThicknessByHumidity: null,
    emissivity: cells.quantity("facing_emissivity", "emissivity") ?? emissivity ?? USUAL_EMISSIVITY,
    facingInner: facingSd,
    facingOuter: facingSd,
    source: cells.text("source") ?? `the table ${file}, which names no source`,
    basis: basisOf(spreadClass, cells.text("source")),
    ...(spreadClass === null ? {} : { spreadClass }),
    spread: null,
  };
  if (problems.length === before) checkKind(row, cells);
  return problems.length > before ? null : material;
}

/** Checks that a row is either a material with a thickness or a sheet. */
function checkKind({ cells }: TableRow, reader: CellReader): void {
  const isSheet = cells.sd_m !== "";
  const thick = ["conductivity_W_mK", "mu_dry"].filter((column) => cells[column] !== "");
  if (isSheet && thick.length > 0) reader.refuse("row-mixed", { columns: thick });
  if (!isSheet && thick.length < 2) {
    const missing = ["conductivity_W_mK", "mu_dry"].filter((column) => !thick.includes(column));
    reader.refuse("row-incomplete", { missing });
  }
}

function basisOf(spreadClass: "tabulated" | "common" | "assumed" | null, source: string | null): ValueBasis {
  if (spreadClass === "tabulated") return "tabulated";
  if (spreadClass !== null) return "assumed";
  return source === null ? "assumed" : "declared";
}
