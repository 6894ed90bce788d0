/** Verdict of the monthly method: ISO 13788 cases a, b and c. */
export type VerdictWord = "dry" | "dries out" | "stays wet";

/** The overall judgement of a build-up. */
export type JudgementWord = "sound" | "sound with conditions" | "change it" | "beyond this method";

/** Severity of a finding. */
export type FindingSeverity = "note" | "caution" | "fault";

/** Direction of heat flow through the build-up over the year. */
export type HeatFlowDirection = "upward" | "horizontal" | "downward";
