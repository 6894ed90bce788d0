/** A phrase that made readers stumble, and what is written instead. */
export interface Phrase {
  /** As it was written; case is forgiven. */
  not: RegExp;
  /** The better words. */
  say: string;
}

/** Each phrase with the better one beside it. Parts that changed from case to case are left open. */
export const PHRASES: readonly Phrase[] = [
  phrase(/\basked of\b/, "submitted to"),
  phrase(/\bno month condenses\b/, "no condensation in any month"),
  phrase(/\bnearest to it is\b/, "… has the smallest margin"),
  phrase(/\bwhen it stands least\b/, "in the worst month"),
  phrase(/\bstands a room humidity of\b/, "mould risk begins above … room humidity"),
  phrase(/\bmonths wet:/, "condensate in … months"),
  phrase(
    /\bdry by (?:January|February|March|April|May|June|July|August|September|October|November|December)\b/,
    "gone by …",
  ),
  phrase(/\beach line goes on with\b/, "each step uses"),
  phrase(/\bits table has the figures\b/, "(leave out)"),
  phrase(/\bwater that is built in\b|\bbuilt-in water\b/, "construction moisture"),
  phrase(/\bthan the air outdoors does to\b/, "no more than outdoor air alone would cause"),
  phrase(/\bguidance refuses\b/, "guidance rejects"),
  phrase(/\bhowever (?:dry|well) it calculates\b/, "even where no condensation is predicted"),
  phrase(/\bit calculates\b,? (?:with conditions|towards|in every)/, "acceptable, with conditions"),
  phrase(/\bno position holds\b/, "no position suits"),
  phrase(/\bturns from \S+ to\b/, "no longer …: …"),
  phrase(/\bin place of 0\.\d/, "U rises from … to …"),
  phrase(/\bof heat a year more\b/, "loses a further … a year"),
  phrase(/\bwith a judgement no worse\b/, "without a worse judgement"),
  phrase(/\bin the least size that\b/, "the smallest changes that …"),
  phrase(/\bwhat counts as too much\b/, "the usual limits apply"),
  phrase(/\bwritten off\b/, "drying ignored by the standard's monthly step"),
  phrase(/\bthe year repeated\b/, "repeated, the year settles"),
  phrase(/\bhangs on\b/, "depends on"),
  phrase(/\bas one in ten is\b|\b2 K (?:colder|warmer) than usual\b/, "in a cold year (1 in 10), …"),
  phrase(/\brests on that air\b|\brests on it\b/, "this relies on air moving there"),
  phrase(/\bin a month warmer outdoors\b|\bfalling to nothing\b/, "in warm months the room follows outdoors"),
  phrase(/\bnone is set\b/, "no conditions to meet"),
  phrase(/\bbut not where it is open\b/, "ventilated, but not said where air gets in"),
  phrase(/\(through [a-z ]+\)|\(whole\)|\(between framing\)/, "at the studs, (nothing), between the framing"),
  phrase(/\bcannot exist in\b/, "in … this room would be wetter than air can be"),
  phrase(/\ba second key begins\b/, "line … is indented further"),
  phrase(/\btakes up water and dries out again\b|\bdries out worse\b/, "a trace, under …"),
  phrase(/\bby vapour alone\b/, "the wall stays dry without it"),
  phrase(/\blook at, and measure\b/, "inspect and measure"),
  phrase(/\bwhat there is to buy\b/, "quantities"),
  phrase(/\bleave --pdf away\b/, "omit --pdf"),
  phrase(/\bis as it was\b/, "existing files are unchanged"),
  phrase(/\bcould not be printed whole\b/, "output is incomplete"),
  phrase(/\bmore words than this command\b/, "too many arguments"),
  phrase(/\bstep of nothing\b/, "the step must be more than 0 mm"),
  phrase(/\brange has to rise\b/, "give the smaller thickness first"),
  phrase(/\bshare of the disk\b/, "disk quota exceeded"),
  phrase(/\blinks lead round\b/, "symbolic links form a loop"),
  phrase(/\blook right but are others\b/, "digits from another script"),
  phrase(/\bis a sum or a range\b/, "must be one number"),
  phrase(/\bis for differences here\b/, "use °C for temperatures"),
  phrase(/\bthan a black one\b/, "emissivity is 0.01 to 1"),
  phrase(/\bfit no small building\b/, "more than any plausible source"),
  phrase(/\bstayed so for ever\b/, "at equilibrium"),
  phrase(/\btake it as no answer\b/, "not a valid result"),
  phrase(/\bcame in from\b|\bthe far side\b/, "entered from outside; the outer side"),
  phrase(/\bnothing is assumed, because\b|\ba mistake here hides\b/, "required: a wrong value here hides rot"),
  phrase(/\bis nothing left\b/, "treated as zero"),
  phrase(/\bequal to within nothing\b/, "ties within tolerance"),
  phrase(/\bwhat became of water\b/, "drying of a given amount of water"),
  phrase(/\bsit oddly together\b/, "inconsistent; reported only"),
  phrase(/\bwithout end\b/, "unbounded nesting"),
  phrase(/\beverybody says something else\b/, "everyone gives different advice"),
  phrase(/\bnor does it\b/, "none … either"),
  phrase(/\bbeing continuous\b/, "unbroken"),
  phrase(/\bcarried over\b|\bat its fullest\b|\bpeak water\b/, "residual moisture; at most"),
  phrase(/\bthe month that decides\b/, "critical month"),
  phrase(/\bunder other assumptions\b|\bworked out again\b/, "sensitivity"),
  phrase(/\bworked by hand\b/, "hand check"),
  phrase(/\bwhat it was worked out for\b/, "design conditions"),
  phrase(/\bcut through, to scale\b/, "section, to scale"),
  phrase(/\bnot rain, leaks, moving air\b/, "said once, in the front"),
];

/**
 * The phrases that a text has.
 *
 * @param text - as a reader meets it
 * @returns each with its surroundings and the better words; empty for a good text
 */
export function quotedPhrasesIn(text: string): string[] {
  const spaced = text.replace(/[\s\u00a0\u202f]+/g, " ");
  return PHRASES.flatMap(({ not, say }) => {
    const found = not.exec(spaced);
    if (found === null) return [];
    const around = spaced.slice(Math.max(0, found.index - 40), found.index + found[0].length + 40);
    return [`“…${around}…”: say “${say}”`];
  });
}

function phrase(not: RegExp, say: string): Phrase {
  return { not: new RegExp(not, "i"), say };
}
