declare const WARMSIDE_VERSION: string | undefined;

/** Version of the program, put in when it is bundled. */
export function version(): string {
  return typeof WARMSIDE_VERSION === "string" ? WARMSIDE_VERSION : "from its sources";
}
