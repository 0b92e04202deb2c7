/** Do our predictions and ngspice, on our own decks, say the same? The bounds they are held to, and the comparison of a batch. */

import type { BenchState } from "../src/bench/bench-state.ts";
import { type Fault, faultName } from "../src/board/fault.ts";
import { spiceDeck } from "../src/meter/deck.ts";
import type { ColdCheck, NotSolved, Predictor } from "../src/meter/prediction.ts";
import { DEFAULT_METER } from "../src/meter/settings.ts";
import { runAlone, runDecks } from "./ngspice.ts";

/** Bounds of agreement: volts before the OL rule, shares of ohms and farads, share of a climbing reading. */
export const BOUNDS = { volts: 1e-4, share: 1e-3, climbingShare: 1e-2 } as const;
/** Below these a share means nothing: an ohm or farad that no meter could see. */
const FLOORS = { ohms: 1e-6, farads: 1e-15, volts: 1e-4 } as const;

export const BARE_BENCH: BenchState = { lifted: new Set(), off: new Set(), clips: [], powered: false };

export interface Sample {
  readonly check: ColdCheck;
  readonly faults: readonly Fault[];
}

export interface Compared extends Sample {
  readonly ours: number | null;
  readonly theirs: number | null;
  readonly open: boolean;
  /** difference as a part of the bound: 1 is just outside; without end where a number is missing */
  readonly miss: number;
  /** why a number is missing, else null */
  readonly why: string | null;
}

function missOf(sample: Sample, ours: number, theirs: number): number {
  const difference = Math.abs(ours - theirs);
  if (sample.check.seconds !== undefined)
    return difference / Math.max(BOUNDS.climbingShare * Math.abs(theirs), FLOORS.volts);
  if (sample.check.mode === "diode") return difference / BOUNDS.volts;
  const floor = sample.check.mode === "farads" ? FLOORS.farads : FLOORS.ohms;
  return difference / Math.max(BOUNDS.share * Math.abs(theirs), floor);
}

/**
 * Predicts each sample and runs its deck. Nothing is dropped: a deck without a reading is run once more by itself, and a number
 * that is still missing counts as a miss without end, with what the program that failed said.
 */
export async function compare(predictor: Predictor, samples: readonly Sample[]): Promise<Compared[]> {
  const { board } = predictor;
  const decks = samples.map(({ check, faults }) =>
    spiceDeck(board, BARE_BENCH, DEFAULT_METER, check, faults),
  );
  const running = runDecks(decks.map((deck) => (typeof deck === "string" ? deck : "no deck\n.end\n")));
  const predictions = samples.map(({ check, faults }) => predictor.predict(check, faults));
  const theirs = await running;
  const compared: Compared[] = [];
  for (const [index, sample] of samples.entries()) {
    const prediction = predictions[index];
    const deck = decks[index];
    const their = theirs[index] ?? (await again(deck));
    const ours = prediction.solved ? prediction.raw : null;
    const [theirReading, theirWhy] = typeof their === "number" ? [their, null] : [null, their];
    const both = ours !== null && theirReading !== null;
    compared.push({
      ...sample,
      ours,
      theirs: theirReading,
      open: prediction.solved && prediction.shown === "OL",
      miss: both ? missOf(sample, ours, theirReading) : Number.POSITIVE_INFINITY,
      why: prediction.solved ? theirWhy : `ours: ${prediction.why}`,
    });
  }
  return compared;
}

/** The reading of a deck that gave none among others, or why it gives none. */
async function again(deck: string | NotSolved): Promise<number | string> {
  if (typeof deck !== "string") return `no deck: ${deck.why}`;
  const { reading, said } = await runAlone(deck);
  return reading ?? `ngspice: ${said}`;
}

/** One compared sample in a line. */
export function inWords(one: Compared): string {
  const { mode, red, black, seconds } = one.check;
  const faults = one.faults.map(faultName).join(",") || "healthy";
  const after = seconds === undefined ? "" : ` after ${seconds} s`;
  const found = one.why ?? `${one.miss.toFixed(2)} of the bound`;
  return `${mode}${after} ${red} to ${black}, ${faults}: ours ${one.ours}, ngspice ${one.theirs} (${found})`;
}
