/** Do our predictions and ngspice, on our own decks, say the same? Samples of checks and faults, and the bounds they are held to. */

import type { BenchState } from "../src/bench/bench-state.ts";
import type { Board } from "../src/board/board.ts";
import { type Fault, faultName } from "../src/board/fault.ts";
import { faultSites } from "../src/board/fault-sites.ts";
import { spiceDeck } from "../src/meter/deck.ts";
import type { ColdCheck } from "../src/meter/prediction.ts";
import { makePredictor } from "../src/meter/predictor.ts";
import { DEFAULT_METER } from "../src/meter/settings.ts";
import { runDecks } from "./ngspice.ts";

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
  /** difference as a part of the bound: 1 is just outside */
  readonly miss: number;
}

/** A small seeded generator (Park & Miller 1988), so that a sample can be repeated. */
export function seeded(seed: number): () => number {
  let state = (seed % 2147483646) + 1;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

/** Healthy and every single fault of the board. */
export function singleFaults(board: Board): readonly (readonly Fault[])[] {
  const faults: (readonly Fault[])[] = [[]];
  for (const part of board.parts.values())
    for (const site of faultSites(part))
      for (const mode of site.modes)
        faults.push([{ of: "part", part: part.ref, junction: site.junction, mode, value: null }]);
  return faults;
}

/** Two different nets; where `reading` is asked for, a pair whose healthy diode reading is not OL. */
function drawPair(
  nets: readonly string[],
  random: () => number,
  wanted: (red: string, black: string) => boolean,
): [string, string] {
  for (let tries = 0; ; tries++) {
    const red = nets[Math.floor(random() * nets.length)];
    const black = nets[Math.floor(random() * nets.length)];
    if (red !== black && (tries > 60 || wanted(red, black))) return [red, black];
  }
}

/** `perSet` checks of each fault set, modes in turn, at least half of the diode and ohms readings not OL. */
export function drawSamples(
  board: Board,
  faultSets: readonly (readonly Fault[])[],
  perSet: number,
  seed: number,
): Sample[] {
  const random = seeded(seed);
  const predictor = makePredictor(board, BARE_BENCH, DEFAULT_METER);
  const nets = [...board.nets.keys()];
  const modes = ["diode", "ohms", "diode", "farads", "diode", "continuity"] as const;
  const samples: Sample[] = [];
  let drawn = 0;
  for (const faults of faultSets) {
    for (let i = 0; i < perSet; i++) {
      const mode = modes[drawn++ % modes.length];
      const mustRead = random() < 0.7;
      const wanted = (red: string, black: string): boolean => {
        if (!mustRead) return true;
        const reading = predictor.predict({ mode, red, black }, faults);
        return reading.solved && reading.shown !== "OL";
      };
      const [red, black] = drawPair(nets, random, wanted);
      samples.push({ check: { mode, red, black }, faults });
    }
  }
  return samples;
}

function missOf(sample: Sample, ours: number, theirs: number): number {
  const difference = Math.abs(ours - theirs);
  if (sample.check.seconds !== undefined)
    return difference / Math.max(BOUNDS.climbingShare * Math.abs(theirs), FLOORS.volts);
  if (sample.check.mode === "diode") return difference / BOUNDS.volts;
  const floor = sample.check.mode === "farads" ? FLOORS.farads : FLOORS.ohms;
  return difference / Math.max(BOUNDS.share * Math.abs(theirs), floor);
}

/** Predicts each sample and runs its deck. Nothing is dropped: a missing number counts as a miss without end. */
export async function compare(board: Board, samples: readonly Sample[]): Promise<Compared[]> {
  const predictor = makePredictor(board, BARE_BENCH, DEFAULT_METER);
  const decks = samples.map(({ check, faults }) =>
    spiceDeck(board, BARE_BENCH, DEFAULT_METER, check, faults),
  );
  const theirs = await runDecks(decks.map((deck) => (typeof deck === "string" ? deck : "no deck\n.end\n")));
  return samples.map((sample, index) => {
    const prediction = predictor.predict(sample.check, sample.faults);
    const ours = prediction.solved ? prediction.raw : null;
    const their = theirs[index];
    const miss = ours === null || their === null ? Number.POSITIVE_INFINITY : missOf(sample, ours, their);
    return { ...sample, ours, theirs: their, open: prediction.solved && prediction.shown === "OL", miss };
  });
}

/** One compared sample in a line. */
export function inWords(one: Compared): string {
  const { mode, red, black, seconds } = one.check;
  const faults = one.faults.map(faultName).join(",") || "healthy";
  const after = seconds === undefined ? "" : ` after ${seconds} s`;
  return `${mode}${after} ${red} to ${black}, ${faults}: ours ${one.ours}, ngspice ${one.theirs} (${one.miss.toFixed(2)} of the bound)`;
}
