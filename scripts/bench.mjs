/** `npm run bench`: bundles the measurements as the programs are bundled, so that what is timed is what ships, and runs them. */
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";
import { ROOT } from "./setup.mjs";

const outfile = join(ROOT, "node_modules", ".cache", "bench.mjs");
await build({
  entryPoints: [join(ROOT, "bench", "run.ts")],
  outfile,
  bundle: true,
  platform: "node",
  format: "esm",
  target: "node20",
  packages: "external",
});
await import(pathToFileURL(outfile).href);
