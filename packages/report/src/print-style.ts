import type { ProjectResult } from "@warmside/core";
import { shorten, styleString } from "./escape.ts";

/**
 * Rules for A4: running heads, page numbers, every part on a page of its own, a sheet on two, nothing torn. Text is
 * 9.5 pt, and nothing is under 8 pt.
 *
 * @param result - the project's result: its name and the build-ups' stand in the running heads
 * @param study - title of the study that the document is about; null for an assessment
 * @returns the rules
 */
export function printRules(result: ProjectResult, study: string | null): string {
  const project = styleString(shorten(result.project, LONGEST_HEAD));
  const reference = styleString(shorten([result.reference, study].filter(Boolean).join(" · "), LONGEST_HEAD));
  const margins = `@page{size:A4;margin:16mm 14mm 14mm 16mm;
@top-left{content:${project};${MARGIN_TEXT}}
@top-right{content:${reference};${MARGIN_TEXT}}
@bottom-left{content:"Moisture to ISO 13788:2012, heat to ISO 6946:2017";${MARGIN_TEXT}}
@bottom-right{content:"Page " counter(page) " of " counter(pages);${MARGIN_TEXT}}}`;
  return [margins, `@page annex{@top-right{content:"Annex";${MARGIN_TEXT}}}`, `@media print{${PRINT}}`].join("\n");
}

const LONGEST_HEAD = 60;
/** Fonts of one width on every system, since pages are planned by it (`page-plan.ts`); for screens some have wider ones. */
const PRINTED = '"Times New Roman","Liberation Serif",Tinos,Times,serif';
const MARGIN_TEXT = "font:8pt Arial,'Liberation Sans',sans-serif;color:#4f585c";

const PRINT = `
html{font-size:9.5pt}
body{font-family:${PRINTED};background:#fff;orphans:3;widows:3;line-height:1.3}
a{color:inherit;text-decoration:none}
.skip,.screen-only{display:none}
.running{display:block}
main{max-width:none;margin:0;padding:0}
main>section,main>details,.after-decision{margin-top:0;padding-top:0;border-top:0}
.after-decision{margin-top:.7rem}
.page,.breaks{break-before:page}
p{margin:.25rem 0 .35rem;max-width:none}
ul,ol{max-width:none;margin:.2rem 0 .4rem}
li{margin:.08rem 0}
h1{font-size:20pt;margin:0 0 .3rem}
h2{font-size:14pt;margin:0 0 .2rem}
h3{font-size:11pt;margin:.7rem 0 .2rem}
h4{font-size:10.5pt;margin:.8rem 0 .2rem}
h5{font-size:9.5pt;margin:.6rem 0 .15rem}
h1,h2,h3,h4,h5,caption,.plot-title{break-after:avoid;break-inside:avoid}
.aside,.unit,.remark,figcaption,.kicker,.strip,.marks{font-size:8.2pt}
code{font-size:1em}
header.first{display:flex;flex-direction:column}
header.first>.kicker{order:-3}
header.first>h1{order:-2}
header.first>.strip{order:-1;margin:0 0 .5rem;grid-template-columns:1fr 1fr}
.strip>div{padding:.06rem 0}
.verdict-line{font-size:12pt;padding:.35rem .7rem;margin:.1rem 0 .5rem}
.row{padding:.35rem .6rem .25rem .7rem;margin:0 0 .25rem;grid-template-columns:22mm 1fr}
.thumbnail{height:15mm}
.contents{margin-top:.6rem;font-size:9.5pt}
.contents ul{columns:2}
.contents li{display:flex;justify-content:space-between;gap:.6rem;border-bottom:1px dotted var(--rule);padding:.05rem 0}
.page-number{display:inline;font-variant-numeric:tabular-nums}
.row,p,figure,tr,.boxes>li,.findings>li,.checks li,.steps li,.lines>div,.by-line,.verdict-line{break-inside:avoid}
.scroll{overflow:visible;margin:.4rem 0;break-inside:avoid}
.scroll:has(tbody>tr:nth-child(19)){break-inside:auto}
thead{display:table-header-group}
tbody>tr:nth-child(-n+3){break-after:avoid}
tbody>tr:nth-last-child(-n+3){break-before:avoid}
caption{font-size:9.5pt;padding-bottom:.15rem}
caption span{max-width:none}
table{font-size:8.2pt;line-height:1.2}
table:has(td.w){width:100%}
.months table{width:auto}
.front td.w{min-width:42mm}
.months{gap:0 5mm}
th,td{padding:.07rem .3rem}
table.long tbody th,td.phrase,td.prose{min-width:0}
.variants tbody th{width:36%}
.lines{font-size:8.6pt;margin:.4rem 0}
.lines>div{padding:.18rem 0}
figure{margin:.3rem 0;max-width:none}
.section-and-heat{grid-template-columns:92mm 1fr;gap:0 6mm}
.section-and-heat.lying{grid-template-columns:104mm 1fr}
figure.wide svg.plot{width:118mm}
.statement p{margin:.15rem 0}
.findings>li{margin:.15rem 0}
.columns,.lists,.halves{columns:2;column-gap:7mm}
.halves>div{break-inside:avoid}
.lists .checks{break-inside:avoid}
.lists h3{margin-top:0}
.boxes>li,.checks li{padding:.06rem 0 .06rem 1.5rem}
.box{top:.15rem;width:.8rem;height:.8rem}
.by-line{margin:.9rem 0}
.by-hand{break-inside:avoid;padding:.15rem .7rem .3rem;margin:.4rem 0;box-decoration-break:clone;-webkit-box-decoration-break:clone}
.annex:not([open]){display:none}
.annex{page:annex;break-before:page}
.annex>summary{list-style:none}
.annex-of:first-of-type{break-before:auto}
.row,.verdict-line,.by-hand,tr.marked>*,.glance td,.beyond-words{print-color-adjust:exact;-webkit-print-color-adjust:exact}
svg{print-color-adjust:exact;-webkit-print-color-adjust:exact}`;
