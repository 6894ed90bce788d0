import { describe, expect, test } from "vitest";
import { withCode, withoutBackticks } from "../../packages/report/src/with-code.ts";

describe("words of the project file inside a sentence", () => {
  test("stand as code on the page, escaped", () => {
    expect(withCode("Name its `purpose` in the file.").text).toBe("Name its <code>purpose</code> in the file.");
    expect(withCode("`<b>` & more").text).toBe("<code>&lt;b&gt;</code> &amp; more");
  });

  test("stand bare in the terminal", () => {
    expect(withoutBackticks("Name its `purpose` or `name`.")).toBe("Name its purpose or name.");
  });

  test("a backtick without a partner stays", () => {
    expect(withCode("a ` b").text).toBe("a ` b");
    expect(withoutBackticks("a ` b")).toBe("a ` b");
  });
});
