/** Bundles the terminal program, the server and the page into dist/, when their sources have changed. */
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { checkNode, installPackages, ROOT, runScript } from "./setup.mjs";

const DIST = join(ROOT, "dist");
const STAMP = join(DIST, ".built");

function filesUnder(folder) {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath ?? entry.path, entry.name))
    .sort();
}

/** One hash over everything that decides what dist/ holds. Tests are left out: they are not bundled. */
function sourceHash() {
  const settings = [
    "package.json",
    "package-lock.json",
    "tsconfig.json",
    "vite.config.ts",
    "scripts/build.mjs",
    "scripts/bundle-programs.mjs",
    "scripts/lesson-basis.mjs",
    "scripts/sayings.mjs",
  ];
  const sources = filesUnder(join(ROOT, "src")).filter((path) => !path.endsWith(".test.ts"));
  const hash = createHash("sha256");
  for (const path of [...settings.map((name) => join(ROOT, name)), ...sources]) {
    hash.update(relative(ROOT, path)).update("\0").update(readFileSync(path)).update("\0");
  }
  return hash.digest("hex");
}

async function bundlePage(folder) {
  const vite = await import("vite");
  await vite.build({
    configFile: join(ROOT, "vite.config.ts"),
    logLevel: "warn",
    build: { outDir: join(folder, "web") },
  });
}

/**
 * Brings dist/ up to date. Without src/ (an installed package) dist/ is what it is. Everything is made beside it and
 * moved in at the end, so that a build that fails or is stopped leaves the last good one.
 */
export async function build() {
  if (!existsSync(join(ROOT, "src"))) return;
  const wanted = sourceHash();
  if (existsSync(STAMP) && readFileSync(STAMP, "utf8") === wanted) return;
  process.stderr.write("Building...\n");
  const folder = join(ROOT, "node_modules", ".cache", `build-${process.pid}`);
  mkdirSync(folder, { recursive: true });
  try {
    // loaded here only: what it imports may have just been installed
    const { checkSayings } = await import("./sayings.mjs");
    await checkSayings();
    const { bundlePrograms } = await import("./bundle-programs.mjs");
    await bundlePrograms(folder);
    await bundlePage(folder);
    writeFileSync(join(folder, ".built"), wanted);
    rmSync(DIST, { recursive: true, force: true });
    renameSync(folder, DIST);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  await runScript(async () => {
    checkNode();
    await installPackages();
    await build();
  });
}
