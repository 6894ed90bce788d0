/** Tells the test driver what vitest found: prints each failure in full and leaves the counts in a file. */
import { writeFileSync } from "node:fs";
import { relative } from "node:path";

export default class CountTests {
  onInit(vitest) {
    this.vitest = vitest;
  }

  onTestModuleEnd(module) {
    const tests = [...module.children.allTests()];
    const failed = tests.filter((test) => test.result().state === "failed").length + module.errors().length;
    const file = relative(process.cwd(), module.moduleId);
    console.log(
      `${failed === 0 ? "ok    " : "FAILED"} ${file} (${tests.length} in ${seconds(module.diagnostic().duration)} s)`,
    );
  }

  onTestRunEnd(modules, unhandledErrors) {
    const counts = { passed: 0, failed: 0, skipped: 0 };
    const tell = (title, error) => {
      counts.failed += 1;
      console.log(`\nFAILED ${title}`);
      this.vitest.logger.printError(error, { showCodeFrame: true });
    };
    for (const module of modules) {
      const file = relative(process.cwd(), module.moduleId);
      for (const error of module.errors()) tell(`${file} (the file itself)`, error);
      for (const suite of module.children.allSuites()) {
        for (const error of suite.errors()) tell(`${file} > ${suite.fullName}`, error);
      }
      for (const test of module.children.allTests()) {
        const { state, errors } = test.result();
        if (state === "failed")
          tell(`${file} > ${test.fullName}`, errors?.[0] ?? new Error("failed without saying why"));
        else if (state === "passed") counts.passed += 1;
        else counts.skipped += 1;
      }
    }
    for (const error of unhandledErrors) tell("outside any test", error);
    writeFileSync(process.env.WARMSIDE_TEST_COUNTS, JSON.stringify(counts));
  }
}

const seconds = (milliseconds) => (milliseconds / 1000).toFixed(1);
