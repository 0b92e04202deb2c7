/** A broken board of the oracle: what lies on the bench, which differs from what the engine is told of it. */
import type { Board } from "../../src/board/board.ts";
import type { Fault } from "../../src/board/fault.ts";
import { drawOne, type Random, seededRandom } from "../../src/practice/seeded-random.ts";
import type { Cause, Symptom } from "../../src/priors/cause.ts";
import type { FaultPrior } from "../../src/priors/fault-prior.ts";
import { neighbouringNets } from "../../src/priors/net-neighbours.ts";
import { priorTable } from "../../src/priors/prior-table.ts";
import { differentBoard } from "./board-differences.ts";
import { logNormal, logUniform, uniform } from "./draw.ts";
import { DIFFERENCES, RATE_SPREAD_LN, ROOT_FAULTS, SLIPS } from "./fault-table.ts";
import { faultOhms } from "./fault-values.ts";
import type { Room } from "./inside.ts";
import { cascade } from "./oracle-cascades.ts";
import type { SurfaceLeak } from "./oracle-deck.ts";
import { drawMeter, type OracleMeter } from "./oracle-meter.ts";
import { MOISTURE, SETTLED_SECONDS } from "./part-table.ts";
import { type Condition, SYMPTOM_CHANCES } from "./power-table.ts";
import { conditionOf } from "./power-truth.ts";
import { railsWith } from "./supply-truth.ts";

export interface OracleBoard {
  /** what the engine is told */
  readonly file: Board;
  /** what lies on the bench: on a third of the boards it is not as the file says */
  readonly board: Board;
  readonly differences: readonly string[];
  readonly cause: Cause;
  /** what the customer says, from what the board really does */
  readonly symptom: Symptom;
  readonly condition: Condition;
  readonly seed: number;
  /** the true faults with their true values, on parts that the file knows */
  readonly faults: readonly Fault[];
  /** dirt and moisture that is no fault by itself */
  readonly leaks: readonly SurfaceLeak[];
  readonly room: Room;
  readonly meter: OracleMeter;
  readonly slipShare: number;
}

/** A room and a bench are between these (degC). */
const CELSIUS = [10, 40] as const;
const MOST_TRIES = 300;

/** How much more often than the engine's default this board's world breaks that way. */
function rateFactor(board: Board, prior: FaultPrior, seed: number): number {
  const part = prior.fault.of === "part" ? board.parts.get(prior.fault.part) : undefined;
  const S = RATE_SPREAD_LN;
  const factor = (salt: string, sigma: number): number => logNormal(seededRandom(seed, salt), sigma);
  return (
    factor(`rule ${part?.kind ?? "nets"} ${prior.fault.mode}`, S.rule) *
    factor(`stage ${part?.stage ?? "none"}`, S.stage) *
    factor(`weak ${prior.part}`, S.part)
  );
}

/**
 * Rates of first faults on this board: the engine's defaults for a dead board, each bent by this oracle board's own factors, and
 * scaled to one fault expected.
 */
export function bentRates(file: Board, cause: Cause, seed: number): ReadonlyMap<FaultPrior, number> {
  const factors = new Map<string, number>();
  const bent = priorsOf(file, cause).map((prior): [FaultPrior, number] => {
    const factor = factors.get(prior.reportAs) ?? rateFactor(file, prior, seed);
    factors.set(prior.reportAs, factor);
    return [prior, prior.rate * factor];
  });
  const sum = bent.reduce((all, [, rate]) => all + rate, 0);
  return new Map(bent.map(([prior, rate]) => [prior, rate / sum]));
}

/** First faults, `expected` of them on average; one a junction at most. */
export function drawRoots(
  board: Board,
  rates: ReadonlyMap<FaultPrior, number>,
  expected: number,
  random: Random,
): readonly Fault[] {
  const bySite = new Map<string, FaultPrior[]>();
  for (const prior of rates.keys()) bySite.set(prior.site, [...(bySite.get(prior.site) ?? []), prior]);
  return [...bySite.values()].flatMap((rows) => {
    const weights = rows.map((prior) => expected * (rates.get(prior) ?? 0));
    const sum = weights.reduce((all, weight) => all + weight, 0);
    if (random() >= 1 - Math.exp(-sum)) return [];
    const row = drawOne(rows, weights, random);
    return row === null ? [] : [faultOhms(board, { ...row.fault, value: null }, random)];
  });
}

