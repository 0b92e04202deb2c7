/** What the lessons of closed jobs were counted against: one hash over the engine's sources, so that no changed table leaves stale lessons. */
import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";

/** The layers that a lesson is read with; `test/lesson-basis.test.ts` holds them to the layer table. */
export const LESSON_LAYERS = [
  "bench",
  "board",
  "circuit",
  "cold",
  "diagnosis",
  "job",
  "learning",
  "live",
  "messages",
  "meter",
  "money",
  "numeric",
  "planning",
  "priors",
  "safety",
  "units",
];

/** @param {string} sources - the folder that the layers stand in */
export function lessonBasis(sources) {
  const hash = createHash("sha256");
  const files = LESSON_LAYERS.flatMap((layer) =>
    readdirSync(join(sources, layer), { withFileTypes: true, recursive: true })
      .filter((entry) => entry.isFile() && !/\.(test|fixture)\.ts$/.test(entry.name))
      .map((entry) => join(entry.parentPath ?? entry.path, entry.name)),
  ).sort();
  for (const path of files)
    hash.update(relative(sources, path)).update("\0").update(readFileSync(path)).update("\0");
  return hash.digest("hex").slice(0, 16);
}
