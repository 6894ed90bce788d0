import type { EverydayName, Material } from "@warmside/core";
import { type CommandResult, done, refused } from "./command-result.ts";
import { groups, type Line, line, paragraph } from "./lines.ts";
import { type FoundMaterial, searchMaterials, wordsIn } from "./materials/search-materials.ts";
import type { Registration } from "./registration.ts";

/** `warmside materials [WORDS]`: searches the table of materials. */
export const registerMaterials: Registration = (program, run) => {
  program
    .command("materials")
    .argument(
      "[words...]",
      "words of the name, group or kind, or their beginnings, or what it is also called; without any, all names are listed",
    )
    .summary("search the table of materials")
    .description(
      "Searches the table of materials and prints properties with their sources. The names are what a project file writes.",
    )
    .addHelpText("after", "\nExample:\n  warmside materials mineral wool\n")
    .action((words: string[]) => run(() => materials(words)));
};

async function materials(words: readonly string[]): Promise<CommandResult> {
  const { SHIPPED_MATERIALS: table } = await import("@warmside/core");
  const wanted = wordsIn(words.join(" "));
  if (wanted.length === 0) return done(namesByGroup(table));
  const found = await searchMaterials(wanted, table);
  const { everydayName } = await import("@warmside/core");
  const everyday = everydayName(words.join(" "));
  if (found.length === 0 && everyday === null) return refused(await nothingFound(words.join(" "), table));
  const meanings = everyday === null ? [] : meaningsInWords(words.join(" "), everyday);
  return done(groups(...meanings, ...found.map(materialInWords), [line(countInWords(found.length))]));
}

/** An everyday name with several meanings, or one that needs a further question. */
function meaningsInWords(asked: string, { materials, question }: EverydayName): Line[][] {
  const several = materials.length > 1 ? `"${asked}" can mean several things: ${materials.join(", ")}.` : "";
  const sentence = [several, question ?? ""].filter((part) => part !== "").join(" ");
  return sentence === "" ? [] : [[paragraph(sentence)]];
}

/** Nothing was found: near names, and how to give a material of one's own. */
async function nothingFound(asked: string, table: readonly Material[]): Promise<Line[]> {
  const { nearNames, SHIPPED_EVERYDAY_NAMES } = await import("@warmside/core");
  const names = table.map(({ name }) => name);
  const near = nearNames(
    asked,
    new Set([...names, ...SHIPPED_EVERYDAY_NAMES.map(({ name }) => name), ...names.flatMap(wordsIn)]),
  );
  const offer = near.length === 0 ? "" : ` Did you mean ${near.join(" or ")}?`;
  const sentence =
    `No material of the table has "${asked}".${offer} Describe any other material in ` +
    "the project file; a board and a sheet so:";
  return [paragraph(sentence), ...ON_THE_SPOT];
}

/** Layers as the project file takes them; a line may be broken inside the braces. */
const ON_THE_SPOT = [
  line("  - { material: { name: my board, conductivity: 0.04 W/(m K),"),
  line("      vapour resistance factor: 5 }, thickness: 60 mm }"),
  line("  - { material: { name: my sheet, sd: 2 m } }"),
];

function namesByGroup(table: readonly Material[]): Line[] {
  const names = [...new Set(table.map(({ group }) => group))];
  const lists = names.map((group) => {
    const rows = table.filter((material) => material.group === group);
    return [
      line({ colour: "bold", text: group ?? "other" }),
      ...rows.map((material) => line(`  ${figuresOf(material)}`)),
    ];
  });
  const more = `${countInWords(table.length)} "warmside materials WORDS" tells density, source and other names.`;
  return groups(...lists, [line(more)]);
}

/** A name with its main values: λ and μ of a material, sd of a sheet. */
function figuresOf({ name, conductivity, vapourResistanceFactorDry, equivalentAirLayerThickness }: Material): string {
  const figures =
    equivalentAirLayerThickness === null
      ? `λ ${String(conductivity).padEnd(6)} μ ${vapourResistanceFactorDry}`
      : `sd ${equivalentAirLayerThickness} m`;
  return `${name.padEnd(NAME_WIDTH)} ${figures}`;
}

/** Characters of the longest names. */
const NAME_WIDTH = 40;

function materialInWords({ material, alsoCalled }: FoundMaterial): Line[] {
  const belongs = [material.group, material.kind].filter((word) => word !== null).join(", ");
  const also = alsoCalled === null ? "" : `, also called ${alsoCalled}`;
  return [
    line({ colour: "bold", text: material.name }, ` (${belongs})${also}`),
    paragraph(propertiesOf(material).join(", "), 2),
    paragraph(`Source: ${material.source}.`, 2),
  ];
}

function propertiesOf(material: Material): string[] {
  const {
    conductivity,
    density,
    specificHeat,
    vapourResistanceFactorDry: dry,
    vapourResistanceFactorWet: wet,
  } = material;
  const { equivalentAirLayerThickness: sd, facingInner, emissivity } = material;
  return [
    ...(sd === null ? [] : [`sheet with sd ${sd} m`]),
    ...(conductivity === null ? [] : [`λ ${conductivity} W/(m·K)`]),
    ...(density === null ? [] : [`density ${density} kg/m³`]),
    ...(specificHeat === null ? [] : [`specific heat ${specificHeat} J/(kg·K)`]),
    ...(dry === null ? [] : [wet === null || wet === dry ? `μ ${dry}` : `μ ${dry} dry and ${wet} wet`]),
    ...(facingInner === null ? [] : [`each facing with sd ${facingInner} m`]),
    ...(emissivity === USUAL_EMISSIVITY ? [] : [`emissivity ${emissivity}`]),
  ];
}

/** Of nearly every surface [–], so not worth a word. Source: ISO 6946:2017 Annex D (from memory). */
const USUAL_EMISSIVITY = 0.9;

function countInWords(count: number): string {
  return count === 1 ? "1 material." : `${count} materials.`;
}
