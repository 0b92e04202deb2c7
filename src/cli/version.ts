import { readFileSync } from "node:fs";

/** The version in package.json, which lies one folder above the bundle and two above this source. */
export function version(): string {
  for (const place of ["../package.json", "../../package.json"]) {
    const known = versionIn(new URL(place, import.meta.url));
    if (known !== null) return known;
  }
  return "unknown";
}

function versionIn(file: URL): string | null {
  try {
    const content = JSON.parse(readFileSync(file, "utf8")) as {
      readonly name?: unknown;
      readonly version?: unknown;
    };
    return content.name === "faultwright" && typeof content.version === "string" ? content.version : null;
  } catch {
    // Not there, or not ours: the other place is tried.
    return null;
  }
}
