import { readFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import { describe, expect, test } from "vitest";
import {
  columns,
  foldedName,
  groups,
  kinds,
  type Row,
  rowFaults,
  spreadClasses,
  thickColumns,
} from "./material-row-rules.ts";

const text = readFileSync(join(import.meta.dirname, "../../shared/materials.csv"), "utf8");
const [header = [], ...lines]: string[][] = parse(text);
const rows = lines.map((line) => Object.fromEntries(columns.map((column, at) => [column, line[at]])) as Row);
const row = (name: string): Row => {
  const found = rows.find((each) => each.name === name);
  if (!found) throw new Error(`no row ${name}`);
  return found;
};

describe("the material table as a whole", () => {
  test("has the columns that its README describes, in that order", () => {
    expect(header).toEqual([...columns]);
  });

  test("has at least 120 rows, and every group, kind and spread class is used", () => {
    expect(rows.length).toBeGreaterThanOrEqual(120);
    expect([...new Set(rows.map((each) => each.group))].sort()).toEqual([...groups].sort());
    expect([...new Set(rows.map((each) => each.kind))].sort()).toEqual([...kinds].sort());
    expect([...new Set(rows.map((each) => each.spread_class))].sort()).toEqual([...spreadClasses].sort());
  });

  test("names nothing twice, whatever the case and spaces", () => {
    const names = rows.map((each) => foldedName(each.name));
    expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([]);
  });

  test("keeps the rows of a group together", () => {
    const runs = rows.map((each) => each.group).filter((group, at, all) => group !== all[at - 1]);
    expect(runs.length).toBe(new Set(runs).size);
  });
});

describe("every row", () => {
  test("is a whole material or a whole sheet, in range, with a well-formed source", () => {
    expect(rows.flatMap((each) => rowFaults(each).map((fault) => `${each.name}: ${fault}`))).toEqual([]);
  });
});

describe("the row rules refuse", () => {
  const wool = row("mineral wool slab");
  const sheet = row("breather membrane");
  const faced = row("foil-faced PIR board");
  test.each<[string, Row, string]>([
    ["a conductivity given in mW", { ...wool, conductivity_W_mK: "35000" }, "conductivity_W_mK out of range"],
    ["a decimal comma", { ...wool, conductivity_W_mK: "0,035" }, "conductivity_W_mK is not a number"],
    ["a density in g/cm3", { ...wool, density_kg_m3: "0.03" }, "density_kg_m3 out of range"],
    ["a specific heat in kJ", { ...wool, specific_heat_J_kgK: "1.03" }, "specific_heat_J_kgK out of range"],
    ["a material more open than still air", { ...wool, mu_wet: "0.9" }, "mu_wet out of range"],
    ["a wet value above the dry one", { ...wool, mu_wet: "2" }, "mu_wet above mu_dry"],
    ["a material with an sd as well", { ...wool, sd_m: "2" }, "neither a whole material nor a whole sheet"],
    ["a material without density", { ...wool, density_kg_m3: "" }, "neither a whole material nor a whole sheet"],
    ["a sheet without sd", { ...sheet, sd_m: "" }, "neither a whole material nor a whole sheet"],
    [
      "a sheet with a conductivity",
      { ...sheet, conductivity_W_mK: "0.3" },
      "neither a whole material nor a whole sheet",
    ],
    ["an emissivity of 0.9 written out", { ...sheet, emissivity: "0.9" }, "emissivity out of range"],
    ["a facing without its emissivity", { ...faced, facing_emissivity: "" }, "half a facing"],
    ["facings on a sheet", { ...sheet, facing_sd_m: "1500", facing_emissivity: "0.05" }, "facings on a sheet"],
    ["an unknown kind", { ...wool, kind: "glass" }, "unknown kind"],
    ["an unknown group", { ...wool, group: "wool" }, "unknown group"],
    ["an unknown spread class", { ...wool, spread_class: "wide" }, "unknown spread class"],
    ["metal that lets vapour through", { ...row("steel"), mu_dry: "50", mu_wet: "50" }, "metal with a finite mu"],
    ["more heat by volume than water", { ...row("steel"), specific_heat_J_kgK: "550" }, "holds more heat than water"],
    ["stone called metal", { ...row("granite"), kind: "metal" }, "only metal conducts like metal"],
    ["a name with a space too many", { ...wool, name: "mineral  wool" }, "name empty or with stray spaces"],
    ["an insulation that conducts", { ...wool, conductivity_W_mK: "0.2" }, "insulation that conducts"],
    ["a source without an edition", { ...wool, source: "ISO 10456 Table 4 (from memory)" }, "source not well formed"],
    ["a source that claims to be read", { ...wool, source: "ISO 10456:2007 Table 4" }, "source not well formed"],
    ["an empty source", { ...wool, source: "" }, "source not well formed"],
    ["a source that is only a note", { ...wool, source: "infinite mu held as 1 000 000" }, "source not well formed"],
    ["common practice called tabulated", { ...wool, spread_class: "tabulated" }, "called tabulated"],
    ["a table value called assumed", { ...row("oriented strand board"), spread_class: "assumed" }, "called assumed"],
  ])("%s", (_what, spoiled, fault) => {
    expect(rowFaults(spoiled)).toContain(fault);
  });
});

/** Density, conductivity, specific heat, μ dry, μ wet. Source: ISO 10456:2007 Table 3 (from memory); equal as printed. */
test.each<[string, number, number, number, number, number]>([
  ["softwood timber light", 450, 0.12, 1600, 50, 20],
  ["softwood timber", 500, 0.13, 1600, 50, 20],
  ["hardwood timber", 700, 0.18, 1600, 200, 50],
  ["plywood", 500, 0.13, 1600, 200, 70],
  ["oriented strand board", 650, 0.13, 1700, 50, 30],
  ["particleboard", 600, 0.14, 1700, 50, 15],
  ["cement-bonded particleboard", 1200, 0.23, 1500, 50, 30],
  ["gypsum plasterboard", 700, 0.21, 1000, 10, 4],
  ["gypsum plasterboard dense", 900, 0.25, 1000, 10, 4],
  ["gypsum 1200", 1200, 0.43, 1000, 10, 4],
  ["gypsum insulating plaster", 600, 0.18, 1000, 10, 6],
  ["cement and sand render", 1800, 1.0, 1000, 10, 6],
  ["concrete 2400", 2400, 2.0, 1000, 130, 80],
  ["limestone hard", 2200, 1.7, 1000, 200, 150],
  ["slate", 2400, 2.2, 1000, 1000, 800],
  ["bitumen sheet", 1100, 0.23, 1000, 50000, 50000],
  ["copper", 8900, 380, 380, 1000000, 1000000],
  ["lead", 11300, 35, 130, 1000000, 1000000],
  ["zinc", 7200, 110, 380, 1000000, 1000000],
  ["linoleum", 1200, 0.17, 1400, 1000, 800],
  ["carpet", 200, 0.06, 1300, 5, 5],
  ["cork floor tiles", 450, 0.065, 1500, 40, 20],
])("ISO 10456:2007 Table 3 (from memory): %s", (name, ...printed) => {
  expect(thickValues(row(name))).toEqual(printed);
});

/** μ dry, μ wet. Source: ISO 10456:2007 Table 4 (from memory); equal as printed. */
test.each<[string, number, number]>([
  ["expanded polystyrene", 60, 60],
  ["extruded polystyrene", 150, 150],
  ["mineral wool slab", 1, 1],
  ["phenolic foam unfaced", 50, 50],
  ["perlite board", 5, 5],
  ["vermiculite loose", 3, 2],
  ["cellulose blown", 2, 2],
  ["facing brick", 16, 10],
  ["aerated block 600", 10, 6],
  ["dense block", 150, 120],
  ["mortar protected", 20, 10],
])("ISO 10456:2007 Table 4 (from memory): μ of %s", (name, ...printed) => {
  expect(thickValues(row(name)).slice(3)).toEqual(printed);
});

/** sd [m]. Source: ISO 10456:2007 Table 5 (from memory); equal as printed. */
test.each<[string, number]>([
  ["polyethylene sheet 0.15 mm", 50],
  ["polyethylene sheet 0.25 mm", 100],
  ["polyethylene sheet 0.15 mm stapled", 8],
  ["aluminium foil facing 0.05 mm", 1500],
  ["bituminous paper 0.1 mm", 2],
  ["breather membrane", 0.2],
  ["gloss paint", 3],
])("ISO 10456:2007 Table 5 (from memory): sd of %s", (name, printed) => {
  expect(Number(row(name).sd_m)).toBe(printed);
});

/** Density and conductivity. Source: Approved Document L1, 2002 edition, Appendix A (from memory); equal as printed. */
test.each<[string, number, number]>([
  ["facing brick", 1700, 0.77],
  ["inner leaf brick", 1700, 0.56],
  ["aerated block 600", 600, 0.18],
  ["mortar protected", 1750, 0.88],
  ["mortar exposed", 1750, 0.94],
])("Approved Document L1:2002 (from memory): %s", (name, ...printed) => {
  expect(thickValues(row(name)).slice(0, 2)).toEqual(printed);
});

/** 1000 gauge is 250 µm (common practice); 50 m of sd for each 0.15 mm; the row is rounded to 0.1 m, so within 0.05 m. */
test.each([500, 1000, 1200])("polythene of %i gauge takes 50 m of sd for each 0.15 mm", (gauge) => {
  const thicknessMillimetres = (gauge / 1000) * 0.25;
  const sd = (thicknessMillimetres / 0.15) * 50;
  expect(Math.abs(Number(row(`polythene sheet ${gauge} gauge`).sd_m) - sd)).toBeLessThanOrEqual(0.05);
});

test("a foil-faced board has the facing of the foil row, and its core has none", () => {
  const foil = row("aluminium foil facing 0.05 mm");
  const faced = row("foil-faced PIR board");
  const core = row("PIR core");
  expect(faced.facing_sd_m).toBe(foil.sd_m);
  expect(faced.facing_emissivity).toBe(foil.emissivity);
  expect(thickValues(faced)).toEqual(thickValues(core));
  expect(core.facing_sd_m).toBe("");
});

function thickValues(material: Row): number[] {
  return thickColumns.map((column) => Number(material[column]));
}
