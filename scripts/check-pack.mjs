/** Packs the tarball, installs it into an empty folder and runs it there, as somebody who has only npm would. */
import { execFile, spawn } from "node:child_process";
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { innerNpmEnvironment, npmCommand, ROOT, runScript, SetupError } from "./setup.mjs";

const execute = promisify(execFile);
const MUST_HOLD = [
  "dist/cli.mjs",
  "dist/server.mjs",
  "dist/web/index.html",
  "dist/web/service-worker.js",
  "README.md",
  "LICENSE",
];

async function npm(args, cwd) {
  const { command, first, shell } = npmCommand();
  return execute(command, [...first, ...args], { cwd, shell, env: innerNpmEnvironment() });
}

async function pack(folder) {
  const { stdout } = await npm(["pack", "--json", "--ignore-scripts", "--pack-destination", folder], ROOT);
  const [packed] = JSON.parse(stdout);
  const paths = packed.files.map((file) => file.path);
  for (const wanted of MUST_HOLD) {
    if (!paths.includes(wanted)) throw new SetupError(`${packed.filename} does not hold ${wanted}.`);
  }
  const stray = paths.filter((path) => /\.test\.|^src\/|^test\//.test(path));
  if (stray.length > 0)
    throw new SetupError(`${packed.filename} holds what no user needs: ${stray.join(", ")}`);
  return packed.filename;
}

async function checkProgram(home) {
  const program = join(home, "node_modules", "faultwright", "dist", "cli.mjs");
  const faultwright = (...args) => execute(process.execPath, [program, ...args], { cwd: home });
  const help = await faultwright("--help");
  if (!help.stdout.includes("suspects"))
    throw new SetupError("`faultwright --help` does not name `suspects`.");
  const examples = join(home, "node_modules", "faultwright", "examples");
  const jobs = readdirSync(examples).filter((name) => name.endsWith(".json"));
  if (jobs.length === 0) throw new SetupError("The package holds no example job.");
  for (const job of jobs) {
    const { stdout } = await faultwright("suspects", join(examples, job), "--json");
    const { suspects, explanations, remainder } = JSON.parse(stdout);
    const sum = explanations.reduce((total, explanation) => total + explanation.probability, remainder);
    if (!(suspects.length > 0 && Math.abs(sum - 1) < 1e-9)) {
      throw new SetupError(`suspects ${job}: ${suspects.length} suspects, probabilities sum to ${sum}.`);
    }
  }
  return jobs.length;
}

/** Serves the installed page once, on a free port. */
async function checkServer(home) {
  const program = join(home, "node_modules", "faultwright", "dist", "cli.mjs");
  const args = [program, "serve", "--port", "0", "--data", join(home, "jobs")];
  const server = spawn(process.execPath, args, { cwd: home });
  try {
    const url = await new Promise((resolve, reject) => {
      let printed = "";
      const read = (chunk) => {
        printed += chunk;
        const found = printed.match(/http:\/\/127\.0\.0\.1:\d+/);
        if (found !== null) resolve(found[0]);
      };
      server.stdout.on("data", read);
      server.stderr.on("data", read);
      server.once("exit", () => reject(new SetupError(`\`faultwright serve\` ended early: ${printed}`)));
    });
    const page = await (await fetch(url)).text();
    if (!page.includes("<html")) throw new SetupError("`faultwright serve` does not serve the page.");
  } finally {
    server.kill("SIGTERM");
  }
}

await runScript(async () => {
  const home = mkdtempSync(join(tmpdir(), "faultwright-pack-"));
  try {
    const tarball = await pack(home);
    writeFileSync(join(home, "package.json"), '{ "private": true }\n');
    await npm(["install", "--ignore-scripts", "--no-audit", "--no-fund", join(home, tarball)], home);
    const jobs = await checkProgram(home);
    await checkServer(home);
    process.stdout.write(
      `${tarball} installs in an empty folder; --help, suspects (${jobs} example jobs) and serve ran.\n`,
    );
  } finally {
    rmSync(home, { recursive: true, force: true });
  }
});
