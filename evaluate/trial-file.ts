/** Trials on disk, one a line, so that several runs can be joined and one that was stopped goes on. */
import { appendFileSync, existsSync, mkdirSync, readFileSync } from "node:fs";
import { dirname } from "node:path";
import type { Trial } from "./trial.ts";

/** The trials of a file, oldest first; none where it is not there. */
export function readTrials(path: string): readonly Trial[] {
  if (!existsSync(path)) return [];
  return readFileSync(path, "utf8")
    .split("\n")
    .filter((line) => line !== "")
    .map((line, at) => {
      try {
        return JSON.parse(line) as Trial;
      } catch {
        throw new Error(`${path}:${at + 1}: this line is no trial`);
      }
    });
}

/** Adds one trial at once, so that a run that is stopped loses nothing. */
export function keepTrial(path: string, trial: Trial): void {
  mkdirSync(dirname(path), { recursive: true });
  appendFileSync(path, `${JSON.stringify(trial)}\n`);
}

export function trialKey({ readings, board, seed }: Pick<Trial, "readings" | "board" | "seed">): string {
  return `${readings} ${board} ${seed}`;
}

/** Trials of several files; the same board and seed counts once, the first time. */
export function joined(files: readonly (readonly Trial[])[]): readonly Trial[] {
  const all = new Map<string, Trial>();
  for (const trial of files.flat()) if (!all.has(trialKey(trial))) all.set(trialKey(trial), trial);
  return [...all.values()];
}
