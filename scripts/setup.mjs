/**
 * Everything a fresh clone needs before anything else can run. Uses Node's own modules only, because it runs
 * before the first package is there.
 */
import { spawn } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { basename, delimiter, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** The folder of package.json. */
export const ROOT = join(dirname(fileURLToPath(import.meta.url)), "..");

const OLDEST_NODE = [20, 19];
const STAMP = join(ROOT, "node_modules", ".setup");

/**
 * npm settings of the person at the keyboard that the inner install must honour: where packages come from and
 * where they are kept. Everything else the outer npm exports (prefix, omit, workspace...) would change what the
 * inner one does.
 */
const KEPT_NPM_SETTINGS = new Set([
  "cache",
  "registry",
  "userconfig",
  "globalconfig",
  "proxy",
  "https_proxy",
  "noproxy",
  "cafile",
  "strict_ssl",
  "offline",
  "prefer_offline",
  "fetch_retries",
  "fetch_timeout",
]);

/** A failure that the reader can act on: printed without a stack. */
export class SetupError extends Error {}

/** Refuses a Node that is too old, saying which would do. */
export function checkNode(version = process.versions.node) {
  const [major = 0, minor = 0] = version.split(".").map(Number);
  const [oldestMajor = 0, oldestMinor = 0] = OLDEST_NODE;
  if (major > oldestMajor || (major === oldestMajor && minor >= oldestMinor)) return;
  throw new SetupError(
    `Faultwright needs Node ${OLDEST_NODE.join(".")} or newer; this is ${version}. Install Node 20, 22 or 24 and try again.`,
  );
}

/** The environment for an npm run inside an npm run: the outer one's settings do not leak in. */
export function innerNpmEnvironment(outer = process.env) {
  const kept = Object.entries(outer).filter(([name]) => {
    const lower = name.toLowerCase();
    if (lower.startsWith("npm_package_") || lower.startsWith("npm_lifecycle_")) return false;
    if (!lower.startsWith("npm_config_")) return true;
    const setting = lower.slice("npm_config_".length).replaceAll("-", "_");
    return KEPT_NPM_SETTINGS.has(setting) || setting.startsWith("@") || setting.startsWith("//");
  });
  return Object.fromEntries(kept);
}

/** How to start npm: the one that started us, else the one beside this Node, else whatever PATH has. */
export function npmCommand(environment = process.env) {
  const beside = [
    join(dirname(process.execPath), "..", "lib", "node_modules", "npm", "bin", "npm-cli.js"),
    join(dirname(process.execPath), "node_modules", "npm", "bin", "npm-cli.js"),
  ];
  const started = environment.npm_execpath ?? "";
  const script = [started, ...beside].find((path) => basename(path) === "npm-cli.js" && existsSync(path));
  if (script !== undefined) return { command: process.execPath, first: [script], shell: false };
  return { command: "npm", first: [], shell: process.platform === "win32" };
}

/** Runs a program to its end with our own input and output; resolves to its exit code (1 when killed). */
export function run(command, args, options = {}) {
  return new Promise((resolve, reject) => {
    const child = spawn(command, args, { cwd: ROOT, stdio: "inherit", ...options });
    const stop = () => child.kill("SIGTERM");
    process.once("SIGTERM", stop);
    process.once("SIGINT", stop);
    child.once("error", reject);
    child.once("close", (code) => {
      process.off("SIGTERM", stop);
      process.off("SIGINT", stop);
      resolve(code ?? 1);
    });
  });
}

/** Full path of the first of `names` that PATH has, or null. */
export function findProgram(names) {
  const folders = (process.env.PATH ?? "").split(delimiter).filter(Boolean);
  for (const name of names) {
    const found = folders.map((folder) => join(folder, name)).find((path) => existsSync(path));
    if (found !== undefined) return found;
  }
  return null;
}

function wantedStamp() {
  const lock = readFileSync(join(ROOT, "package-lock.json"));
  const machine = `${process.version} ${process.platform} ${process.arch}`;
  return createHash("sha256").update(lock).update(machine).digest("hex");
}

/**
 * Installs the packages of package-lock.json unless that has been done with this very lock and Node.
 * Install scripts stay off: no package here needs one, so nothing is compiled and nothing is fetched from
 * anywhere but the npm registry.
 */
export async function installPackages() {
  const wanted = wantedStamp();
  if (existsSync(STAMP) && readFileSync(STAMP, "utf8") === wanted) return;
  process.stderr.write("Installing packages (first run, or the package list or Node changed)...\n");
  const npm = npmCommand();
  const args = [...npm.first, "ci", "--include=dev", "--ignore-scripts", "--no-audit", "--no-fund"];
  const code = await run(npm.command, args, {
    env: innerNpmEnvironment(),
    shell: npm.shell,
    // npm's own report must not mix with what our caller prints for a script to read.
    stdio: ["ignore", 2, "inherit"],
  });
  if (code !== 0) {
    throw new SetupError(
      `npm ci ended with code ${code}. See its message above; the npm registry must be reachable the first time.`,
    );
  }
  writeFileSync(STAMP, wanted);
}

/** Runs `work`; a SetupError is printed as one plain line, and any failure ends the process with code 1. */
export async function runScript(work) {
  try {
    await work();
  } catch (error) {
    process.stderr.write(`${error instanceof SetupError ? error.message : (error?.stack ?? error)}\n`);
    process.exit(1);
  }
}
