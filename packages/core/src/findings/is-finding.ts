import { requireText } from "../require.ts";
import type { Finding, FindingCode } from "../result/types.ts";

/**
 * A test for findings of one code, which also gives the type of their figures.
 *
 * @param code - such as "surface-mould"
 * @returns whether a finding is of that code; for `find` and `filter`
 */
export function isFinding<Code extends FindingCode>(code: Code): (finding: Finding) => finding is Finding<Code> {
  requireText(code, "code");
  return (finding): finding is Finding<Code> => finding.code === code;
}
