/**
 * One solve of the cold circuit with its spread against ngspice on the same deck, in the same run. Ours: a leak across the bus of
 * another value each time, so that nothing is remembered; started from the healthy answer, as in a job. The peer: many runs
 * inside one process, its start-up taken off by timing two lengths; once `op` with `destroy all` after each, once the points
 * of a `.dc` sweep of the meter's volts, each started from the point before.
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { performance } from "node:perf_hooks";
import type { Board } from "../src/board/board.ts";
import type { Fault } from "../src/board/fault.ts";
import { spiceDeck } from "../src/meter/deck.ts";
import { makePredictor } from "../src/meter/predictor.ts";
import { DEFAULT_METER } from "../src/meter/settings.ts";

const CHECK = { mode: "diode", red: "NBUS", black: "PBUS" } as const;
const BARE = { lifted: new Set<string>(), off: new Set<string>(), clips: [], powered: false };
/** Runs of the peer's shorter and longer loop; solves of ours, those before them to warm up. */
const OPS = { short: 100, long: 600 } as const;
const POINTS = { short: 2000, long: 12_000 } as const;
const OURS = 1000;
const WARM_UP = 300;

/** Microseconds each: one solve with its spread, one `op` with `destroy all`, one point of a `.dc` sweep. */
export interface Solves {
  readonly ours: number;
  readonly op: number;
  readonly sweepPoint: number;
}

export function measureSolves(board: Board): Solves {
  const predictor = makePredictor(board, BARE, DEFAULT_METER);
  const leak = (k: number): Fault => ({ of: "nets", nets: ["PBUS", "NBUS"], mode: "leaky", value: 1000 + k });
  for (let k = 0; k < WARM_UP; k++) predictor.predict(CHECK, [leak(k)]);
  const started = performance.now();
  for (let k = WARM_UP; k < WARM_UP + OURS; k++) predictor.predict(CHECK, [leak(k)]);
  const ours = (1000 * (performance.now() - started)) / OURS;
  const deck = spiceDeck(board, BARE, DEFAULT_METER, CHECK, []);
  if (typeof deck !== "string") throw new Error(deck.why);
  const each = ({ short, long }: typeof OPS | typeof POINTS, loop: (count: number) => string): number =>
    (1000 * (timed(deck, loop(long)) - timed(deck, loop(short)))) / (long - short);
  const { diodeOpenVolts } = DEFAULT_METER;
  return {
    ours,
    op: each(OPS, (count) => `let k = 0\nrepeat ${count}\nop\ndestroy all\nend`),
    sweepPoint: each(POINTS, (count) => {
      const [from, step] = [0.9 * diodeOpenVolts, (0.2 * diodeOpenVolts) / count];
      return `dc vmeter ${from} ${from + step * (count - 1)} ${step}`;
    }),
  };
}

function timed(deck: string, loop: string): number {
  const folder = mkdtempSync(join(tmpdir(), "faultwright-bench-"));
  const circuit = deck.replace(/\.control[\s\S]*?\.endc/i, "").replace(/^\.end\s*$/im, "");
  writeFileSync(join(folder, "loop.cir"), `${circuit}\n.control\n${loop}\nquit\n.endc\n.end\n`);
  const started = performance.now();
  const run = spawnSync("ngspice", ["-b", join(folder, "loop.cir")], { encoding: "utf8" });
  const took = performance.now() - started;
  rmSync(folder, { recursive: true });
  if (run.error !== undefined)
    throw new Error("ngspice is needed for this measurement: apt-get install ngspice");
  return took;
}
