import type { BuildUpResult, Remedy } from "@warmside/core";

/** What makes a remedy's change in the project file; null where it is not one of the build-up. */
export function tryOf(_remedy: Remedy, _result: BuildUpResult): (() => void) | null {
  return null;
}
