/** Bundles the terminal program into the file named, as `build.mjs` does for dist/, without the page: what the bench times. */
import { join } from "node:path";
import { build } from "esbuild";
import { ROOT } from "./setup.mjs";

const [, , outfile] = process.argv;
if (outfile === undefined) throw new Error("name the file to write");
await build({
  entryPoints: [join(ROOT, "src/cli/main.ts")],
  outfile,
  bundle: true,
  platform: "node",
  target: "node20",
  format: "esm",
  packages: "external",
  logLevel: "warning",
});
