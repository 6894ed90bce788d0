import type { ProjectResult } from "@warmside/core";
import { darkDrawingRules, judgementColours } from "./palette.ts";
import { printRules } from "./print-style.ts";

/**
 * The page's style sheet: screen, telephone, dark theme and print.
 *
 * @param result - the project's result, for the running heads in print
 * @param own - rules of the caller's own, which stand last and so win
 * @returns the rules as one text
 * @throws RangeError when the caller's rules would end the style element
 */
export function styleSheet(result: ProjectResult, own = ""): string {
  if (/<\//.test(own)) throw new RangeError("rules of one's own must not hold </, which would end the style sheet");
  const dark = `@media screen and (prefers-color-scheme:dark){:root{${DARK}}${darkDrawingRules()}}`;
  return [
    `:root{${LIGHT}}`,
    TEXT,
    LAYOUT,
    ANSWER,
    TABLES,
    SLIDING,
    FIGURES,
    LISTS,
    ALONE,
    dark,
    printRules(result),
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

/** A scale of sizes by a minor third from 17 px; a serif to read, a sans for figures. */
const TEXT = `
*{box-sizing:border-box}
html{font-size:106.25%;-webkit-text-size-adjust:100%;scroll-padding-top:1rem}
body{margin:0;background:var(--paper);color:var(--ink);font-family:Charter,"Bitstream Charter","Iowan Old Style",Georgia,Gelasio,"Liberation Serif",serif;line-height:1.5;overflow-wrap:anywhere}
h1,h2,h3,h4{line-height:1.15;text-wrap:balance;font-weight:700}
h1{font-size:2.48rem;margin:.2rem 0 1.2rem;letter-spacing:-.015em}
h2{font-size:1.73rem;margin:0 0 .4rem;letter-spacing:-.01em}
h3{font-size:1.2rem;margin:2.4rem 0 .7rem}
h4{font-size:1rem;margin:1.6rem 0 .4rem}
p{margin:.5rem 0 .8rem;max-width:42rem}
a{color:var(--link);text-underline-offset:.15em}
a:focus-visible,summary:focus-visible,.scroll:focus-visible{outline:3px solid var(--link);outline-offset:2px}
em.verdict{font-style:italic;font-weight:700}
td em.verdict{white-space:nowrap}
code{font-size:.85em}
.aside,.source,.limit,.unit,.remark,figcaption{color:var(--soft);font-size:.83rem}
.limit{font-weight:400;font-style:normal}
.kicker{font-family:Arial,"Liberation Sans",Helvetica,sans-serif;font-size:.83rem;color:var(--soft);margin:0 0 .3rem}
.skip{position:absolute;left:-100rem;background:var(--paper);padding:.5rem 1rem}
.skip:focus{left:.5rem;top:.5rem;z-index:2}`;

const LAYOUT = `
main{max-width:53rem;margin:0 auto;padding:2.5rem 1.25rem 5rem}
main>section{margin-top:4.5rem;padding-top:1.6rem;border-top:3px solid var(--ink)}
.contents{margin:2rem 0 0;font-family:Arial,"Liberation Sans",Helvetica,sans-serif;font-size:.83rem}
.contents h2{font-size:.83rem;margin:0 0 .4rem;letter-spacing:0}
.contents ul,.parts ul{list-style:none;margin:0;padding:0}
.contents li{padding:.18rem 0;line-height:1.3}
.parts{font-family:Arial,"Liberation Sans",Helvetica,sans-serif;font-size:.83rem;margin:1.2rem 0}
.parts ul{columns:2 15rem;column-gap:2rem}
.parts li{padding:.15rem 0;break-inside:avoid}
@media (min-width:70rem){
.contents{position:fixed;top:0;left:max(0rem,calc(50vw - 38rem));width:15.5rem;height:100vh;overflow-y:auto;padding:2.6rem 1rem 2rem 1.25rem;margin:0}
main{margin-left:max(16.5rem,calc(50vw - 21rem));margin-right:1rem}
.contents .aside{display:block;font-size:.75rem}}
.pair{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,21rem),1fr));gap:0 1.6rem;margin:0 0 .6rem;align-items:start}
.beside{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,17rem),1fr));gap:0 1.8rem;align-items:start}`;

const ANSWER = `
.particulars,.facts{margin:0 0 1.2rem;font-size:.92rem}
.particulars>div,.facts>div{display:grid;grid-template-columns:minmax(7rem,11rem) 1fr;gap:0 1rem;padding:.22rem 0;border-bottom:1px solid var(--rule)}
.particulars dt,.facts dt{color:var(--soft)}
dd{margin:0}
.five{margin:1.5rem 0 0;border-top:3px solid var(--ink)}
.five>div{display:grid;grid-template-columns:6.5rem 1fr;gap:.2rem 1.2rem;padding:.85rem 0;border-bottom:1px solid var(--rule)}
.five>div>dt{font-weight:700}
.five ul{margin:0;padding-left:1.1rem}
.answers ol{list-style:none;margin:0;padding:0;display:grid;gap:.8rem}
.answer,.banner{display:grid;grid-template-columns:1.7rem 1fr;gap:.6rem;padding:.8rem 1rem .7rem;background:var(--tone);border-left:5px solid var(--mark)}
.answer p,.banner p{margin:0 0 .25rem}
.answer .name{font-weight:700;font-size:1.05rem}
.answer .figures{font-size:.88rem;color:var(--soft)}
.answer .name .aside{font-weight:400}
.answer .limit,.banner .limit,.answer .aside,.banner .aside{color:inherit}
.banner{margin:1rem 0 1.4rem;padding:1.1rem 1.2rem}
.banner .word{font-size:1.3rem}
.banner .facts{margin:.8rem 0 0}
.judgement{color:var(--mark)}
.sound{--mark:var(--sound);--tone:var(--sound-tint)}
.conditions{--mark:var(--conditions);--tone:var(--conditions-tint)}
.change{--mark:var(--change);--tone:var(--change-tint)}
.beyond{--mark:var(--beyond);--tone:var(--beyond-tint)}
.fault{--mark:var(--change)}
.caution{--mark:var(--conditions)}
.note{--mark:var(--beyond)}
.sign{width:1.45rem;height:1.45rem;fill:var(--mark);margin-top:.1rem}
.sign .ring{fill:none;stroke:var(--mark);stroke-width:2.4}
.sign .cut{fill:none;stroke:var(--paper);stroke-width:2.2;stroke-linecap:round;stroke-linejoin:round}
@media (max-width:38rem){.five>div,.particulars>div,.facts>div{grid-template-columns:1fr}.answer,.banner{padding-left:.7rem;padding-right:.7rem}h1{font-size:2.05rem}}`;

const TABLES = `
.scroll{overflow-x:auto;margin:1.1rem 0}
table{border-collapse:collapse;font-family:Arial,"Liberation Sans",Helvetica,sans-serif;font-size:.8rem;line-height:1.35;min-width:min(100%,22rem);overflow-wrap:normal}
table.long tbody th{min-width:9.5rem}
caption span{display:block;max-width:calc(100vw - 2.6rem);position:sticky;left:0}
caption{text-align:left;font-weight:700;font-size:.86rem;padding:0 0 .4rem;caption-side:top}
th,td{padding:.3rem .55rem;vertical-align:top;border-bottom:1px solid var(--rule)}
th:first-child,td:first-child{padding-left:0}
thead th{vertical-align:bottom;border-bottom:1.5px solid var(--ink);font-weight:700}
tbody th,tfoot th{font-weight:400;text-align:left}
tfoot th,tfoot td{border-top:1.5px solid var(--ink);border-bottom:0;font-weight:700}
td,thead th{text-align:right;font-variant-numeric:tabular-nums lining-nums;white-space:nowrap}
thead th{white-space:normal}
.w,thead th:first-child{text-align:left;white-space:normal}
.unit{display:block;font-weight:400;font-size:.74rem;white-space:nowrap}
.remark{display:block;font-size:.74rem}
.covers{font-family:Arial,"Liberation Sans",Helvetica,sans-serif;font-size:.74rem;line-height:1.35;margin:.35rem 0 0;color:var(--soft);position:sticky;left:0;max-width:min(42rem,calc(100vw - 2.6rem))}
.covers .limit{font-size:inherit}
.number{display:inline-block;min-width:1.3em;font-weight:700}
.basis{white-space:nowrap}
tr.marked>*{background:var(--tint);font-weight:700}`;

/**
 * A table wider than the page slides sideways in its frame. A shade lies at the edge that hides something: four
 * backgrounds, of which the two that cover the shades move with the table. Where the browser can tell, a line says it too.
 * On a telephone words keep a width that holds a few of them, so that a row does not stand as high as its longest text
 * is long.
 */
const SLIDING = `
@media screen{.scroll{container-type:scroll-state;background:linear-gradient(to right,var(--ground) 35%,transparent) left/2.2rem 100% no-repeat local,linear-gradient(to left,var(--ground) 35%,transparent) right/2.2rem 100% no-repeat local,linear-gradient(to right,var(--shade),transparent) left 1px top 1px/.8rem calc(100% - 2px) no-repeat scroll,linear-gradient(to left,var(--shade),transparent) right 1px top 1px/.8rem calc(100% - 2px) no-repeat scroll}}
@media screen and (max-width:38rem){
table.long tbody th{min-width:7.5rem}
table.sentences tbody th{min-width:9.5rem}
td.phrase{min-width:8rem}
td.prose{min-width:16rem}
.scroll{scrollbar-width:thin}
@container scroll-state(scrollable:x){caption span::after{content:"slide the table →";display:block;font-weight:400;font-size:.78rem;color:var(--soft)}}}`;

const FIGURES = `
figure{margin:1.2rem 0;max-width:33rem}
figure.small{max-width:32rem}
figure.wide{max-width:36rem}
figure svg{display:block;width:100%;height:auto}
figcaption{margin-top:.4rem;line-height:1.4}
.wet{font-weight:700}
details{margin:.8rem 0}
summary{cursor:pointer;color:var(--link)}`;

const LISTS = `
ul,ol{padding-left:1.3rem;max-width:44rem}
li{margin:.2rem 0}
.key{font-family:Arial,"Liberation Sans",Helvetica,sans-serif;font-size:.85rem;margin-top:1.8rem}
.key li{padding-left:.3rem;margin:.4rem 0}
.key li::marker{font-weight:700}
.key .aside{display:block;font-size:.75rem}
.findings{list-style:none;padding:0;display:grid;gap:.9rem}
.finding{display:grid;grid-template-columns:1.7rem 1fr;gap:.5rem}
.finding p{margin:0 0 .2rem}
.finding .sign{width:1.2rem;height:1.2rem}
.by-hand{--ground:var(--tint);background:var(--ground);padding:.2rem 1.2rem .8rem;margin:1.6rem 0}
.by-hand h4{margin-top:1rem}
.steps{font-variant-numeric:tabular-nums lining-nums;font-size:.92rem}
.checks ul{list-style:none;padding:0}
.checks li{padding:.35rem 0 .35rem 2rem;position:relative;border-bottom:1px solid var(--rule)}
.box{position:absolute;left:0;top:.5rem;width:1.05rem;height:1.05rem;border:1.5px solid var(--ink)}
.by-line{margin:2.2rem 0}
.line{display:inline-block;width:min(20rem,60%);border-bottom:1px solid var(--ink);height:1em}
.line.short{width:9rem}`;

/** The checklist can be shown, and printed, alone: its link is a place in the page, no script is needed. */
const ALONE = `
.from-alone{display:none}
body:has(#checklist-alone:target) .contents,main:has(#checklist-alone:target)>:not(#checklist){display:none}
main:has(#checklist-alone:target) .to-alone{display:none}
main:has(#checklist-alone:target) .from-alone{display:inline}
main:has(#checklist-alone:target)>#checklist{border-top:0;margin-top:0}`;
