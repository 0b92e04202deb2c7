import type { Readable } from "node:stream";

/** All that a command touches of the world: `main.ts` hands in the process's own, a test its own. */
export interface Io {
  out(text: string): void;
  err(text: string): void;
  readonly input: Readable;
  /** a person is reading: prompts and colours make sense */
  readonly isTerminal: boolean;
  readonly color: boolean;
  /** the time now, RFC 3339 */
  now(): string;
  newId(): string;
  /** resolves when the person asks the program to stop (Ctrl-C) */
  untilStopped(): Promise<void>;
}

/** The process's exit codes, as `--help` documents them. */
export const DONE = 0;
export const BROKEN = 1;
export const BAD_INPUT = 2;
export const NOT_SOLVED = 3;

/** Runs a command's work and keeps the exit code it gives. */
export type Finish = (work: () => number | Promise<number>) => Promise<void>;

/** Text for a terminal on one line: no line break and no control character of a file's content gets through. */
export function oneLine(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is taken out
  return text.replace(/[\s\u0000-\u001f\u007f-\u009f\u2028\u2029]+/g, " ").trim();
}

/** Says on standard error, in one line, what is wrong with the input. */
export function refuse(io: Io, problem: string): number {
  io.err(`${oneLine(problem)}\n`);
  return BAD_INPUT;
}

/** Tells a person who waits that work is going on; a script sees nothing of it. */
export function whileTold<T>(io: Io, work: () => T): T {
  if (!io.isTerminal) return work();
  io.err("Working it out...");
  try {
    return work();
  } finally {
    io.err("\r                  \r");
  }
}
