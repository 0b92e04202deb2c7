/** For tests of what a bench learns: a rectifier of four parts, worked and closed. */
import type { Job } from "./job.ts";
import { parseJob } from "./parse-job.ts";

export const RECTIFIER = {
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

export const CLOSE = { do: "close", verdict: "repaired", id: "end" } as const;

/** An open fuse found by its beep, replaced, and the board handed back. */
export const FUSE_LOG: readonly object[] = [
  { do: "measure", mode: "dcv", red: "C1.plus", black: "C1.minus", reading: 0.1, at: "2026-03-01T09:00:00Z" },
  { do: "measure", mode: "continuity", red: "L", black: "LF", reading: "silent", at: "2026-03-01T09:00:30Z" },
  { do: "measure", mode: "diode", red: "NBUS", black: "PBUS", reading: 0.9, at: "2026-03-01T09:01:00Z" },
  { do: "measure", mode: "diode", red: "LF", black: "PBUS", reading: 0.45, at: "2026-03-01T09:01:20Z" },
  { do: "measure", mode: "diode", red: "N", black: "PBUS", reading: 0.45, at: "2026-03-01T09:01:40Z" },
  { do: "replace", part: "F1", price: 0.8, at: "2026-03-01T09:21:40Z" },
  { do: "measure", mode: "continuity", red: "L", black: "LF", reading: "beep" },
  CLOSE,
];

export function rectifierJob(log: readonly object[], changes: object = {}): Job {
  const job = parseJob(
    { format: "faultwright-job/1", board: RECTIFIER, cause: "surge", symptom: "dead", log, ...changes },
    null,
  );
  if (!job.ok) throw new Error(job.problem);
  return job.value;
}
