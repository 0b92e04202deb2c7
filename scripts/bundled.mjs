/** Bundles a program as the shipped ones are bundled, so that what is measured is what ships, and runs it: `node scripts/bundled.mjs bench/run.ts`. */
import { basename, join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";
import { ROOT } from "./setup.mjs";

const [, , entry, ...rest] = process.argv;
if (entry === undefined) throw new Error("name the program to run, such as bench/run.ts");
const outfile = join(ROOT, "node_modules", ".cache", `${basename(entry, ".ts")}.mjs`);
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
await import(pathToFileURL(outfile).href);
