/**
 * Bundles the terminal program and the server into the folder named. They share their pieces, and what only one command needs (the
 * database, the web server) is loaded when that command runs.
 */
import { chmodSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { ROOT } from "./setup.mjs";

const PROGRAMS = { cli: "src/cli/main.ts", server: "src/server/main.ts" };

export async function bundlePrograms(folder) {
  await build({
    entryPoints: Object.fromEntries(
      Object.entries(PROGRAMS).map(([name, source]) => [name, join(ROOT, source)]),
    ),
    outdir: folder,
    outExtension: { ".js": ".mjs" },
    bundle: true,
    splitting: true,
    platform: "node",
    target: "node20",
    format: "esm",
    packages: "external",
    // the first line of a program that a shell starts; in the others it says nothing
    banner: { js: "#!/usr/bin/env node" },
    logLevel: "warning",
  });
  for (const name of Object.keys(PROGRAMS)) chmodSync(join(folder, `${name}.mjs`), 0o755);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const [, , folder] = process.argv;
  if (folder === undefined) throw new Error("name the folder to write into");
  await bundlePrograms(folder);
}
