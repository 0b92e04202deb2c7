/** Finds and starts the Chromium that the browser tests drive. */
import { accessSync, constants } from "node:fs";
import { delimiter, join } from "node:path";
import { type Browser, chromium } from "playwright-core";

const NAMES = ["chromium", "chromium-browser", "google-chrome"];
const FOLDERS = [...(process.env.PATH ?? "").split(delimiter), "/usr/bin"];

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** The first Chromium of this machine; throws with what to install where there is none. */
export function findChromium(): string {
  const found = FOLDERS.flatMap((folder) => NAMES.map((name) => join(folder, name))).find(isProgram);
  if (found === undefined) throw new Error("no Chromium on PATH: install the package `chromium`");
  return found;
}

/** @param more - switches for one test alone */
export function launchChromium(more: readonly string[] = []): Promise<Browser> {
  return chromium.launch({
    executablePath: findChromium(),
    headless: true,
    args: [
      "--no-sandbox",
      "--disable-gpu",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
      "--no-first-run",
      ...more,
    ],
  });
}
