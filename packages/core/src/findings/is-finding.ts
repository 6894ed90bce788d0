import { requireText } from "../require.ts";
import type { Finding, FindingCode } from "../result/types.ts";

/**
 * Tests for findings of one code, so that the type of their figures is known.
 *
 * @param code - such as "surface-mould"
 * @returns whether a finding is of that code; for `find` and `filter`
 */
export function isFinding<Code extends FindingCode>(code: Code): (finding: Finding) => finding is Finding<Code> {
  requireText(code, "code");
  return (finding): finding is Finding<Code> => finding.code === code;
}
