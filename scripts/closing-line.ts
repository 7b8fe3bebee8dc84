/** A vitest reporter that closes a run with one plain line: how many tests passed and failed. */
import type { Reporter, TestModule } from 'vitest/node';

export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], errors: readonly unknown[]): void {
    const count = { passed: 0, failed: errors.length, skipped: 0, pending: 0 };
    for (const module of modules) {
      for (const test of module.children.allTests()) count[test.result().state] += 1;
      // A file that could not even be loaded holds no test that could have failed.
      if (!module.ok() && [...module.children.allTests()].every((one) => one.ok()))
        count.failed += 1;
    }
    const skipped = count.skipped + count.pending;
    const tail = skipped > 0 ? `, ${skipped} skipped` : '';
    process.stdout.write(`\n${count.passed} passed, ${count.failed} failed${tail}\n`);
  }
}
