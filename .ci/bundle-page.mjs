/** Bundles the live page into one file: script and style inside, each named by its hash in the page's own policy. */
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { build, transform } from "esbuild";

/**
 * The live page as one text, and the files that went into it.
 *
 * @param root - folder of the repository
 * @param alike - settings that it shares with the other bundles
 * @returns the page, and paths of its inputs
 */
export async function bundlePage(root, alike) {
  const live = join(root, "packages/report/src/live");
  const made = await build({
    ...alike,
    entryPoints: [join(live, "main.tsx")],
    format: "iife",
    platform: "browser",
    target: "es2022",
    minify: true,
    legalComments: "none",
    jsx: "automatic",
    jsxImportSource: "preact",
    metafile: true,
    write: false,
    plugins: [withoutUnused, oneExpressionReader, tablesByColumn, forItsEffect],
  });
  const script = asAscii(made.outputFiles[0].text.trim().replaceAll("</script", "<\\/script"));
  const style = (await colours(live, alike)) + (await minified(join(live, "page.css")));
  const inputs = Object.keys(made.metafile.inputs);
  return { page: document(script, style), inputs };
}

/** Kinds of drawing in the plotting library that no plot here uses: maps, networks, clouds of words and others. */
const withoutUnused = {
  name: "without kinds of drawing that no plot here is",
  setup({ onResolve, onLoad }) {
    const unused = /^vega-(crossfilter|force|geo|hierarchy|label|regression|voronoi|wordcloud)$/;
    onResolve({ filter: unused }, ({ path, importer }) =>
      /[\\/]vega[\\/]build[\\/]/.test(importer) ? { path, namespace: "unused", sideEffects: false } : undefined,
    );
    onLoad({ filter: /./, namespace: "unused" }, () => ({ contents: "export {};" }));
  },
};

/** The plots' two libraries ask for two versions of one reader of expressions, which read alike: the newer serves both. */
const oneExpressionReader = {
  name: "one reader of expressions",
  setup({ onResolve, resolve, initialOptions }) {
    const report = join(initialOptions.absWorkingDir, "packages/report");
    const entry = createRequire(join(report, "package.json")).resolve("vega");
    onResolve({ filter: /^vega-expression$/ }, ({ path, kind, pluginData }) =>
      pluginData === "found" ? undefined : resolve(path, { kind, resolveDir: dirname(entry), pluginData: "found" }),
    );
  },
};

/** The tables column by column, each key and each common value once: half as long, and the same data once read. */
const tablesByColumn = {
  name: "tables by column",
  setup({ onLoad }) {
    onLoad({ filter: /[\\/]core[\\/]src[\\/]shipped-tables\.ts$/ }, async ({ path }) => {
      const { code } = await transform(readFileSync(path, "utf8"), { loader: "ts" });
      const tables = await import(`data:text/javascript;base64,${Buffer.from(code).toString("base64")}`);
      const parts = Object.entries(tables).map(([name, rows]) => `export const ${name} = ${asColumns(rows)};`);
      return { contents: `${ROWS}\n${parts.join("\n")}`, loader: "js" };
    });
  },
};

/** The only file imported for its side effects: the package declares that its files have none. */
const forItsEffect = {
  name: "a file for its effect",
  setup({ onResolve }) {
    onResolve({ filter: /[\\/]no-code-from-text\.ts$/ }, ({ path, resolveDir }) => ({
      path: join(resolveDir, path),
      sideEffects: true,
    }));
  },
};

/** One sign outside ASCII, in a pattern or a template, would make an engine keep every sign of the script in two bytes. */
function asAscii(script) {
  return script.replace(/[^\0-\x7f]/g, (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`);
}

const ROWS =
  "const rows = (keys, columns, count) => Array.from({ length: count }, (_, row) =>" +
  " Object.fromEntries(keys.map((key, at) => [key, columns[at][1] ? columns[at][0][columns[at][1][row]] : columns[at][0][row]])));";

function asColumns(rows) {
  const keys = Array.isArray(rows) ? Object.keys(rows[0]) : [];
  const isTable = keys.length > 0 && rows.every((row) => Object.keys(row).join() === keys.join());
  if (!isTable) return JSON.stringify(rows);
  const columns = keys.map((key) => asColumn(rows.map((row) => row[key])));
  return `rows(${JSON.stringify(keys)}, ${JSON.stringify(columns)}, ${rows.length})`;
}

/** A column whose values often come again: each once, and which of them stands in each row. */
function asColumn(values) {
  const texts = values.map((value) => JSON.stringify(value));
  const different = [...new Set(texts)];
  if (different.length * 2 > texts.length) return [values];
  return [different.map((text) => JSON.parse(text)), texts.map((text) => different.indexOf(text))];
}

async function colours(live, alike) {
  const made = await build({ ...alike, entryPoints: [join(live, "colours.ts")], format: "esm", write: false });
  const source = `data:text/javascript,${encodeURIComponent(made.outputFiles[0].text)}`;
  return (await import(source)).colourRules();
}

async function minified(file) {
  return (await transform(readFileSync(file, "utf8"), { loader: "css", minify: true })).code.trim();
}

function document(script, style) {
  const policy = [
    "default-src 'none'",
    `script-src ${hashOf(script)}`,
    `style-src ${hashOf(style)}`,
    "worker-src blob:",
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
  return `<!doctype html>
<html lang="en-GB">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<meta name="generator" content="warmside">
<title>warmside: the wall as it is built</title>
<style>${style}</style>
</head>
<body>
<div id="page"></div>
<noscript>This page works everything out in your browser and needs scripts for it. On a telephone, open it in a browser, not in the preview of the list of files.</noscript>
<script type="application/json" id="given-project">null</script>
<script>${script}</script>
</body>
</html>
`;
}

function hashOf(text) {
  return `'sha256-${createHash("sha256").update(text).digest("base64")}'`;
}
