/**
 * `npm run accuracy [-- CHECKS [BOARD]]`: our solver against ngspice on every shipped board: healthy on 60 seeded pairs of places
 * both ways, then every single fault of every fault site with CHECKS checks (default 2), then a seeded sample of pairs of
 * faults. Exits 1 where any sample lies outside the bounds or is missing, or the sample is not what it should be.
 */
import { performance } from "node:perf_hooks";

import type { Board } from "../src/board/board.ts";
import { parseBoard } from "../src/board/parse-board.ts";
import { makePredictor } from "../src/meter/predictor.ts";
import { DEFAULT_METER } from "../src/meter/settings.ts";
import { SHIPPED } from "../src/shipped/shipped.ts";
import { BARE_BENCH, BOUNDS, type Compared, compare, inWords, type Sample } from "./agreement.ts";
import { hasNgspice } from "./ngspice.ts";
import { faultPairs, faultSamples, healthySamples, singleFaults } from "./samples.ts";
import { Tally } from "./tally.ts";

const SEED = 20261125;
const HEALTHY_PAIRS = 60;
const FAULT_PAIRS = 200;
/** Samples drawn, predicted and run at once; and batches under way at once, one being drawn while ngspice runs the other. */
const BATCH = 40;
const BATCHES_AT_ONCE = 2;
/** More exceptions than this are counted and not written out. */
const MOST_WRITTEN = 40;

function* boardSamples(board: Board, perSet: number): Generator<Sample> {
  yield* healthySamples(board, HEALTHY_PAIRS, SEED);
  const singles = singleFaults(board).map((fault) => [fault]);
  yield* faultSamples(board, singles, perSet, SEED + 1);
  yield* faultSamples(board, faultPairs(board, FAULT_PAIRS, SEED + 2), perSet, SEED + 3);
}

function* batches(samples: Iterable<Sample>): Generator<Sample[]> {
  let batch: Sample[] = [];
  for (const sample of samples) {
    batch.push(sample);
    if (batch.length < BATCH) continue;
    yield batch;
    batch = [];
  }
  if (batch.length > 0) yield batch;
}

/** Compares every sample of the board; `tell` hears each that fails. */
async function wholeBoard(board: Board, perSet: number, tell: (one: Compared) => void): Promise<Tally> {
  const predictor = makePredictor(board, BARE_BENCH, DEFAULT_METER);
  const tally = new Tally();
  const take = (compared: readonly Compared[]): void => {
    for (const one of compared) {
      tally.add(one);
      if (one.miss > 1) tell(one);
    }
  };
  const underWay: Promise<Compared[]>[] = [];
  for (const batch of batches(boardSamples(board, perSet))) {
    underWay.push(compare(predictor, batch));
    if (underWay.length >= BATCHES_AT_ONCE) take((await underWay.shift()) ?? []);
  }
  for (const rest of underWay) take(await rest);
  return tally;
}

interface Asked {
  readonly perSet: number;
  readonly boards: typeof SHIPPED;
}

function parseArguments([checks = "2", id]: readonly string[]): Asked | string {
  const perSet = Number(checks);
  if (!Number.isInteger(perSet) || perSet < 1) return `checks per fault: ${checks} is no whole number from 1`;
  const boards = SHIPPED.filter((shipped) => id === undefined || shipped.id === id);
  const known = SHIPPED.map((shipped) => shipped.id).join(", ");
  return boards.length > 0 ? { perSet, boards } : `there is no shipped board ${id}; there are ${known}`;
}

async function main(): Promise<number> {
  const asked = parseArguments(process.argv.slice(2));
  if (typeof asked === "string") {
    console.error(asked);
    return 2;
  }
  if (!(await hasNgspice())) {
    console.error("ngspice is not on the PATH; install it (for example: apt install ngspice) and run again");
    return 2;
  }
  let failures = 0;
  for (const { id, title, board: content } of asked.boards) {
    const board = parseBoard(content);
    if (!board.ok) throw new Error(`${id}: ${board.problem}`);
    const started = performance.now();
    let told = 0;
    console.log(`\n${title} (${id}), ${board.value.parts.size} parts, seed ${SEED}`);
    const tally = await wholeBoard(board.value, asked.perSet, (one) => {
      if (told++ < MOST_WRITTEN) console.log(`  exception: ${inWords(one)}`);
    });
    console.log(
      `healthy: ${HEALTHY_PAIRS} pairs of places both ways in each column; ${singleFaults(board.value).length} single faults and ${FAULT_PAIRS} ` +
        `pairs of faults, ${asked.perSet} checks each; ${((performance.now() - started) / 1000).toFixed(0)} s`,
    );
    for (const line of tally.lines()) console.log(line);
    const complaint = tally.complaint();
    if (complaint !== null) console.log(`  the sample is not what it should be: ${complaint}`);
    failures += tally.failures + (complaint === null ? 0 : 1);
  }
  const { volts, share, climbingShare } = BOUNDS;
  console.log(
    `\n${failures} failures: samples outside the bounds (${1000 * volts} mV; ${100 * share} % of ohms and farads; ${100 * climbingShare} % while climbing), missing, or not as asked for`,
  );
  return failures === 0 ? 0 : 1;
}

process.exitCode = await main();