const tables = new WeakMap<Board, Map<Cause, readonly FaultPrior[]>>();

/** The engine's default rates for a dead board of this cause, made once a board. */
function priorsOf(file: Board, cause: Cause): readonly FaultPrior[] {
  const ofFile = tables.get(file) ?? new Map<Cause, readonly FaultPrior[]>();
  tables.set(file, ofFile);
  const priors = ofFile.get(cause) ?? priorTable(file, cause, "dead").faults;
  ofFile.set(cause, priors);
  return priors;
}

/** Faults on arrival: drawn again until the board does something that somebody brings it in for. */
function drawFaults(file: Board, board: Board, cause: Cause, seed: number): readonly Fault[] {
  const random = seededRandom(seed, "arrival");
  const rates = bentRates(file, cause, seed);
  const expected = ROOT_FAULTS * logNormal(seededRandom(seed, "total"), RATE_SPREAD_LN.total);
  let best: readonly Fault[] = [];
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const roots = drawRoots(file, rates, expected, random);
    if (roots.length === 0) continue;
    const all = [...roots, ...cascade(file, cause, roots, random)].filter(
      (fault) => fault.of === "nets" || board.parts.has(fault.part),
    );
    if (all.length === 0) continue;
    best = all;
    if (conditionOf(board, all) !== "works") return all;
  }
  return best;
}

function drawLeaks(file: Board, cause: Cause, seed: number): readonly SurfaceLeak[] {
  const row = cause === "water" ? MOISTURE.water : cause === "insects" ? MOISTURE.insects : MOISTURE.other;
  const random = seededRandom(seed, "moisture");
  return neighbouringNets(file).flatMap(({ nets }) => {
    const ohms = Math.max(row.leastOhms, row.medianOhms * logNormal(random, row.sigmaLn));
    return random() < row.share ? [{ nets, ohms }] : [];
  });
}

/** Most draws of how a board differs from its file. */
const MOST_DIFFERENCES = 20;

/** A board unlike its file that worked before it broke: none that lacks what its supply cannot start without. */
function workingDifference(
  file: Board,
  seed: number,
): { readonly board: Board; readonly words: readonly string[] } {
  for (let draw = 0; draw < MOST_DIFFERENCES; draw++) {
    const found = differentBoard(
      file,
      seededRandom(seed, draw === 0 ? "differences" : `differences ${draw}`),
    );
    if (railsWith(found.board, []) === "works") return found;
  }
  return { board: file, words: [] };
}

/** Boards already drawn: the same file, cause and seed give the same board. */
export function oracleBoard(file: Board, cause: Cause, seed: number): OracleBoard {
  const chance = seededRandom(seed, "board");
  const differs = chance() < DIFFERENCES.boards;
  const celsius = uniform(chance, CELSIUS);
  const settledSeconds = logUniform(chance, SETTLED_SECONDS);
  const slipShare = uniform(chance, SLIPS.share);
  const { board, words } = differs ? workingDifference(file, seed) : { board: file, words: [] };
  const faults = drawFaults(file, board, cause, seed);
  const condition = conditionOf(board, faults);
  const symptoms = Object.entries(SYMPTOM_CHANCES[condition]) as [Symptom, number][];
  const symptom = drawOne(
    symptoms.map(([word]) => word),
    symptoms.map(([, share]) => share),
    chance,
  );
  return {
    file,
    board,
    differences: words,
    cause,
    symptom: symptom ?? "other",
    condition,
    seed,
    faults,
    leaks: drawLeaks(file, cause, seed),
    room: { seed, celsius, settledSeconds },
    meter: drawMeter(seed),
    slipShare,
  };
}
