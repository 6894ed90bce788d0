import type { ProjectResult } from "@warmside/core";
import { darkDrawingRules, judgementColours } from "./palette.ts";
import { printRules } from "./print-style.ts";

/**
 * The page's style sheet: screen, telephone, dark theme and print.
 *
 * @param result - the project's result, for the running heads in print
 * @param study - title of the study that the document is about; null for an assessment
 * @param own - rules of the caller's own, which stand last and so win
 * @returns the rules as one text
 * @throws RangeError when the caller's rules would end the style element
 */
export function styleSheet(result: ProjectResult, study: string | null, own = ""): string {
  if (/<\//.test(own)) throw new RangeError("rules of one's own must not hold </, which would end the style sheet");
  const dark = `@media screen and (prefers-color-scheme:dark){:root{${DARK}}${darkDrawingRules()}}`;
  return [
    `:root{${LIGHT}}`,
    TEXT,
    LAYOUT,
    DECISION,
    SHEET,
    TABLES,
    FIGURES,
    LISTS,
    TELEPHONE,
    ALONE,
    dark,
    printRules(result, study),
    own,
  ]
    .join("\n")
    .replace(/\n\s*/g, "\n")
    .trimEnd();
}

const LIGHT = `color-scheme:light;--ink:#1c2326;--soft:#4f585c;--paper:#fffefb;--tint:#f4f2ec;--rule:#c9c6bd;--link:#005c91;
${judgementColours("light")};--sound-tint:#e6f3ee;--conditions-tint:#fbf1dc;--change-tint:#fbe8dd;--beyond-tint:#ecebf3;--ground:var(--paper);--shade:rgb(28 35 38/.34)`;

const DARK = `color-scheme:dark;--ink:#eceae4;--soft:#b3babb;--paper:#171c1e;--tint:#22292c;--rule:#454d51;--link:#7cc4ee;
${judgementColours("dark")};--sound-tint:#17312a;--conditions-tint:#362a14;--change-tint:#3a2317;--beyond-tint:#27263a;--ground:var(--paper);--shade:rgb(0 0 0/.75)`;

/** A serif to read, a sans for figures, lists of facts and captions. */
const TEXT = `
*{box-sizing:border-box}
html{font-size:106.25%;-webkit-text-size-adjust:100%;scroll-padding-top:1rem}
body{margin:0;background:var(--paper);color:var(--ink);font-family:Charter,"Bitstream Charter","Iowan Old Style",Georgia,Gelasio,"Liberation Serif",serif;line-height:1.45;overflow-wrap:anywhere}
h1,h2,h3,h4,h5{line-height:1.2;text-wrap:balance;font-weight:700}
h1{font-size:2rem;margin:.1rem 0 .7rem;letter-spacing:-.012em}
h2{font-size:1.45rem;margin:0 0 .4rem;letter-spacing:-.008em}
h3{font-size:1.12rem;margin:1.4rem 0 .4rem}
h4{font-size:1.02rem;margin:1.6rem 0 .4rem}
h5{font-size:.95rem;margin:1.1rem 0 .3rem}
p{margin:.45rem 0 .6rem;max-width:44rem}
a{color:var(--link);text-underline-offset:.15em}
a:focus-visible,summary:focus-visible,.scroll:focus-visible{outline:3px solid var(--link);outline-offset:2px}
em.verdict{font-style:italic;font-weight:700;white-space:nowrap}
code{font-size:.88em}
.aside,.unit,.remark,figcaption,.kicker,.strip,.contents ul,.marks,.lines,.plot-title,.mark,caption{font-family:Arial,"Liberation Sans",Helvetica,sans-serif}
.aside,.unit,.remark,figcaption,.kicker{color:var(--soft);font-size:.85rem}
.kicker{margin:0 0 .3rem}
.hidden{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
.skip{position:absolute;left:-100rem;background:var(--paper);padding:.5rem 1rem}
.skip:focus{left:.5rem;top:.5rem;z-index:2}`;

const LAYOUT = `
main{max-width:56rem;margin:0 auto;padding:2rem 1.25rem 4rem}
main>section,main>details,.after-decision{margin-top:3.2rem;padding-top:1.2rem;border-top:3px solid var(--ink)}
.strip{margin:1.4rem 0 0;font-size:.85rem;display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,19rem),1fr));gap:0 1.6rem}
.strip>div{display:grid;grid-template-columns:6.6rem 1fr;gap:.6rem;padding:.16rem 0;border-bottom:1px solid var(--rule)}
.strip dt,.lines dt{color:var(--soft)}
dd{margin:0}
.contents{margin:1.4rem 0 0;font-size:.9rem}
.contents ul{list-style:none;margin:0;padding:0;columns:2 18rem;column-gap:2rem;max-width:none}
.contents li{padding:.14rem 0;margin:0;break-inside:avoid}
.page-number{display:none}
.columns{columns:2 18rem;column-gap:2rem;max-width:none}
summary{cursor:pointer}
summary h2{display:inline}
.running{display:none}
@media (min-width:70rem){.contents{font-size:.85rem}}`;

const DECISION = `
.question{font-style:italic;margin:0 0 .3rem}
.verdict-line{font-size:1.25rem;line-height:1.35;padding:.5rem .9rem;margin:.3rem 0 1rem;max-width:none;background:var(--tone);border-left:6px solid var(--mark)}
.rows{list-style:none;margin:0;padding:0;max-width:none}
.row{display:grid;grid-template-columns:4.6rem 1fr;gap:0 1rem;padding:.6rem .7rem .5rem .8rem;margin:0 0 .4rem;background:var(--tone);border-left:6px solid var(--mark)}
.row p{margin:.1rem 0;max-width:none}
.row .name{font-weight:700}
.row .name .aside{font-weight:400;color:inherit}
.thumbnail{width:100%;height:3.4rem;border:1px solid var(--rule);background:var(--paper)}
.marks{list-style:none;display:flex;flex-wrap:wrap;gap:.1rem 1.1rem;margin:.15rem 0;padding:0;font-size:.85rem;max-width:none}
.marks li,.mark{display:inline-flex;gap:.3rem;align-items:center;margin:0}
.sign{width:1.05em;height:1.05em;flex:none;fill:var(--ink);vertical-align:-.12em}
.sign .ring{fill:none;stroke:var(--ink);stroke-width:2.4}
.sign .cut{fill:none;stroke:var(--paper);stroke-width:2.2;stroke-linecap:round;stroke-linejoin:round}
.sign.sound{fill:var(--sound)}.sign.sound .ring{stroke:var(--sound)}
.sign.conditional,.sign.caution{fill:var(--conditions)}.sign.conditional .ring{stroke:var(--conditions)}
.sign.change,.sign.fault{fill:var(--change)}
.sign.beyond,.sign.note{fill:var(--beyond)}.sign.beyond .ring,.sign.note .ring{stroke:var(--beyond)}
.sound{--mark:var(--sound);--tone:var(--sound-tint)}
.conditional{--mark:var(--conditions);--tone:var(--conditions-tint)}
.change{--mark:var(--change);--tone:var(--change-tint)}
.beyond{--mark:var(--beyond);--tone:var(--beyond-tint)}
.study-answers{padding-left:0;list-style:none;max-width:none}
main>section.study-part{margin-top:1.6rem;border-top:0;padding-top:0}`;

const SHEET = `
.sheet>.front>h2{border-left:6px solid var(--mark);padding-left:.6rem}
.section-and-heat{display:grid;grid-template-columns:minmax(0,23rem) minmax(0,1fr);gap:0 1.6rem;align-items:start}
.section-and-heat.lying{grid-template-columns:minmax(0,27rem) minmax(0,1fr)}
.lines{margin:.8rem 0;font-size:.88rem}
.lines>div{padding:.22rem 0;border-bottom:1px solid var(--rule)}
.months{display:grid;grid-template-columns:minmax(0,25rem) minmax(0,1fr);gap:0 1.6rem;align-items:start}
.months.wet{grid-template-columns:minmax(0,32rem) minmax(0,1fr)}
.statement{padding-top:1.6rem}
.statement p{margin:.25rem 0 .5rem}
.beyond-words{background:var(--beyond-tint);padding:.6rem .9rem}
.by-hand{--ground:var(--tint);background:var(--ground);padding:.2rem 1rem .6rem;margin:1rem 0}
.steps{font-variant-numeric:tabular-nums lining-nums;font-size:.92rem}
.pair{display:block}`;

/**
 * A table wider than the page slides sideways in its frame. A shade lies at the edge that hides something: four
 * backgrounds, of which the two that cover the shades move with the table.
 */
const TABLES = `
.scroll{overflow-x:auto;margin:.9rem 0;position:relative}
table{border-collapse:collapse;font-family:Arial,"Liberation Sans",Helvetica,sans-serif;font-size:.85rem;line-height:1.3;overflow-wrap:normal}
caption{text-align:left;font-weight:700;font-size:.9rem;padding:0 0 .3rem;caption-side:top}
caption span{display:block;max-width:calc(100vw - 2.6rem);position:sticky;left:0}
th,td{padding:.22rem .5rem;vertical-align:top;border-bottom:1px solid var(--rule)}
th:first-child,td:first-child{padding-left:0}
thead th{vertical-align:bottom;border-bottom:1.5px solid var(--ink);font-weight:700}
tbody th,tfoot th{font-weight:400;text-align:left}
tfoot th,tfoot td{border-top:1.5px solid var(--ink);border-bottom:0;font-weight:700}
td,thead th{text-align:right;font-variant-numeric:tabular-nums lining-nums;white-space:nowrap}
thead th{white-space:normal}
.w,thead th:first-child{text-align:left;white-space:normal}
.unit{display:block;font-weight:400;white-space:nowrap}
.remark{display:block}
.number{display:inline-block;min-width:1.1em;font-weight:700}
tr.marked>*{background:var(--tint);font-weight:700}
.glance td{text-align:center;background:var(--tone)}
.glance th.w{text-align:center}
.bar{display:block;margin-top:.25em}
@media screen{.scroll{background:linear-gradient(to right,var(--ground) 35%,transparent) left/2.2rem 100% no-repeat local,linear-gradient(to left,var(--ground) 35%,transparent) right/2.2rem 100% no-repeat local,linear-gradient(to right,var(--shade),transparent) left 1px top 1px/.8rem calc(100% - 2px) no-repeat scroll,linear-gradient(to left,var(--shade),transparent) right 1px top 1px/.8rem calc(100% - 2px) no-repeat scroll}}`;

const FIGURES = `
figure{margin:.8rem 0;max-width:26rem}
figure.wide{max-width:38rem}
figure svg{display:block;width:100%;height:auto}
figure svg.sign,figure svg.mark-shape{display:inline-block;width:1em;height:1em;vertical-align:-.12em}
figcaption{margin-top:.25rem;line-height:1.35}
.plot-title{margin:.3rem 0 .2rem;font-size:.95rem}
.mark-key>span{display:inline-block;margin-right:1.1em}`;

const LISTS = `
ul,ol{padding-left:1.2rem;max-width:46rem}
li{margin:.15rem 0}
.findings,.boxes,.checks ul{list-style:none;padding:0}
.findings>li{display:grid;grid-template-columns:1.2rem 1fr;gap:.4rem;margin:.35rem 0}
.findings .sign{margin-top:.2em}
.boxes>li,.checks li{padding:.12rem 0 .12rem 1.6rem;position:relative}
.box{position:absolute;left:0;top:.35rem;width:.9rem;height:.9rem;border:1.5px solid var(--ink)}
.checks li{border-bottom:1px solid var(--rule)}
.by-line{margin:1.4rem 0;display:flex;flex-wrap:wrap;gap:1rem 2rem;max-width:none}
.line{display:inline-block;width:13rem;border-bottom:1px solid var(--ink);height:1em}
.line.short{width:7rem}`;

const TELEPHONE = `
@media screen and (max-width:40rem){
html{font-size:100%}
main{padding:1rem .9rem 3rem}
h1{font-size:1.5rem;margin-bottom:.4rem}
main>section,main>details,.after-decision{margin-top:2rem}
.verdict-line{font-size:1.1rem;padding:.4rem .6rem}
.row{grid-template-columns:1fr;padding:.5rem .6rem}
.row .thumbnail{display:none}
.section-and-heat,.section-and-heat.lying,.months,.months.wet{display:block}
.statement{padding-top:0}
.strip>div{grid-template-columns:6.2rem 1fr;gap:.5rem}
td.phrase{min-width:8rem}
td.prose{min-width:14rem}
table.long tbody th{min-width:8.5rem}
table.sentences tbody th{min-width:10rem}
.scroll{scrollbar-width:thin}
}`;

/** The checklist can be shown, and printed, alone: its link is a place in the page, no script is needed. */
const ALONE = `
.from-alone{display:none}
main:has(#checklist-alone:target)>:not(#checklist){display:none}
main:has(#checklist-alone:target) .to-alone{display:none}
main:has(#checklist-alone:target) .from-alone{display:inline}
main:has(#checklist-alone:target)>#checklist{border-top:0;margin-top:0}`;
