import type { Entry } from "./entry.ts";

/** Words of the answer: what the method says, what a careful adviser makes of it, and the figures behind both. */
export const ANSWER_WORDS: readonly Entry[] = [
  {
    word: "verdict",
    also: ["verdicts"],
    unit: null,
    says: [
      "What the monthly method says about water inside a build-up: dry, dries out or stays wet. It knows vapour that moves through layers, and nothing else: no rain, no leaks, no moving air, no water built in.",
    ],
    source: "ISO 13788:2012 clause 6",
    see: ["dry", "dries out", "stays wet", "judgement"],
  },
  {
    word: "dry",
    also: ["case a"],
    unit: null,
    says: ["A verdict: no water condenses inside the build-up in any month of the year."],
    source: "ISO 13788:2012 clause 6",
    see: ["verdict", "dries out"],
  },
  {
    word: "dries out",
    also: ["case b", "drying out"],
    unit: null,
    says: [
      "A verdict: water condenses in some months, and all of it has gone again within the year. Whether that is harmless depends on how much it is and on what: the judgement says so.",
    ],
    source: "ISO 13788:2012 clause 6",
    see: ["verdict", "peak", "judgement"],
  },
  {
    word: "stays wet",
    also: ["case c", "wet"],
    unit: null,
    says: [
      "A verdict: some of the water that condensed is still there after twelve months, so it may grow from year to year. Timber will rot sooner or later.",
    ],
    source: "ISO 13788:2012 clause 6",
    see: ["verdict", "carried over", "judgement"],
  },
  {
    word: "judgement",
    also: ["judgment", "judgements"],
    unit: null,
    says: [
      "What a careful adviser makes of a build-up, with every reason: sound, sound with conditions, change it, or beyond this method. It looks at the verdict and at what the method leaves out: how much water and on what, whether all rests on an unbroken sheet, how a cold roof is ventilated, whether rain comes into it.",
    ],
    source: null,
    see: ["sound", "sound with conditions", "change it", "beyond this method", "verdict"],
  },
  {
    word: "sound",
    also: [],
    unit: null,
    says: [
      "A judgement: nothing was found that asks for a change. It covers what the report covers: vapour by diffusion, U-value, surface. It says nothing about leaks, rain and workmanship.",
    ],
    source: null,
    see: ["judgement", "sound with conditions"],
  },
  {
    word: "sound with conditions",
    also: ["conditions", "condition"],
    unit: null,
    says: [
      "A judgement: right if the conditions beside it are kept, such as a vapour layer sealed at every lap and socket, or ventilation openings kept free.",
    ],
    source: null,
    see: ["judgement", "vapour layer"],
  },
  {
    word: "change it",
    also: [],
    unit: null,
    says: [
      "A judgement: not as it stands, either because a figure passes its limit or because good practice rules it out however dry it calculates. The remedies say what would turn it.",
    ],
    source: null,
    see: ["judgement", "remedy"],
  },
  {
    word: "beyond this method",
    also: ["beyond", "beyond the method"],
    unit: null,
    says: [
      "A judgement: the monthly method cannot answer for this build-up, such as rain-wetted brick insulated inside, metal running through the insulation, or a steam room. The report says what to ask for instead.",
    ],
    source: null,
    see: ["judgement"],
  },
  {
    word: "peak",
    also: ["held", "change", "water"],
    unit: "kg/m² or g/m²",
    says: [
      "The most water that a section holds at the end of any month. 200 g/m² is a cup of water on each square metre.",
      "The change of a month is what it adds at one place (negative: what it takes away); held is what is there at the month's end.",
    ],
    source: "ISO 13788:2012 clause 6",
    see: ["carried over", "section"],
  },
  {
    word: "carried over",
    also: ["carry over"],
    unit: "kg/m² or g/m²",
    says: [
      "Water still there after twelve months that began dry. More than nothing means that the build-up stays wet.",
    ],
    source: "ISO 13788:2012 clause 6",
    see: ["stays wet", "peak"],
  },
  {
    word: "finding",
    also: ["findings", "note", "caution", "fault", "severity of a finding"],
    unit: null,
    says: [
      "One thing worth telling about a build-up, with the figures behind it and what to do. A note is for information, a caution asks for care, a fault asks for a change.",
    ],
    source: null,
    see: ["judgement", "accept"],
  },
  {
    word: "remedy",
    also: ["remedies"],
    unit: null,
    says: [
      "A change to a build-up that was worked out in full and gives a better judgement, with its U-value and what it costs in thickness. None removes a membrane against the ground or closes a ventilation opening.",
    ],
    source: null,
    see: ["change it"],
  },
  {
    word: "accept",
    also: ["odd", "oddity", "oddities"],
    unit: null,
    says: [
      "Key of a project file. A value that is possible but odd gives a note with a short code; writing that code under accept: says that you meant it. The note then stands in the report as accepted.",
    ],
    source: null,
    see: ["finding"],
  },
  {
    word: "severity",
    also: ["mean year", "one in ten", "one in ten colder", "one in ten warmer"],
    unit: null,
    says: [
      "Which year is reckoned with: the mean year, or one that comes one year in ten, 2 K colder or warmer throughout. The colder year is always tried too and counts in the judgement.",
      "A finding has a severity too: note, caution or fault.",
    ],
    source: "ISO 13788:2012 clause 4.2",
    see: ["verdict", "finding"],
  },
  {
    word: "trapped water",
    also: ["built-in water"],
    unit: "kg/m²",
    says: [
      "Water shut in when a build-up was closed: wet timber, rain during the work. The check puts an amount into one layer in October and counts the days until it has gone.",
    ],
    source: "ISO 13788:2012 clause 7",
    see: ["verdict"],
  },
  {
    word: "target",
    also: ["targets", "target u", "target u-value"],
    unit: "W/(m²·K)",
    says: [
      "The U-value that you are asked for, written as `target:` into a build-up. The answer says beside the U-value whether it is met, both rounded to two decimals; the judgement is about moisture, and a missed target does not change it.",
    ],
    source: null,
    see: ["U-value", "judgement"],
  },
  {
    word: "spread",
    also: ["how sure", "samples"],
    unit: null,
    says: [
      "How far the answer may be off, since nothing that goes into it is known exactly. `warmside spread` works a build-up out many times, with material values, share of framing, gaps and indoor humidity each somewhere within its width, and tells how often each verdict and judgement comes out.",
    ],
    source: null,
    see: ["rank correlation", "tabulated", "assumed"],
  },
  {
    word: "rank correlation",
    also: ["correlation", "influence"],
    unit: "a bare number, -1 to 1",
    says: [
      "How closely one uncertain value and the answer rise and fall together over all samples of a spread: 1 always together, -1 always against each other, 0 without any link. The value with the largest, whatever its sign, decides most, so find out about that one first.",
    ],
    source: null,
    see: ["spread"],
  },
  {
    word: "tabulated",
    also: ["declared"],
    unit: null,
    says: [
      "Says where the values of a material come from: a table of a standard, for that kind of material and for no one product. The spread takes its conductivity as right within 5 %; a value that a maker declares for his product is surer.",
    ],
    source: "ISO 10456:2007",
    see: ["assumed", "spread"],
  },
  {
    word: "assumed",
    also: ["basis"],
    unit: null,
    says: [
      "Says that a value stands in no standard's table and no maker declares it: common practice, or a guess. The spread gives such values the most room, up to 20 % of the conductivity and a factor of three in the vapour resistance; the values of your own product, with their source, make the answer surer.",
    ],
    source: null,
    see: ["tabulated", "spread"],
  },
  {
    word: "unfavourable run",
    also: ["unfavourable", "unfavorable", "unfavourable vapour resistance", "unfavorable run"],
    unit: null,
    says: [
      "Many materials have a dry and a wet μ, and the reported year takes the dry one. This run works the build-up out again with the worse of the two, the smaller up to the cold face of the main insulation and the larger outside it; a verdict that changes is told.",
    ],
    source: null,
    see: ["μ", "wetter room", "severity"],
  },
  {
    word: "wetter room",
    also: ["wetter", "damper room"],
    unit: null,
    says: [
      "The build-up worked out again with a room damper than you stated: one humidity class up, ten points of relative humidity more, or half as much vapour again. It shows how near the edge the answer stands, and never turns the judgement by itself.",
    ],
    source: null,
    see: ["humidity class", "unfavourable run", "severity"],
  },
];
