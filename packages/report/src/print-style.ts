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
  const margins = `@page{size:A4;margin:19mm 15mm 16mm 18mm;
@top-left{content:${project};${MARGIN_TEXT}}
@top-right{content:${reference};${MARGIN_TEXT}}
@bottom-left{content:"Moisture and heat, ISO 13788:2012";${MARGIN_TEXT}}
@bottom-right{content:"Page " counter(page) " of " counter(pages);${MARGIN_TEXT}}}`;
  const named = result.buildUps.map(({ name }, index) => {
    const head = styleString(`${index + 1} ${shorten(name, LONGEST_HEAD)}`);
    return `@page build-up-${index + 1}{@top-right{content:${head};${MARGIN_TEXT}}}\n.page-${index + 1}{page:build-up-${index + 1}}`;
  });
  return [
    margins,
    ...named,
    '@page closing{@top-right{content:"Site checklist and signature"}}',
    `@media print{${PRINT}}`,
  ].join("\n");
}

const LONGEST_HEAD = 48;
/** A table of more rows may break between them, its head repeated. */
const ROWS_THAT_STAY_TOGETHER = 14;
const MARGIN_TEXT = "font:8pt Arial,'Liberation Sans',sans-serif;color:#4f585c";

/** Greatest height of a drawing of a build-up on paper [cm]: its lettering then keeps 6 pt. */
const DRAWING_HEIGHT = 7.4;

/** A4 leaves room for two columns of a small type: most parts stand side by side, long tables break between rows. */
const PRINT = `
html{font-size:8.2pt}
body{background:#fff;orphans:3;widows:3;line-height:1.32}
a{color:inherit;text-decoration:none}
.skip,.parts,.screen-only{display:none}
p{margin:.3rem 0 .45rem;max-width:none}
ul,ol{max-width:none;margin:.3rem 0 .5rem}
li{margin:.1rem 0}
.contents{display:block;position:static;width:auto;height:auto;max-width:none;padding:0;margin-top:1rem;columns:3;break-inside:avoid}
.contents h2{column-span:all}
.contents .aside{display:inline}
main{max-width:none;margin:0;padding:0}
main>section{margin-top:1rem;padding-top:.5rem}
.build-up,#method,#checklist{break-before:page}
main>.build-up,main>#method,main>#checklist{margin-top:0}
#checklist,#signature{page:closing}
h1{margin-bottom:.6rem;font-size:2.2rem}
h2{font-size:1.5rem}
h3{margin:.95rem 0 .3rem}
h4{margin:.7rem 0 .2rem}
h2,h3,h4,caption,summary{break-after:avoid;break-inside:avoid}
p,.by-hand,.contents li,.part>ul>li,.origin li,#method>ul>li,#left-out>ul>li,#cautions>ul>li,#sources>ul>li,.five .conditions>li,figure,.scroll,tr,.room,.answer,.banner,.finding,.steps li,.key li,.checks li,.by-line{break-inside:avoid}
.scroll:has(tbody>tr:nth-child(${ROWS_THAT_STAY_TOGETHER + 1})){break-inside:auto}
thead{display:table-header-group}
.scroll{overflow:visible;margin:.5rem 0}
caption span,.covers{max-width:none}
caption{padding-bottom:.2rem}
table{font-size:7pt;width:100%;line-height:1.18}
th,td{padding:.065rem .3rem}
tbody>tr:first-child>*{padding-top:.22rem}
.scroll:has(tbody>tr:nth-child(${ROWS_THAT_STAY_TOGETHER + 1})) table{font-size:6.6pt;line-height:1.12}
tbody>tr:nth-child(-n+3){break-after:avoid}
tbody>tr:nth-last-child(-n+3){break-before:avoid}
table.long tbody th{min-width:0}
table.sentences tbody th{min-width:4.2cm}
.particulars,.facts{margin:0 0 .5rem}
.particulars>div,.facts>div{padding:.1rem 0;grid-template-columns:minmax(6rem,9rem) 1fr}
.five{margin-top:.7rem}
.five>div{padding:.45rem 0;grid-template-columns:5.2rem 1fr}
.answers ol{gap:.3rem}
.answer{padding:.35rem .7rem .25rem}
.banner{margin:.4rem 0 .6rem;padding:.55rem .9rem}
.banner .facts{margin:.3rem 0 0;display:grid;grid-template-columns:1fr 1fr;gap:0 1.4rem}
figure{margin:.4rem 0;max-width:12.5cm;margin-left:0}
figure svg.drawing{max-height:${DRAWING_HEIGHT}cm}
.pair,.beside{gap:0 1.2rem;margin:0 0 .2rem}
.pair{grid-template-columns:1fr 1fr}
.pair figure{max-width:100%}
.pair:has(>figure.small){grid-template-columns:7cm 1fr}
p:has(+.pair),p:has(+.scroll),.room>h3+p,.part>h3+p{break-after:avoid}
.beside,.months{display:grid;grid-template-columns:8.2cm 1fr;gap:0 1.2rem}
.beside .key .aside{display:inline}
.key{margin-top:.4rem}
.key li{margin:.15rem 0}
.findings{display:block;columns:2;column-gap:1.4rem}
.finding{margin:0 0 .55rem}
.part>ul,.origin ul,#method>ul,#left-out>ul,#cautions>ul,#sources>ul,.five .conditions{columns:2;column-gap:1.8rem}
.checks ul{columns:2;column-gap:1.8rem}
#method,#left-out,#cautions,#sources{font-size:.95em}
.checks h3{margin:.6rem 0 .1rem}
.checks li{padding:.2rem 0 .2rem 1.7rem}
.box{top:.3rem}
.by-line{margin:1.3rem 0}
.by-hand{padding:.2rem .8rem .3rem;margin:.6rem 0;box-decoration-break:clone;-webkit-box-decoration-break:clone}
.by-hand h4{margin-top:.3rem}
details::details-content{content-visibility:visible;display:block;block-size:auto}
summary{list-style:none;color:inherit;font-weight:700}
@supports not selector(details::details-content){details:not([open]){display:none}}
.answer,.banner,.by-hand,tr.marked>*{print-color-adjust:exact;-webkit-print-color-adjust:exact}
svg{print-color-adjust:exact;-webkit-print-color-adjust:exact}`;
