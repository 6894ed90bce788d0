import type { ProjectResult } from "@warmside/core";
import { shorten, styleString } from "./escape.ts";

/**
 * Rules for A4: running heads, page numbers, each build-up on a page of its own, nothing torn across pages.
 *
 * @param result - the project's result: its name and the build-ups' stand in the running heads
 * @returns the rules
 */
export function printRules(result: ProjectResult): string {
  const project = styleString(shorten(result.project, LONGEST_HEAD));
  const reference = result.reference ? styleString(shorten(result.reference, LONGEST_HEAD)) : '""';
  const margins = `@page{size:A4;margin:24mm 18mm 20mm 20mm;
@top-left{content:${project};${MARGIN_TEXT}}
@top-right{content:${reference};${MARGIN_TEXT}}
@bottom-left{content:"Moisture and heat, ISO 13788:2012";${MARGIN_TEXT}}
@bottom-right{content:"Page " counter(page) " of " counter(pages);${MARGIN_TEXT}}}`;
  const named = result.buildUps.map(({ name }, index) => {
    const head = styleString(`${index + 1} ${shorten(name, LONGEST_HEAD)}`);
    return `@page build-up-${index + 1}{@top-right{content:${head};${MARGIN_TEXT}}}\n.page-${index + 1}{page:build-up-${index + 1}}`;
  });
  return [margins, ...named, '@page checklist{@top-right{content:"Site checklist"}}', `@media print{${PRINT}}`].join(
    "\n",
  );
}

const LONGEST_HEAD = 48;
const MARGIN_TEXT = "font:8pt Arial,'Liberation Sans',sans-serif;color:#4f585c";

const PRINT = `
html{font-size:9.6pt}
body{background:#fff;orphans:3;widows:3;line-height:1.38}
a{color:inherit;text-decoration:none}
.skip,.parts,.screen-only,details:not([open]){display:none}
.contents{display:block;position:static;width:auto;height:auto;max-width:none;padding:0;margin-top:1.5rem;columns:2;break-inside:avoid}
.contents h2{column-span:all}
main{max-width:none;margin:0;padding:0}
main>section{margin-top:2rem}
.build-up,#method,#checklist{break-before:page}
main>.build-up,main>#method,main>#checklist{margin-top:0}
#checklist{page:checklist;break-after:page}
h2,h3,h4,caption,summary{break-after:avoid;break-inside:avoid}
figure,.scroll,tr,.answer,.banner,.by-hand,.finding,.checks li,.steps li,.by-line{break-inside:avoid}
thead{display:table-header-group}
.scroll{overflow:visible}
caption span{max-width:none}
table{font-size:7.8pt;width:100%;line-height:1.25}
th,td{padding:.16rem .4rem}
.scroll{margin:.7rem 0}
h3{margin:1.6rem 0 .5rem}
figure{margin:.8rem 0}
figure svg.drawing{max-height:9.5cm}
figure{max-width:12.5cm;margin-left:0}
.pair{grid-template-columns:1fr 1fr}
.pair figure{max-width:100%}
.beside{grid-template-columns:9.5cm 1fr}
.answer,.banner,.by-hand,tr.marked>*{print-color-adjust:exact;-webkit-print-color-adjust:exact}
.by-hand{padding:.1rem .8rem .5rem}
svg{print-color-adjust:exact;-webkit-print-color-adjust:exact}`;
