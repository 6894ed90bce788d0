import type { FindingSeverity, JudgementWord } from "@warmside/core";
import { CLASSES, judgementSign, severitySign } from "../../signs.ts";

/** The sign of a judgement; the word stands beside it. */
export function Sign({ word }: { word: JudgementWord }) {
  return <span class={`sign-box ${CLASSES[word]}`} dangerouslySetInnerHTML={{ __html: judgementSign(word).text }} />;
}

/** The sign of a finding's severity; the word stands beside it. */
export function SeveritySign({ severity }: { severity: FindingSeverity }) {
  return <span class={`sign-box ${severity}`} dangerouslySetInnerHTML={{ __html: severitySign(severity).text }} />;
}

/** A message without the marks that names of keys stand in. */
export function plain(text: string): string {
  return text.replaceAll("`", "");
}
