import { existsSync, readdirSync, readFileSync } from "node:fs";
import { builtinModules } from "node:module";
import { join } from "node:path";
import { assessProject, type Project, readProjectOrThrow } from "@warmside/core";
import * as calculation from "@warmside/core/calculation";
import { build } from "esbuild";
import ts from "typescript-5";
import { describe, expect, it } from "vitest";
import { expectSame } from "../expect-same.ts";
import { howMany, isLong } from "../how-many.ts";
import { browserIsHere, browserIsRequired, newWindow } from "../page/chromium.ts";
import {
  consumerOfPackages,
  installWithLinks,
  PACKAGES,
  type PackageName,
  ROOT,
  workspaceManifest,
} from "./consumer-folder.ts";
import "./api-documents.ts";
import { asProgram, blocksOf } from "./readme-blocks.ts";

const consumer = consumerOfPackages(installWithLinks);
const DEMO = join(ROOT, "shared/alder-row-pottery.yaml");
const COMMAND = "node_modules/.bin/warmside";
const MOST_BYTES = 60_000;

const ownProgram = (name: string): string => readFileSync(join(import.meta.dirname, "projects", name), "utf8");

/** Files of an installed package, its links to others left out. */
const filesOf = (name: PackageName): string[] =>
  readdirSync(consumer.installed(name), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(consumer.installed(name).length + 1)
        .replaceAll("\\", "/"),
    )
    .filter((file) => !file.startsWith("node_modules/"));

