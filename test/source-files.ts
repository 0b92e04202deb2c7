import { readdirSync } from "node:fs";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";

/** The folder of package.json. */
export const ROOT = fileURLToPath(new URL("..", import.meta.url)).replace(/[\\/]$/, "");

/** Files under `folder` (relative to `root`) whose path matches, as sorted paths with `/`, relative to `root`. */
export function filesUnder(root: string, folder: string, wanted: RegExp): string[] {
  return readdirSync(join(root, folder), { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(root, join(entry.parentPath, entry.name)).replaceAll("\\", "/"))
    .filter((path) => wanted.test(path) && !path.includes("node_modules/"))
    .sort();
}
