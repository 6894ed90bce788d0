/** What the licences of bundled packages ask for: their texts, kept beside the bundle. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/**
 * The licences of the packages whose code went into a bundle, in one text.
 *
 * @param root - folder that the paths of inputs start from
 * @param inputs - paths of the files that were bundled
 * @returns name, version, licence and its text for each package, by name
 */
export function licencesOf(root, inputs) {
  const folders = new Set(inputs.flatMap((path) => /^.*node_modules\/(@[^/]+\/)?[^/]+(?=\/)/.exec(path)?.[0] ?? []));
  const parts = [...folders].map((folder) => licenceOf(join(root, folder)));
  return `Packages whose code is in this bundle, with their licences.\n${[...new Set(parts)].sort().join("")}`;
}

function licenceOf(folder) {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
  const texts = readdirSync(folder)
    .filter((entry) => /^(licen[cs]e|copying|notice)/i.test(entry))
    .sort()
    .map((entry) => readFileSync(join(folder, entry), "utf8").trim());
  const told = texts.length > 0 ? texts : [`Licence: ${license}; the package carries no text of it.`];
  return `\n${"-".repeat(RULE)}\n${name} ${version} (${license})\n\n${told.join("\n\n")}\n`;
}

const RULE = 72;