/** Packages that the code of an installed package imports, Node's own left out. */
const importedBy = (name: PackageName): string[] => {
  const specifiers = filesOf(name)
    .filter((file) => /\.(m?js|d\.ts)$/.test(file))
    .flatMap(
      (file) => ts.preProcessFile(readFileSync(join(consumer.installed(name), file), "utf8"), true, true).importedFiles,
    )
    .map(({ fileName }) => fileName)
    .filter(
      (specifier) =>
        !specifier.startsWith(".") && !specifier.startsWith("node:") && !builtinModules.includes(specifier),
    );
  const packages = specifiers.map((specifier) => /^(@[^/]+\/)?[^/]+/.exec(specifier.replace(/^#/, ""))![0]);
  return [...new Set(packages)].sort();
};

/** Optional: vega measures texts with it if present. The other is in an old loader that is never used. */
const DONE_WITHOUT = ["canvas", "exports"];

describe.each(PACKAGES)("the packed %s", (name) => {
  it("holds what is needed and nothing else", () => {
    const top = [...new Set(filesOf(name).map((file) => file.split("/")[0]!))].sort();
    const built = name === "core" ? ["dist"] : ["bundle", "dist"];
    const schema = name === "core" ? ["project.schema.json"] : [];
    const method = name === "core" ? ["METHOD.md"] : [];
    expect(top).toEqual(["LICENSE", ...method, "README.md", ...built, "docs", "package.json", ...schema].sort());
    const strange = filesOf(name).filter(
      (file) =>
        (file.startsWith("dist/") && !/\.(js|d\.ts)$/.test(file)) ||
        (file.startsWith("docs/") && !/\.md$/.test(file)) ||
        (file.startsWith("bundle/") && !/\.mjs$|^bundle\/(licences\.txt|warmside-page\.html)$/.test(file)),
    );
    expect(strange).toEqual([]);
    expect(filesOf(name).filter((file) => file.startsWith("dist/cli/"))).toEqual([]);
  });

  it("carries the licence of the project, and a README with a first line of its own", () => {
    const text = (file: string): string => readFileSync(join(consumer.installed(name), file), "utf8");
    expect(text("LICENSE")).toBe(readFileSync(join(ROOT, "LICENSE"), "utf8"));
    expect(text("README.md").split("\n")[0]).toBe(`# @warmside/${name}`);
  });

  it("tells its licence, engines and that it has no side effects; every export and command is there", () => {
    const manifest = consumer.manifest(name);
    expect(manifest).toMatchObject({ license: "Apache-2.0", sideEffects: false, engines: { node: ">=20.19" } });
    const { exports, bin = {} } = manifest;
    const targets = [...Object.values(exports), ...Object.values(bin)].flatMap((target) =>
      typeof target === "string" ? [target] : [target.types, target.default],
    );
    expect(targets.length).toBeGreaterThanOrEqual(4);
    for (const target of targets) expect(existsSync(join(consumer.installed(name), target)), target).toBe(true);
  });

  it("asks for exactly the packages that its code imports, each in one version", () => {
    const { dependencies } = consumer.manifest(name);
    const imported = importedBy(name).filter((each) => each !== `@warmside/${name}` && !DONE_WITHOUT.includes(each));
    expect(imported).toEqual(Object.keys(dependencies).sort());
    for (const version of Object.values(dependencies)) expect(version).toMatch(/^\d+\.\d+\.\d+$/);
    expect(dependencies["@warmside/core"] ?? "0").toBe(name === "report" ? workspaceManifest("core").version : "0");
  });

  it("publint has nothing to say", () => {
    expect(
      consumer.node(join(ROOT, "node_modules/publint/src/cli.js"), "run", consumer.tarball(name), "--strict"),
    ).toContain("All good!");
  });

  // A second compiler, which takes three seconds a package.
  if (isLong)
    it("its types resolve as they should in every way of importing it as ESM", () => {
      const cli = join(ROOT, "node_modules/@arethetypeswrong/cli/dist/index.js");
      // It ends with another code than 0, which throws here, where anything is wrong that the profile does not leave out.
      const told = consumer.node(cli, consumer.tarball(name), "--profile", "esm-only", "--format", "json");
      expect(JSON.parse(told).analysis.types).toEqual({ kind: "included" });
    });
});

describe("the bundle of the packed report", () => {
  it("carries the live page, and writes it with a project inside", () => {
    const built = readFileSync(join(consumer.installed("report"), "bundle/warmside-page.html"), "utf8");
    expect(built).toContain('<script type="application/json" id="given-project">null</script>');
    expect(built.length).toBeLessThan(2_000_000);
  });

  it("carries the licences of the packages whose code is bundled", () => {
    const text = readFileSync(join(consumer.installed("report"), "bundle/licences.txt"), "utf8");
    const named = [...text.matchAll(/^-{72}\n(\S+) \d+\.\d+\.\d+ \(([^)]+)\)\n\n(.*)$/gm)].map(
      ([, bundled]) => bundled,
    );
    expect(named).toEqual(expect.arrayContaining(["commander", "mathjs", "vega", "yaml", "zod", "d3-scale"]));
    expect(text.match(/Permission is hereby granted|Redistribution and use|Apache License/g)!.length).toBeGreaterThan(
      30,
    );
  });
});

describe("a strict TypeScript program", () => {
  /** The older one where there is time. */
  const COMPILERS = Object.entries({ "the workspace's own": "typescript", "5.9": "typescript-5" }).slice(
    0,
    howMany(1, 2),
  );
  const settings = (outDir: string): string =>
    JSON.stringify({
      compilerOptions: {
        target: "es2022",
        module: "nodenext",
        strict: true,
        noUncheckedIndexedAccess: true,
        skipLibCheck: false,
        lib: ["es2023", "dom"],
        types: [],
        rootDir: "src",
        outDir,
      },
      include: ["src"],
    });

  it.each(COMPILERS)("compiles with TypeScript %s, and runs", (_, compiler) => {
    const print =
      "declare const console: { log(text: string): void };\nconst print = (given: unknown[]): void => console.log(JSON.stringify(given));\n";
    for (const name of PACKAGES) consumer.write(`src/readme-${name}.ts`, print + asProgram(blocksOf(name), "print"));
    consumer.write("src/by-hand.ts", ownProgram("by-hand.ts"));
    consumer.write(`tsconfig-${compiler}.json`, settings(`out-${compiler}`));
    consumer.node(join(ROOT, "node_modules", compiler, "bin/tsc"), "-p", `tsconfig-${compiler}.json`);
    const [first] = JSON.parse(consumer.node(`out-${compiler}/readme-core.js`));
    expect(first).toBe("change it");
    expect(JSON.parse(consumer.node(`out-${compiler}/readme-report.js`))).toContain(true);
    expect(JSON.parse(consumer.node(`out-${compiler}/by-hand.js`)).verdict).toBe("stays wet");
  });
});

describe("a plain JavaScript program", () => {
  it("has climates, materials and schema, and gives the result of the workspace", () => {
    consumer.write("plain.js", ownProgram("plain.js"));
    const told = JSON.parse(consumer.node("plain.js", DEMO, "by-program.html"));
    expect(told.climates).toBe(readdirSync(join(ROOT, "climate")).filter((file) => file.endsWith(".csv")).length);
    expect(told.materials).toBeGreaterThanOrEqual(120);
    expect(told.schemaType).toBe("object");
    const expected = assessProject(readProjectOrThrow(readFileSync(DEMO, "utf8")));
    expectSame(told.result, JSON.parse(JSON.stringify(expected)));
  });
});

describe("the packed command", () => {
  it("writes the report of the workspace's command, byte for byte, and says the same", () => {
    const packed = consumer.node(COMMAND, "assess", DEMO, "--out", "packed.html");
    const workspace = consumer.node(
      join(ROOT, "packages/report/bundle/warmside.mjs"),
      "assess",
      DEMO,
      "--out",
      "workspace.html",
    );
    const report = (name: string): Buffer => readFileSync(join(consumer.folder(), name));
    expect(packed.replaceAll("packed.html", "workspace.html")).toBe(workspace);
    expect(report("packed.html").equals(report("workspace.html"))).toBe(true);
    expect(report("packed.html").length).toBeGreaterThan(100_000);
  });

  it("spreads over threads, whatever their number", () => {
    consumer.node(COMMAND, "new", "--out", "starter.yaml");
    const spread = (workers: number): string =>
      consumer.node(COMMAND, "spread", "starter.yaml", "--samples", "200", "--workers", String(workers), "--json");
    const alone = spread(1);
    expect(JSON.parse(alone).buildUps[0].spread.samples).toBe(200);
    expect(spread(2)).toBe(alone);
  });
});

describe("the calculation in a page", () => {
  /** The whole entry, bundled as a page would have it; its names stand in one object. */
  const bundled = async (program = 'export * from "@warmside/core/calculation";\n'): Promise<string> => {
    consumer.write("page.js", program);
    const made = await build({
      absWorkingDir: consumer.folder(),
      entryPoints: ["page.js"],
      bundle: true,
      minify: true,
      platform: "browser",
      format: "iife",
      globalName: "calculation",
      write: false,
    });
    return made.outputFiles[0]!.text;
  };

  it(`takes under ${MOST_BYTES} bytes, bundled and minified`, async () => {
    const size = Buffer.byteLength(await bundled());
    expect(size).toBeGreaterThan(10_000);
    expect(size).toBeLessThan(MOST_BYTES);
  });

  it("the plane takes under 40 kB more, and no package", async () => {
    const field = await bundled('export * from "@warmside/core/field";\n');
    expect(field.length).toBeGreaterThan(10_000);
    expect(field.length).toBeLessThan(40_000);
  });

  it("of the whole package only what is used comes along: no units, no readers with the judgement", async () => {
    const judging = await bundled('export { assessBuildUp } from "@warmside/core";\n');
    const reading = await bundled('export { readProject } from "@warmside/core";\n');
    // Of 195 kB the rules of findings take 35 and their words 37, the plane 26, further checks 18, units of words 16.
    expect(judging.length).toBeLessThan(210_000);
    expect(reading.length).toBeGreaterThan(2 * judging.length);
  });

  describe.skipIf(!browserIsHere && !browserIsRequired)("in Chromium (skipped where none is found)", () => {
    it("gives the figures of the workspace, to 12 digits", async () => {
      const { climate, rooms, humidityMargin, buildUps } = readProjectOrThrow(readFileSync(DEMO, "utf8"));
      const asked = {
        climate,
        rooms: [...rooms],
        humidityMargin,
        buildUps: buildUps.map((each) => ({ ...each, variants: [] })),
      };
      const page = await (await newWindow()).newPage();
      await page.addScriptTag({ content: await bundled() });
      await page.addScriptTag({ content: `const figuresOf = ${figuresOf.toString()}` });
      const inPage = await page.evaluate(`figuresOf(calculation, ${JSON.stringify(asked)})`);
      const here = figuresOf(calculation, asked);
      expect(JSON.parse(inPage as string, toTwelveDigits)).toEqual(JSON.parse(here, toTwelveDigits));
      expect(here.match(/-?\d\.\d+/g)!.length).toBeGreaterThan(1000);
      await page.context().close();
    });
  });
});

/** The question, as it is sent into a page. */
type Asked = Pick<Project, "climate" | "humidityMargin" | "buildUps"> & { rooms: [string, unknown][] };

/** All figures of a project's build-ups, as text; run here and in the page. */
function figuresOf(entry: typeof calculation, asked: Asked): string {
  const project = { ...asked, rooms: new Map(asked.rooms) as Project["rooms"] };
  const { sites } = entry.surroundingsOf(project);
  return JSON.stringify(
    project.buildUps.map((buildUp) => {
      const figures = entry.calculateBuildUp(buildUp, sites.reported);
      return { heat: figures.heat, moisture: entry.moistureResult(figures) };
    }),
  );
}

function toTwelveDigits(_: string, value: unknown): unknown {
  return typeof value === "number" ? Number(value.toPrecision(12)) : value;
}
