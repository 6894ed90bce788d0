/** What a row of shared/materials.csv must keep to; shared/README.md says the same in words. */
export type Row = Record<Column, string>;

type Column = (typeof columns)[number];

export const thickColumns = ["density_kg_m3", "conductivity_W_mK", "specific_heat_J_kgK", "mu_dry", "mu_wet"] as const;

const sheetAndFacingColumns = ["sd_m", "emissivity", "facing_sd_m", "facing_emissivity"] as const;

export const columns = [
  "name",
  "group",
  "kind",
  ...thickColumns,
  ...sheetAndFacingColumns,
  "spread_class",
  "source",
] as const;

export const groups = [
  ...["timber", "wood-based board", "lining", "masonry", "stone", "insulation", "membrane", "coating"],
  ...["roofing", "metal", "glass", "plastic", "ground", "flooring"],
];

export const kinds = ["wood", "board", "mineral", "metal", "plastic", "paper"];

export const spreadClasses = ["tabulated", "common", "assumed"];

/** Lowest and highest value a column may hold: wide enough for real building materials, the extremes named. */
const ranges: [Column, number, number][] = [
  ["density_kg_m3", 5, 12000], // sprayed open-cell foam 9, lead 11 300
  ["conductivity_W_mK", 0.005, 400], // evacuated boards 0.007, copper 380
  ["specific_heat_J_kgK", 100, 3000], // lead 130, polyethylene 2200
  ["mu_dry", 1, 1_000_000], // still air 1, infinite held as 1 000 000
  ["mu_wet", 1, 1_000_000],
  ["sd_m", 0.01, 1500], // an air layer 0.01, metal foil 1500
  ["emissivity", 0.03, 0.8], // polished metal 0.03; what is near 0.9 is left empty
  ["facing_sd_m", 0.01, 1500],
  ["facing_emissivity", 0.03, 0.8],
];

const ceilingOfInsulation = 0.12; // W/(m·K)
const floorOfMetal = 10; // W/(m·K), the bound from which framing counts as metal
const volumetricHeatOfWater = 4.19e6; // J/(m³·K), more than any building material

const quantity = "(?:density|conductivity|specific heat|mu|sd|emissivity|facing emissivity|facings|core|thickness)";
const standard =
  "(?:(?:ISO|EN|DIN) [0-9]+(?:-[0-9]+)?:[0-9]{4} Table [0-9]+|Approved Document L1:[0-9]{4} Appendix A) \\(from memory\\)";
const origin = new RegExp(
  `^(?:${quantity}(?: and ${quantity})* )?(?:${standard}|common practice)(?: (?:as|for) [a-z0-9. ]+)?$`,
);
const notes = [
  "infinite mu held as 1 000 000",
  "50 m of sd for each 0.15 mm",
  "core of a foil-faced board without its facings",
  "joints let far more vapour through than the tile itself",
];

/** Case and spaces do not tell two names apart. */
export function foldedName(name: string): string {
  return name.toLowerCase().replaceAll(/\s/g, "");
}

/** Everything that is wrong with a row, in words; empty when it keeps to the rules. */
export function rowFaults(row: Row): string[] {
  return [...numberFaults(row), ...shapeFaults(row), ...physicalFaults(row), ...wordFaults(row), ...sourceFaults(row)];
}

function numberFaults(row: Row): string[] {
  return ranges.flatMap(([column, least, most]) => {
    if (!row[column]) return [];
    if (!/^\d+(\.\d+)?$/.test(row[column])) return [`${column} is not a number`];
    const value = number(row, column);
    return value >= least && value <= most ? [] : [`${column} out of range`];
  });
}

function shapeFaults(row: Row): string[] {
  const filled = thickColumns.filter((column) => row[column]).length;
  const wholeMaterial = filled === thickColumns.length && !isSheet(row);
  const wholeSheet = filled === 0 && isSheet(row);
  return [
    ...(wholeMaterial || wholeSheet ? [] : ["neither a whole material nor a whole sheet"]),
    ...(Boolean(row.facing_sd_m) === Boolean(row.facing_emissivity) ? [] : ["half a facing"]),
    ...(isSheet(row) && row.facing_sd_m ? ["facings on a sheet"] : []),
  ];
}

function physicalFaults(row: Row): string[] {
  if (isSheet(row)) return [];
  const conductivity = number(row, "conductivity_W_mK");
  const volumetricHeat = number(row, "density_kg_m3") * number(row, "specific_heat_J_kgK");
  const isMetal = row.kind === "metal";
  return [
    ...(number(row, "mu_wet") <= number(row, "mu_dry") ? [] : ["mu_wet above mu_dry"]),
    ...(volumetricHeat < volumetricHeatOfWater ? [] : ["holds more heat than water"]),
    ...(isMetal && !(number(row, "mu_wet") === 1_000_000) ? ["metal with a finite mu"] : []),
    ...(isMetal === conductivity >= floorOfMetal ? [] : ["only metal conducts like metal"]),
    ...(row.group === "insulation" && !(conductivity <= ceilingOfInsulation) ? ["insulation that conducts"] : []),
  ];
}

function wordFaults(row: Row): string[] {
  const name = row.name;
  return [
    ...(/^\S+( \S+)*$/.test(name) ? [] : ["name empty or with stray spaces"]),
    ...(groups.includes(row.group) ? [] : ["unknown group"]),
    ...(kinds.includes(row.kind) ? [] : ["unknown kind"]),
    ...(spreadClasses.includes(row.spread_class) ? [] : ["unknown spread class"]),
  ];
}

/** Tabulated: every value but the specific heat and the emissivity stands in a table. The other two lean on practice. */
function sourceFaults(row: Row): string[] {
  const parts = row.source.split("; ");
  const origins = parts.filter((part) => !notes.includes(part));
  const leansOnPractice = origins.some(
    (part) => part.includes("common practice") && !/^(specific heat|emissivity) common practice/.test(part),
  );
  return [
    ...(origins.length > 0 && origins.every((part) => origin.test(part)) ? [] : ["source not well formed"]),
    ...(row.spread_class === "tabulated" && leansOnPractice ? ["called tabulated"] : []),
    ...(row.spread_class === "assumed" && !leansOnPractice ? ["called assumed"] : []),
  ];
}

function isSheet(row: Row): boolean {
  return Boolean(row.sd_m);
}

function number(row: Row, column: Column): number {
  return Number(row[column]);
}
