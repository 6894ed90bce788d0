import { existsSync, readFileSync, realpathSync } from "node:fs";
import { basename, dirname, join } from "node:path";

/** A package that is needed when warmside runs, as it is installed. */
export interface RuntimePackage {
  name: string;
  version: string;
  licence: string;
}

interface Manifest {
  name: string;
  version: string;
  license?: string;
  dependencies?: Record<string, string>;
  devDependencies?: Record<string, string>;
  optionalDependencies?: Record<string, string>;
}

/**
 * Every package that runs with a workspace package or is bundled into it, with those that these need themselves.
 *
 * @param folder - the workspace package's folder
 * @returns each package once, by its folder
 */
export function runtimePackagesOf(folder: string): Map<string, RuntimePackage> {
  const found = new Map<string, RuntimePackage>();
  const take = (place: string): void => {
    if (found.has(place)) return;
    const { name, version, license, dependencies, optionalDependencies } = manifestIn(place);
    found.set(place, { name, version, licence: license ?? "none" });
    for (const needed of Object.keys({ ...dependencies, ...optionalDependencies })) {
      const next = placeOf(needed, place);
      if (next !== null) take(next);
      else if (dependencies?.[needed] !== undefined) throw new Error(`${name} needs ${needed}, which is not installed`);
    }
  };
  const { dependencies, devDependencies } = manifestIn(folder);
  for (const needed of Object.keys({ ...dependencies, ...devDependencies })) {
    if (!needed.startsWith("@warmside/")) take(realpathSync(join(folder, "node_modules", needed)));
  }
  return found;
}

function manifestIn(folder: string): Manifest {
  return JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
}

/** Where a package finds another: in its own folder of packages, or in one above. */
function placeOf(needed: string, from: string): string | null {
  for (let folder = from; folder !== dirname(folder); folder = dirname(folder)) {
    const place = join(basename(folder) === "node_modules" ? folder : join(folder, "node_modules"), needed);
    if (existsSync(place)) return realpathSync(place);
  }
  return null;
}
