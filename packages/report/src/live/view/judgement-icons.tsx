import type { FindingSeverity, JudgementWord } from "@warmside/core";
import { CLASSES, judgementIcon, severityIcon } from "../../judgement-icons.ts";

/** The sign of a judgement; the word stands beside it. */
export function JudgementIcon({ word }: { word: JudgementWord }) {
  return <span class={`sign-box ${CLASSES[word]}`} dangerouslySetInnerHTML={{ __html: judgementIcon(word).text }} />;
}

/** The sign of a finding's severity; the word stands beside it. */
export function SeverityIcon({ severity }: { severity: FindingSeverity }) {
  return <span class={`sign-box ${severity}`} dangerouslySetInnerHTML={{ __html: severityIcon(severity).text }} />;
}

/** A message without the marks that names of keys stand in. */
export function plain(text: string): string {
  return text.replaceAll("`", "");
}
