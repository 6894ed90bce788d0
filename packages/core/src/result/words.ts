/** What the monthly method says: ISO 13788 cases a, b and c. */
export type VerdictWord = "dry" | "dries out" | "stays wet";

/** What a careful adviser makes of it. */
export type JudgementWord = "sound" | "sound with conditions" | "change it" | "beyond this method";

/** How much a finding matters. */
export type FindingSeverity = "note" | "caution" | "fault";

/** Which way heat goes through the build-up over the year. */
export type HeatFlowDirection = "upward" | "horizontal" | "downward";
