import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { runtimePackagesOf } from "./runtime-packages.ts";

/** Licences that let anybody use, change and pass on, with no duty but to keep the notice. */
const PERMISSIVE = ["0BSD", "Apache-2.0", "BSD-2-Clause", "BSD-3-Clause", "ISC", "MIT", "Unlicense"];

/** Packages that hold the machine's own build of another; which of them is installed depends on the machine. */
const MACHINE_BUILD = /^@napi-rs\/nice-/;

const installed = ["core", "report"].flatMap((name) => [
  ...runtimePackagesOf(join(import.meta.dirname, "../../packages", name)).values(),
]);

describe("licences of what runs with warmside or is bundled into it", () => {
  it("are permissive, each", () => {
    expect(installed.length).toBeGreaterThan(50);
    expect(installed.filter(({ licence }) => !PERMISSIVE.includes(licence))).toEqual([]);
  });

  it("are these", () => {
    const licences = [...new Set(installed.map(({ licence }) => licence))].sort();
    const list = licences.map((licence) => {
      const names = installed.filter((each) => each.licence === licence && !MACHINE_BUILD.test(each.name));
      return `${licence}: ${[...new Set(names.map(({ name }) => name))].sort().join(", ")}`;
    });
    expect(list).toMatchInlineSnapshot(`
      [
        "0BSD: tslib",
        "Apache-2.0: mathjs",
        "BSD-3-Clause: d3-ease, rw, vega, vega-canvas, vega-crossfilter, vega-dataflow, vega-encode, vega-event-selector, vega-expression, vega-force, vega-format, vega-functions, vega-geo, vega-hierarchy, vega-interpreter, vega-label, vega-lite, vega-loader, vega-parser, vega-projection, vega-regression, vega-runtime, vega-scale, vega-scenegraph, vega-selections, vega-statistics, vega-time, vega-transforms, vega-typings, vega-util, vega-view, vega-view-transforms, vega-voronoi, vega-wordcloud",
        "ISC: cliui, d3-array, d3-color, d3-delaunay, d3-dispatch, d3-dsv, d3-force, d3-format, d3-geo, d3-geo-projection, d3-hierarchy, d3-interpolate, d3-path, d3-quadtree, d3-scale, d3-scale-chromatic, d3-shape, d3-time, d3-time-format, d3-timer, delaunator, get-caller-file, internmap, simple-statistics, topojson-client, y18n, yaml, yargs-parser",
        "MIT: @babel/runtime, @napi-rs/nice, @types/estree, @types/geojson, ansi-regex, ansi-styles, commander, complex.js, csv-parse, decimal.js, emoji-regex, escalade, escape-latex, fraction.js, get-east-asian-width, iconv-lite, javascript-natural-sort, json-stringify-pretty-compact, piscina, preact, safer-buffer, seedrandom, string-width, strip-ansi, tiny-emitter, typed-function, wrap-ansi, yargs, zod",
        "Unlicense: robust-predicates",
      ]
    `);
  });
});
