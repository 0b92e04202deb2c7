/**
 * One warm solve of the cold circuit against ngspice's operating point of the same deck. The peer's loop: `op` with `destroy all`
 * after each, in one process, its start-up taken off by timing two lengths of the loop.
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { performance } from "node:perf_hooks";
import type { Fault } from "../src/board/fault.ts";
import { parseBoard } from "../src/board/parse-board.ts";
import { spiceDeck } from "../src/meter/deck.ts";
import { makePredictor } from "../src/meter/predictor.ts";
import { DEFAULT_METER } from "../src/meter/settings.ts";

const CHECK = { mode: "diode", red: "NBUS", black: "PBUS" } as const;
const BARE = { lifted: new Set<string>(), off: new Set<string>(), clips: [], powered: false };

/** Microseconds of one solve: ours, with a different leak each time so that nothing is remembered; and the peer's. */
export function measureSolves(id: string): { readonly ours: number; readonly peer: number } {
  const board = parseBoard(JSON.parse(readFileSync(`boards/${id}.json`, "utf8")));
  if (!board.ok) throw new Error(board.problem);
  const predictor = makePredictor(board.value, BARE, DEFAULT_METER);
  const leak = (k: number): Fault => ({ of: "nets", nets: ["PBUS", "NBUS"], mode: "leaky", value: 1000 + k });
  for (let k = 0; k < 300; k++) predictor.predict(CHECK, [leak(k)]);
  const rounds = 2000;
  const started = performance.now();
  for (let k = 300; k < 300 + rounds; k++) predictor.predict(CHECK, [leak(k)]);
  const ours = (1000 * (performance.now() - started)) / rounds;
  const deck = spiceDeck(board.value, BARE, DEFAULT_METER, CHECK, []);
  if (typeof deck !== "string") throw new Error(deck.why);
  const [short, long] = [timedLoop(deck, 200), timedLoop(deck, 2200)];
  return { ours, peer: (1000 * (long - short)) / 2000 };
}

function timedLoop(deck: string, count: number): number {
  const folder = mkdtempSync(join(tmpdir(), "faultwright-bench-"));
  const control = `.control\nlet k = 0\nrepeat ${count}\nop\ndestroy all\nend\nquit\n.endc\n.end\n`;
  const circuit = deck.replace(/\.control[\s\S]*?\.endc/i, "").replace(/^\.end\s*$/im, "");
  writeFileSync(join(folder, "loop.cir"), `${circuit}\n${control}`);
  const started = performance.now();
  const run = spawnSync("ngspice", ["-b", join(folder, "loop.cir")], { encoding: "utf8" });
  const took = performance.now() - started;
  rmSync(folder, { recursive: true });
  if (run.error !== undefined)
    throw new Error("ngspice is needed for this measurement: apt-get install ngspice");
  return took;
}
