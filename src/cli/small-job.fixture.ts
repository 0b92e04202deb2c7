/** For tests of the commands: a board of a fuse, a bridge and a bus capacitor, as files in a folder of their own. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { PassThrough } from "node:stream";
import { RECTIFIER } from "../job/rectifier-job.fixture.ts";
import type { Io } from "./io.ts";

export const SMALL_BOARD = RECTIFIER;

export const SMALL_JOB = {
  format: "faultwright-job/1",
  board: SMALL_BOARD,
  cause: "surge",
  symptom: "dead",
  log: [],
} as const;

export interface Folder {
  readonly path: string;
  /** writes a file (text as it is, anything else as JSON) and gives its path */
  file(name: string, content: unknown): string;
  remove(): void;
}

export function freshFolder(): Folder {
  const path = mkdtempSync(join(tmpdir(), "faultwright-cli-"));
  return {
    path,
    file: (name, content) => {
      const at = join(path, name);
      writeFileSync(at, typeof content === "string" ? content : JSON.stringify(content));
      return at;
    },
    remove: () => rmSync(path, { recursive: true, force: true }),
  };
}

export interface CapturedIo extends Io {
  readonly said: { out: string; err: string };
}

/** An `Io` that remembers what was printed; `lines` is what somebody typed before ending the input. */
export function capturedIo(lines: readonly string[] = []): CapturedIo {
  const said = { out: "", err: "" };
  const input = new PassThrough();
  input.end(lines.map((line) => `${line}\n`).join(""));
  let count = 0;
  return {
    said,
    out: (text) => {
      said.out += text;
    },
    err: (text) => {
      said.err += text;
    },
    input,
    isTerminal: false,
    color: false,
    now: () => "2026-03-01T09:30:00.000Z",
    newId: () => `typed-${count++}`,
    untilStopped: () => Promise.resolve(),
  };
}
