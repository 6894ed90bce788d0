import type { ProjectResult } from "@warmside/core";
import { renderReport } from "@warmside/report";
import { describe, expect, test } from "vitest";
import { escapeText, jsonInHtml, styleString } from "../../packages/report/src/escape.ts";
import { twoWalls } from "./fixture.ts";

const HOSTILE = [
  '</script><script>alert("x")</script>',
  "</style><style>body{display:none}",
  "\"'><img src=x onerror=alert(1)>",
  "<!-- --> ]]> &amp; &#60;b&#62;",
  "left\u202eright\u2066\u200f",
  '"; } @import "http://example.invalid/x"; /*',
  "\\3c script\\3e ",
  "tab\tline\nnul\u0000end\u2028\ud800",
  "x".repeat(10_000),
];

/** A result in which every text that a project file can set is the given one. */
function everywhere(text: string): ProjectResult {
  const result = twoWalls();
  const query = { question: text, to: text, site: text, preparedBy: text, date: text, drawings: [text] };
  const rooms = result.rooms.map((room) => ({ ...room, temperatureRule: text, humidityRule: text, source: text }));
  const buildUps = result.buildUps.map((buildUp) => ({
    ...buildUp,
    name: text,
    layers: buildUp.layers.map((layer) => ({ ...layer, name: text, source: text })),
    framings: buildUp.framings.map((framing) => ({ ...framing, name: text, material: text })),
    findings: buildUp.findings.map((finding) => ({ ...finding, message: text, advice: text })),
    wood: buildUp.wood.map((wood) => ({ ...wood, name: text })),
    heat: buildUp.heat && {
      ...buildUp.heat,
      lowerLimitLayers: buildUp.heat.lowerLimitLayers.map((layer) => ({ ...layer, name: text })),
    },
    moisture: buildUp.moisture && {
      ...buildUp.moisture,
      sections: buildUp.moisture.sections.map((section) => ({
        ...section,
        layers: section.layers.map((layer) => ({ ...layer, name: text, material: text })),
      })),
    },
  }));
  const climate = { ...result.climate, name: text, origin: [text] };
  const oddities = [{ code: "odd", path: text, message: text, accepted: false }];
  return { ...result, project: text, reference: text, query, rooms, climate, buildUps, oddities };
}

describe("texts of a project file stay texts", () => {
  test.each(HOSTILE.map((text) => [text.slice(0, 40), text]))("%j", async (_, text) => {
    const tags = (page: string): string[] => [...page.matchAll(/<(\/?[a-z][a-z0-9]*)/g)].map(([, name]) => name!);
    const kinds = new Set(tags(await renderReport(everywhere("plain"))));
    const page = await renderReport(everywhere(text));
    expect(page.match(/<script/g)).toHaveLength(1);
    expect(page.match(/<\/script/g)).toHaveLength(1);
    expect(page.match(/<\/style/g)).toHaveLength(1);
    expect(new Set(tags(page))).toEqual(kinds);
    expect(page.replace(/"[^"]*"/g, "").match(/<[^>]*\son\w+=|<img/g)).toBeNull();
    expect(page.match(/.{0,40}[\u202a-\u202e\u2066-\u2069\u200f]/)?.[0]).toBeUndefined();
    expect(page.includes("\u0000")).toBe(false);
    const style = /<style>([\s\S]*?)<\/style>/.exec(page)![1]!;
    expect(style.match(/@import "|<\/?style/)).toBeNull();
    expect(style.match(/\{/g)!.length).toBe(style.match(/\}/g)!.length);
    const data = JSON.parse(/id="result">([\s\S]*?)<\/script>/.exec(page)![1]!);
    expect(data.project).toBe(text);
    expect(data.buildUps[0].layers[0].source).toBe(text);
  });

  test("every sign that HTML acts on is written as its entity", () => {
    expect(escapeText("&<>\"'")).toBe("&amp;&lt;&gt;&quot;&#39;");
  });

  test("a mark that turns the direction of writing is shown by its code", () => {
    expect(escapeText("a\u202eb")).toBe("a[U+202E]b");
  });

  test("JSON in the page reads back the same and ends no element", () => {
    const data = { text: "</script>\u2028<!--\u202e&" };
    expect(jsonInHtml(data)).not.toMatch(/[<>&\u2028\u202e]/);
    expect(JSON.parse(jsonInHtml(data))).toEqual(data);
  });

  test("a string of the style sheet holds no quote, backslash or bracket of its own", () => {
    expect(styleString('a"</style>\\')).toBe('"a\\22 \\3c \\2f style\\3e \\5c "');
  });
});
