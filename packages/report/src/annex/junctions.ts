import type { JunctionResult, ProjectResult } from "@warmside/core";
import { planeDrawing } from "../drawing/plane-drawing.ts";
import { figure } from "../figure.ts";
import { type Html, html } from "../html.ts";
import { fixed } from "../numbers.ts";
import { figuresUnder, tableMarkup, wordsUnder } from "../table.ts";
import { wordColumn } from "../terms/terms.ts";

/**
 * Where build-ups meet: every junction with its picture, and all of them in one table.
 *
 * @param result - the project's result
 * @returns the section; null without junctions
 */
export async function junctionsAnnex({ junctions }: ProjectResult): Promise<Html | null> {
  if (junctions.length === 0) return null;
  const each = await Promise.all(junctions.map((junction, index) => one(junction, `junction-${index + 1}`)));
  return html`<section class="annex-of page" id="annex-junctions"><h3>Junctions</h3>${table(junctions)}${each}</section>`;
}

function table(junctions: readonly JunctionResult[]): Html {
  return tableMarkup({
    caption: "Junctions, worked out in the plane",
    columns: [
      wordsUnder("Junction"),
      wordColumn("temperature factor", null),
      figuresUnder("required"),
      wordsUnder("against mould"),
      figuresUnder("ψ, outer dimensions", "W/(m·K)"),
    ],
    rows: junctions.map(({ name, kind, figures }) => [
      `${name}, ${kind}`,
      figures === null ? "–" : fixed(figures.temperatureFactor, 3),
      figures === null || figures.required === null ? "–" : fixed(figures.required.factor, 3),
      figures === null ? "not worked out" : MEETS[String(figures.meetsMould) as keyof typeof MEETS],
      figures === null ? "–" : fixed(figures.linearTransmittance, 3),
    ]),
  });
}

const MEETS = { true: "meets it", false: "too low", null: "not asked" } as const;

async function one({ name, kind, short, message, advice, figures }: JunctionResult, id: string): Promise<Html> {
  const text = html`<p>${message}${advice === null ? null : html` <strong>${advice}</strong>`}</p>`;
  if (figures === null) return html`<section><h4>${name}</h4>${text}</section>`;
  const month = figures.required?.month ?? "January";
  const words = {
    title: `${name}, ${kind}`,
    description: `A section through the ${kind}: isotherms in ${month}, the coldest place of the surface ringed.`,
    inside: "Room",
    outside: "Outdoors",
    strip: null,
    coldest: `coldest here:\nfactor ${fixed(figures.temperatureFactor, 2)}`,
  };
  const caption = `To scale. Lines: temperature in ${month} with Rsi 0.25, °C. The ring marks the coldest place of the surface.`;
  return html`<section><h4>${name}</h4>${await figure(short, planeDrawing(figures.picture, words, id), caption)}${text}</section>`;
}
