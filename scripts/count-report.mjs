/**
 * Counts of a vitest JSON report. A test that was skipped did not pass, and a file that could not be loaded has
 * no tests to count: both are failures here.
 */
export function countReport(report) {
  const tests = report.testResults.flatMap((file) => file.assertionResults);
  const passed = tests.filter((test) => test.status === "passed").length;
  const emptyFailures = report.testResults.filter(
    (file) => file.status === "failed" && file.assertionResults.every((test) => test.status === "passed"),
  ).length;
  return { passed, failed: tests.length - passed + emptyFailures };
}
