/**
 * Makes a fresh clone ready, and does nothing where nothing changed: installs the packages of the lock file,
 * writes the tables that the core package carries, and bundles the command.
 * `--build` also compiles both packages as they are published, and writes the documents of their public names.
 */
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { fileURLToPath } from "node:url";

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const stamps = join(root, "node_modules", ".warmside");

const filesBelow = (folder) =>
  readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(root, join(entry.parentPath, entry.name)).replaceAll("\\", "/"))
    .sort();

const hashOf = (files) => {
  const hash = createHash("sha256");
  for (const file of files)
    hash
      .update(file)
      .update("\0")
      .update(readFileSync(join(root, file)))
      .update("\0");
  return hash.digest("hex");
};

const onWindows = process.platform === "win32";

const run = (command, args, advice = "") => {
  const done = spawnSync(command, args, { cwd: root, stdio: ["ignore", "ignore", "inherit"], shell: onWindows });
  if (done.status !== 0) {
    process.stderr.write(
      `Could not set up: "${command} ${args.join(" ")}" ended with ${done.status ?? done.error?.message}.${advice}\n`,
    );
    process.exit(1);
  }
};

const NEEDS_NETWORK =
  "\nThe package registry could not be reached, and not all packages are on this machine. The first start needs a " +
  "network; later ones do not.";

/**
 * Asks the registry once whether pnpm there is the one whose hash is pinned. It has half a minute to answer; npm itself
 * may be slow to start on a busy machine.
 */
const isOfRegistry = (pnpm, pinned) => {
  const args = ["view", pnpm, "dist.integrity", "--fetch-retries=0", "--fetch-timeout=30000"];
  const done = spawnSync("npm", args, { cwd: root, encoding: "utf8", timeout: 90_000, shell: onWindows });
  const told = done.status === 0 ? /sha512-(\S+)/.exec(done.stdout)?.[1] : undefined;
  if (told === undefined) return false;
  if (Buffer.from(told, "base64").toString("hex") === pinned) return true;
  process.stderr.write(`Could not set up: ${pnpm} of the registry is not the one whose hash package.json pins.\n`);
  process.exit(1);
};

/** Runs the step unless its inputs are unchanged since it last ran and its output exists. */
const step = async (name, inputs, output, work) => {
  const stamp = join(stamps, name);
  const now = hashOf(inputs);
  if (existsSync(join(root, output)) && existsSync(stamp) && readFileSync(stamp, "utf8") === now) return;
  await work();
  mkdirSync(stamps, { recursive: true });
  writeFileSync(stamp, now);
};

const writeWhole = (file, text) => {
  const path = join(root, file);
  if (existsSync(path) && readFileSync(path, "utf8") === text) return;
  writeFileSync(`${path}.new-${process.pid}`, text);
  renameSync(`${path}.new-${process.pid}`, path);
};

const manifests = ["package.json", ".ci/package.json", "packages/core/package.json", "packages/report/package.json"];
await step("packages", [...manifests, "pnpm-lock.yaml", "pnpm-workspace.yaml"], "node_modules/vitest", () => {
  process.stderr.write("Installing the packages of the lock file …\n");
  const [pnpm, pinned] = JSON.parse(readFileSync(join(root, "package.json"), "utf8")).packageManager.split("+sha512.");
  const network = isOfRegistry(pnpm, pinned);
  run(
    "npx",
    [
      "--yes",
      ...(network ? [] : ["--offline"]),
      pnpm,
      "install",
      "--frozen-lockfile",
      network ? "--prefer-offline" : "--offline",
    ],
    network ? "" : NEEDS_NETWORK,
  );
});

const climateFiles = filesBelow("climate").filter((file) => file.endsWith(".csv"));
const tables = "packages/core/src/shipped-tables.ts";
const readers = filesBelow("packages/core/src").filter((file) =>
  /\/src\/(tables|materials|climate|quantities)\//.test(file),
);
await step(
  "tables",
  ["shared/materials.csv", "shared/everyday-names.csv", ...climateFiles, ...readers, ".ci/shipped-tables.mjs"],
  tables,
  async () => {
    const { shippedTables } = await import("./shipped-tables.mjs");
    writeWhole(tables, await shippedTables(root, climateFiles));
  },
);

const towns = "packages/report/src/cli/climate/shipped-towns.ts";
await step("towns", ["package.json", "pnpm-lock.yaml", ".ci/shipped-towns.mjs"], towns, async () => {
  const { shippedTowns } = await import("./shipped-towns.mjs");
  writeWhole(towns, shippedTowns());
});

// With the two that were just written: a list made before would be another one at the next start.
const sources = [...filesBelow("packages/core/src"), ...filesBelow("packages/report/src")];
await step(
  "bundle",
  [...sources, ...manifests, "pnpm-lock.yaml", ".ci/bundle.mjs", ".ci/bundle-page.mjs", ".ci/licences.mjs"],
  "packages/report/bundle/warmside.mjs",
  () => run(process.execPath, [join(root, ".ci", "bundle.mjs")]),
);

if (process.argv.includes("--build")) {
  const packages = ["packages/core", "packages/report"];
  // The compiler knows whether its inputs have changed, not whether somebody has cleared away what it made.
  const isMade = packages.every((folder) => existsSync(join(root, folder, "dist/index.js")));
  run(process.execPath, [
    join(root, "node_modules/typescript/bin/tsc"),
    "-b",
    ...(isMade ? [] : ["--force"]),
    packages[1],
  ]);
  for (const folder of packages) removeStale(folder);
  await step(
    "documents",
    [...sources, ...manifests, "pnpm-lock.yaml", ".ci/api-documents.mjs"],
    ".build/core-documents.json",
    () => run(process.execPath, [join(root, ".ci", "api-documents.mjs")]),
  );
}

/** Removes from a package's dist what no source produces any more, so that it is not published. */
function removeStale(folder) {
  for (const file of filesBelow(`${folder}/dist`)) {
    const source = file.replace("/dist/", "/src/").replace(/(\.d)?\.ts$|\.js$/, ".ts");
    if (!existsSync(join(root, source))) rmSync(join(root, file));
  }
}
