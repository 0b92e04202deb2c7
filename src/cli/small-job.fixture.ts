/** For tests of the commands: a board of a fuse, a bridge and a bus capacitor, as files in a folder of their own. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { PassThrough } from "node:stream";
import type { Io } from "./io.ts";

export const SMALL_BOARD = {
  format: "faultwright-board/1",
  name: "small rectifier",
  family: "rectifier",
  supply: { kind: "ac", volts: 230, hz: 50, at: ["L", "N"] },
  zero: "NBUS",
  parts: {
    F1: { kind: "fuse", pins: { "1": "L", "2": "LF" }, value: { amps: 5 }, stage: "input" },
    BR1: {
      kind: "bridge",
      pins: { ac1: "LF", ac2: "N", plus: "PBUS", minus: "NBUS" },
      value: { amps: 8, volts: 600 },
      stage: "rectifier",
    },
    C1: {
      kind: "capacitor",
      pins: { plus: "PBUS", minus: "NBUS" },
      value: { farads: 330e-6, volts: 400, type: "electrolytic" },
      stage: "bus",
    },
    R1: { kind: "resistor", pins: { "1": "PBUS", "2": "NBUS" }, value: { ohms: 220000 }, stage: "bus" },
  },
} as const;

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
