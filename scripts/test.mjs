/**
 * `npm test`: sets up, then every check there is. The last line says `N passed, N failed`: each test of the
 * suite counts once, and so does each check that is a whole program (the build, types, format, dead code, the package).
 */
import { existsSync, mkdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { build } from "./build.mjs";
import { countReport } from "./count-report.mjs";
import { checkNode, installPackages, ROOT, run, runScript, SetupError } from "./setup.mjs";
import { ensureTestPrograms } from "./test-programs.mjs";

const REPORT = join(ROOT, "node_modules", ".cache", "vitest-report.json");

/** A program from node_modules, by its own script so that no shell and no install-time link is needed. */
const CHECKS = [
  { title: "types (tsc)", script: "node_modules/typescript/bin/tsc", args: ["--noEmit"] },
  { title: "format and lint (biome)", script: "node_modules/@biomejs/biome/bin/biome", args: ["check", "."] },
  { title: "dead code (knip)", script: "node_modules/knip/bin/knip.js", args: ["--no-progress"] },
  { title: "package (npm pack, install, run)", script: "scripts/check-pack.mjs", args: [] },
];

async function runProgram({ script, args }) {
  return (await run(process.execPath, [join(ROOT, script), ...args])) === 0;
}

/** Runs one check and says so; a check that throws has failed. */
async function passes(title, check) {
  process.stdout.write(`\n== ${title}\n`);
  const passed = await check().catch((error) => {
    process.stderr.write(`${error instanceof SetupError ? error.message : error.stack}\n`);
    return false;
  });
  if (!passed) process.stdout.write(`FAILED: ${title}\n`);
  return passed;
}

async function succeeds(work) {
  await work();
  return true;
}

async function runSuite() {
  process.stdout.write("\n== tests (vitest)\n");
  mkdirSync(join(ROOT, "node_modules", ".cache"), { recursive: true });
  rmSync(REPORT, { force: true });
  const args = ["run", "--reporter=default", "--reporter=json", `--outputFile.json=${REPORT}`];
  const code = await run(process.execPath, [join(ROOT, "node_modules/vitest/vitest.mjs"), ...args]);
  if (!existsSync(REPORT)) return { passed: 0, failed: 1 };
  const counts = countReport(JSON.parse(readFileSync(REPORT, "utf8")));
  // An error outside any test (an unhandled rejection) shows in the exit code alone.
  return code !== 0 && counts.failed === 0 ? { ...counts, failed: 1 } : counts;
}

await runScript(async () => {
  checkNode();
  await installPackages();
  const checks = [
    ["programs the tests need", () => succeeds(ensureTestPrograms)],
    ["build", () => succeeds(build)],
    ...CHECKS.map((check) => [check.title, () => runProgram(check)]),
  ];
  let passed = 0;
  let failed = 0;
  for (const [title, check] of checks) {
    if (await passes(title, check)) passed += 1;
    else failed += 1;
  }
  const suite = await runSuite();
  passed += suite.passed;
  failed += suite.failed;
  process.stdout.write(`\n${passed} passed, ${failed} failed\n`);
  process.exitCode = failed === 0 ? 0 : 1;
});
