/** Which checks of which fault sets the solver is compared on: seeded, drawn one by one, so that a whole run fits in little memory. */

import type { ColdMode } from "../src/bench/event.ts";
import type { Board } from "../src/board/board.ts";
import type { Fault, PartFault } from "../src/board/fault.ts";
import { faultSites } from "../src/board/fault-sites.ts";
import type { ColdCheck, Predictor } from "../src/meter/prediction.ts";
import { makePredictor } from "../src/meter/predictor.ts";
import { DEFAULT_METER } from "../src/meter/settings.ts";
import { BARE_BENCH, type Sample } from "./agreement.ts";

/** What a sample is compared as: a settled mode, or any mode but farads while capacitors charge. */
export const COLUMNS = ["diode", "ohms", "continuity", "farads", "climbing"] as const;
export type Column = (typeof COLUMNS)[number];

/** How often each is drawn for a fault set; diode as often as a technician reaches for it. */
const DRAWN: readonly Column[] = ["diode", "diode", "ohms", "continuity", "farads", "climbing"];
const CLIMBING_MODES: readonly ColdMode[] = ["diode", "ohms", "continuity"];
/** Seconds after touching: while most capacitors still charge, and what the job file calls `climbing`. */
const CLIMBING_SECONDS: readonly number[] = [0.5, 2];
/** Share of pairs that are drawn again until they read, so that far more than half of the diode readings are not OL. */
const MUST_READ = 0.75;
/** Share of the checks of a fault with a probe on a net of its part: pairs from anywhere mostly do not see it. */
const AT_THE_PART = 0.5;
/** Draws after which any pair will do. */
const MOST_TRIES = 80;

/** A small seeded generator (Park & Miller 1988), so that a sample can be repeated. */
export function seeded(seed: number): () => number {
  let state = (seed % 2147483646) + 1;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

function oneOf<T>(random: () => number, list: readonly T[]): T {
  return list[Math.floor(random() * list.length)];
}

/** Every single fault of every fault site of the board, at its nominal value. */
export function singleFaults(board: Board): readonly PartFault[] {
  return [...board.parts.values()].flatMap((part) =>
    faultSites(part).flatMap((site) =>
      site.modes.map((mode) => ({
        of: "part" as const,
        part: part.ref,
        junction: site.junction,
        mode,
        value: null,
      })),
    ),
  );
}

/** `count` seeded pairs of single faults at two different sites. */
export function faultPairs(board: Board, count: number, seed: number): readonly (readonly Fault[])[] {
  const random = seeded(seed);
  const singles = singleFaults(board);
  const pairs: (readonly Fault[])[] = [];
  while (pairs.length < count) {
    const [one, other] = [oneOf(random, singles), oneOf(random, singles)];
    if (one.part !== other.part || one.junction !== other.junction) pairs.push([one, other]);
  }
  return pairs;
}

function checkOf(column: Column, random: () => number, red: string, black: string): ColdCheck {
  if (column !== "climbing") return { mode: column, red, black };
  return {
    mode: oneOf(random, CLIMBING_MODES),
    red,
    black,
    seconds: oneOf(random, CLIMBING_SECONDS),
  };
}

class PairDrawer {
  readonly #predictor: Predictor;
  readonly #nets: readonly string[];
  readonly #random: () => number;

  constructor(board: Board, random: () => number) {
    this.#predictor = makePredictor(board, BARE_BENCH, DEFAULT_METER);
    this.#nets = [...board.nets.keys()];
    this.#random = random;
  }

  /** Two different nets, one of them of `near` where given; mostly a pair that reads in diode mode one way. */
  draw(faults: readonly Fault[], near: readonly string[], eitherWay: boolean): [string, string] {
    const mustRead = this.#random() < MUST_READ;
    for (let tries = 0; ; tries++) {
      let [red, black] = [oneOf(this.#random, this.#nets), oneOf(this.#random, this.#nets)];
      if (near.length > 0 && this.#random() < 0.5) red = oneOf(this.#random, near);
      else if (near.length > 0) black = oneOf(this.#random, near);
      if (red === black) continue;
      if (!mustRead || tries > MOST_TRIES || this.#reads(red, black, faults)) return [red, black];
      if (eitherWay && this.#reads(black, red, faults)) return [red, black];
    }
  }

  #reads(red: string, black: string, faults: readonly Fault[]): boolean {
    const reading = this.#predictor.predict({ mode: "diode", red, black }, faults);
    return reading.solved && reading.shown !== "OL";
  }
}

/** The healthy board: `pairs` different pairs of nets, each both ways and in every column. */
export function* healthySamples(board: Board, pairs: number, seed: number): Generator<Sample> {
  const random = seeded(seed);
  const drawer = new PairDrawer(board, random);
  const drawn = new Set<string>();
  while (drawn.size < pairs) {
    const [red, black] = drawer.draw([], [], true);
    const key = [red, black].sort().join(" ");
    if (drawn.has(key)) continue;
    drawn.add(key);
    for (const column of COLUMNS) {
      const check = checkOf(column, random, red, black);
      yield { check, faults: [] };
      yield { check: { ...check, red: black, black: red }, faults: [] };
    }
  }
}

/** `perSet` checks of each fault set, columns drawn by chance, half of them at a part that has failed. */
export function* faultSamples(
  board: Board,
  sets: readonly (readonly Fault[])[],
  perSet: number,
  seed: number,
): Generator<Sample> {
  const random = seeded(seed);
  const drawer = new PairDrawer(board, random);
  for (const faults of sets) {
    const nets = faults.flatMap((fault) =>
      fault.of === "part" ? [...(board.parts.get(fault.part)?.pins.values() ?? [])] : fault.nets,
    );
    for (let i = 0; i < perSet; i++) {
      const column = oneOf(random, DRAWN);
      const [red, black] = drawer.draw(faults, random() < AT_THE_PART ? nets : [], false);
      yield { check: checkOf(column, random, red, black), faults };
    }
  }
}

export function columnOf({ check }: Sample): Column {
  if (check.seconds !== undefined) return "climbing";
  return COLUMNS.find((column) => column === check.mode) ?? "diode";
}
