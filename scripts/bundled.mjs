/** Bundles a program as the shipped ones are bundled, so that what is measured is what ships, and runs it: `node scripts/bundled.mjs bench/run.ts`. */
import { rmSync } from "node:fs";
import { basename, join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";
import { ROOT } from "./setup.mjs";

const [, , entry, ...rest] = process.argv;
if (entry === undefined) throw new Error("name the program to run, such as bench/run.ts");
// a file of its own: two runs of one program may start at once
const outfile = join(ROOT, "node_modules", ".cache", `${basename(entry, ".ts")}-${process.pid}.mjs`);
await build({
  entryPoints: [join(ROOT, entry)],
  outfile,
  bundle: true,
  platform: "node",
  format: "esm",
  target: "node20",
  packages: "external",
});
process.argv = [process.argv[0], outfile, ...rest];
process.on("exit", () => rmSync(outfile, { force: true }));
await import(pathToFileURL(outfile).href);
