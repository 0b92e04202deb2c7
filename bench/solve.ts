/**
 * Solves of the cold circuit against ngspice on the same deck, in the same run. One solve against `op`: ours with a leak across the
 * bus of another value each time, so that nothing is remembered, started from the healthy answer as in a job, alone and with its
 * spread; the peer's `op` with `destroy all` after each. One point of a sweep of the meter's volts against the peer's `.dc`: the
 * same volts in the same steps, each point started from the one before. The peer runs many inside one process, its start-up
 * taken off by timing two lengths; ours runs warm.
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { performance } from "node:perf_hooks";
import type { Board } from "../src/board/board.ts";
import type { Fault } from "../src/board/fault.ts";
import { solveCircuit } from "../src/circuit/solve.ts";
import { coldCircuit } from "../src/cold/cold-circuit.ts";
import { spiceDeck } from "../src/meter/deck.ts";
import { makePredictor } from "../src/meter/predictor.ts";
import { Probing } from "../src/meter/probing.ts";
import { rangesOf } from "../src/meter/ranges.ts";
import { DEFAULT_METER } from "../src/meter/settings.ts";

const CHECK = { mode: "diode", red: "NBUS", black: "PBUS" } as const;
const BARE = { lifted: new Set<string>(), off: new Set<string>(), clips: [], powered: false };
/** Runs of the peer's shorter and longer loop; solves of ours, those before them to warm up. */
const OPS = { short: 100, long: 600 } as const;
const POINTS = { short: 2000, long: 12_000 } as const;
const OURS = 2000;
const WARM_UP = 2000;
/** The sweep goes from this share of the meter's open volts over this much of them. */
const SWEEP = { from: 0.9, over: 0.2 } as const;

/** Microseconds each. */
export interface Solves {
  readonly solve: number;
  readonly withSpread: number;
  readonly sweepPoint: number;
  /** the peer's `op` with `destroy all`, and its point of a `.dc` sweep */
  readonly peerOp: number;
  readonly peerPoint: number;
}

export function measureSolves(board: Board): Solves {
  const deck = spiceDeck(board, BARE, DEFAULT_METER, CHECK, []);
  if (typeof deck !== "string") throw new Error(deck.why);
  const each = ({ short, long }: typeof OPS | typeof POINTS, loop: (count: number) => string): number =>
    (1000 * (timed(deck, loop(long)) - timed(deck, loop(short)))) / (long - short);
  const { diodeOpenVolts } = DEFAULT_METER;
  return {
    ...ownSolves(board),
    sweepPoint: ownSweepPoint(board),
    peerOp: each(OPS, (count) => `let k = 0\nrepeat ${count}\nop\ndestroy all\nend`),
    peerPoint: each(POINTS, (count) => {
      const [from, step] = [SWEEP.from * diodeOpenVolts, (SWEEP.over * diodeOpenVolts) / count];
      return `dc vmeter ${from} ${from + step * (count - 1)} ${step}`;
    }),
  };
}

function ownSolves(board: Board): { readonly solve: number; readonly withSpread: number } {
  const circuit = coldCircuit(board, BARE);
  const probing = new Probing(circuit, DEFAULT_METER);
  const predictor = makePredictor(board, BARE, DEFAULT_METER);
  const leak = (k: number): Fault => ({ of: "nets", nets: ["PBUS", "NBUS"], mode: "leaky", value: 1000 + k });
  probing.settle(CHECK, circuit.healthy);
  return {
    solve: warm(OURS, (k) => probing.settle(CHECK, circuit.withFaults([leak(k)]))),
    withSpread: warm(OURS, (k) => predictor.predict(CHECK, [leak(k)])),
  };
}

function ownSweepPoint(board: Board): number {
  const circuit = coldCircuit(board, BARE);
  const [range] = rangesOf(CHECK.mode, DEFAULT_METER);
  const problem = new Probing(circuit, DEFAULT_METER).problem(CHECK, range, circuit.healthy);
  let volts: Float64Array | null = null;
  return warm(POINTS.long, (k) => {
    const openVolts = range.openVolts * (SWEEP.from + (SWEEP.over * (k % POINTS.long)) / POINTS.long);
    const source = { ...problem.source, amps: openVolts / range.ohms };
    const answer = solveCircuit({ ...problem, source }, volts);
    if (!answer.solved) throw new Error(`no solution at ${openVolts} V`);
    volts = answer.volts;
  });
}

/** Microseconds of one of `count` runs, after those that warm up. */
function warm(count: number, run: (k: number) => void): number {
  for (let k = 0; k < WARM_UP; k++) run(k);
  const started = performance.now();
  for (let k = WARM_UP; k < WARM_UP + count; k++) run(k);
  return (1000 * (performance.now() - started)) / count;
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
