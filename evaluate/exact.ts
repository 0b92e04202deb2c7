/**
 * `node scripts/bundled.mjs evaluate/exact.ts [cases] [first seed] [depth]`: the search against exact enumeration. Each case is the
 * greenhouse drive with forty faults drawn from its prior table, one to three of them present, and eight noisy readings of the
 * sweep and of the places nearest the faults. Enumerated are all sets of up to `depth` faults (three; four for a deeper look).
 * Compared: the best set, and the probability of every part.
 */
import { readFileSync } from "node:fs";
import type { JobEvent } from "../src/bench/event.ts";
import { foldLog } from "../src/bench/fold.ts";
import type { Board } from "../src/board/board.ts";
import { parseBoard } from "../src/board/parse-board.ts";
import { believe } from "../src/diagnosis/believe.ts";
import { commonLogWeights } from "../src/diagnosis/calibration.ts";
import { coldEvidence, coldGroups, EvidenceMemory } from "../src/diagnosis/cold-evidence.ts";
import { datedFaults } from "../src/diagnosis/dated-faults.ts";
import { DEAD_THOUGH_HEALTHY } from "../src/diagnosis/posterior.ts";
import { DEFAULT_LIMITS, ExplanationSearch, scoreSet } from "../src/diagnosis/search.ts";
import { makePredictor } from "../src/meter/predictor.ts";
import { DEFAULT_METER } from "../src/meter/settings.ts";
import { logSumExp } from "../src/numeric/log-space.ts";
import { noisyReading } from "../src/practice/meter-noise.ts";
import { drawOne, normalDeviate, type Random, seededRandom } from "../src/practice/seeded-random.ts";
import type { PriorTable } from "../src/priors/fault-prior.ts";
import { priorTable } from "../src/priors/prior-table.ts";
import { bringsIn } from "../src/priors/symptom-effects.ts";
import { shareInterval } from "./intervals.ts";
import { sweepChecks } from "./sweep-checks.ts";

const FAULTS = 40;
const READINGS = 8;
const NO_BENCH = { lifted: new Set<string>(), off: new Set<string>(), clips: [], powered: false };

/** Forty rows of the table, drawn by their rates without repeats, and the knock-ons among them. */
function someOf(table: PriorTable, random: Random): PriorTable {
  const rows: number[] = [];
  const weights = table.faults.map(({ rate }) => rate);
  while (rows.length < FAULTS) {
    const row = drawOne(
      table.faults.map((_, i) => i),
      weights,
      random,
    );
    if (row === null) break;
    rows.push(row);
    weights[row] = 0;
  }
  rows.sort((a, b) => a - b);
  const place = new Map(rows.map((row, at) => [row, at]));
  const knockOns = table.knockOns.flatMap((knock) => {
    const [parent, child] = [place.get(knock.parent), place.get(knock.child)];
    return parent === undefined || child === undefined ? [] : [{ ...knock, parent, child }];
  });
  const pick = <T>(list: readonly T[]) => rows.map((row) => list[row]);
  return { ...table, faults: pick(table.faults), breaksAtPower: pick(table.breaksAtPower), knockOns };
}

/** One to three faults of different sites, by their rates. */
function hide(table: PriorTable, random: Random): readonly number[] {
  const weights = table.faults.map(({ rate }) => rate);
  const hidden: number[] = [];
  const count = 1 + Math.floor(3 * random());
  while (hidden.length < count) {
    const row = drawOne(
      table.faults.map((_, i) => i),
      weights,
      random,
    );
    if (row === null) break;
    hidden.push(row);
    table.faults.forEach(({ site }, i) => {
      if (site === table.faults[row].site) weights[i] = 0;
    });
  }
  return hidden;
}

interface Compared {
  readonly sameBest: boolean;
  readonly worstPart: number;
}

function compareCase(board: Board, whole: PriorTable, seed: number, depth: number): Compared {
  const random = seededRandom(seed, "exact");
  const table = someOf(whole, random);
  const hidden = hide(table, random).map((row) => table.faults[row].fault);
  const predictor = makePredictor(board, NO_BENCH, DEFAULT_METER);
  const meterError = normalDeviate(random);
  const log = sweepChecks(board)
    .slice(0, READINGS)
    .flatMap(({ mode, red, black }): JobEvent[] => {
      const predicted = predictor.predict({ mode, red, black }, hidden);
      if (!predicted.solved) return [];
      const reading = noisyReading(mode, predicted, DEFAULT_METER, meterError, random);
      return [{ do: "measure", mode, red, black, reading }];
    });
  const timeline = foldLog(board, [], log);
  if (!timeline.ok) throw new Error(timeline.problem);

  const universe = datedFaults(board, timeline.value, table, []);
  const memory = new EvidenceMemory();
  const evidence = coldGroups(timeline.value).map((group) =>
    coldEvidence(group, predictor, table.faults, memory, new Set()),
  );
  const weights = commonLogWeights(timeline.value);
  const accounts = bringsIn(board, "dead", table.faults);
  const sets: (readonly number[])[] = [];
  const logs: number[] = [];
  let best: { readonly set: readonly number[]; readonly score: number } = { set: [], score: -1e300 };
  const grow = (set: readonly number[]): void => {
    const { score } = scoreSet(universe, evidence, weights, set);
    if (score > best.score) best = { set, score };
    const dead = set.some((element) => accounts[universe.fault[element]] === 1);
    sets.push(set);
    logs.push(score + (dead ? 0 : Math.log(DEAD_THOUGH_HEALTHY)));
    if (set.length === depth) return;
    for (let e = (set.at(-1) ?? -1) + 1; e < universe.fault.length; e++)
      if (!set.some((member) => universe.site[member] === universe.site[e])) grow([...set, e]);
  };
  grow([]);
  const total = logSumExp(logs);
  const exact = new Map<string, number>();
  sets.forEach((set, i) => {
    for (const part of new Set(set.map((element) => table.faults[universe.fault[element]].part)))
      exact.set(part, (exact.get(part) ?? 0) + Math.exp(logs[i] - total));
  });

  const [found] = new ExplanationSearch(universe, evidence, weights, DEFAULT_LIMITS).run();
  const belief = believe({
    ...{ board, timeline: timeline.value, cause: "surge", symptom: "dead", priors: table, absent: [] },
    predictorFor: () => predictor,
    memory,
  });
  const worstPart = Math.max(
    ...belief.suspects.map(({ part, probability }) => Math.abs(probability - (exact.get(part) ?? 0))),
  );
  return { sameBest: found.score > best.score - 1e-9, worstPart };
}

const cases = Number(process.argv[2] ?? 200);
const first = Number(process.argv[3] ?? 1);
const depth = Number(process.argv[4] ?? 3);
const parsed = parseBoard(JSON.parse(readFileSync("boards/greenhouse-fan-drive.json", "utf8")));
if (!parsed.ok) throw new Error(parsed.problem);
const whole = priorTable(parsed.value, "surge", "dead");
const compared: Compared[] = [];
for (let seed = first; seed < first + cases; seed++) {
  const one = compareCase(parsed.value, whole, seed, depth);
  compared.push(one);
  if (!one.sameBest || one.worstPart > 0.05)
    console.log(
      `case ${seed}: best set ${one.sameBest ? "found" : "MISSED"}, a part off by ${one.worstPart.toFixed(3)}`,
    );
}
const { value, low, high } = shareInterval(
  compared.filter(({ sameBest }) => sameBest).length,
  compared.length,
);
const errors = compared.map(({ worstPart }) => worstPart).sort((a, b) => a - b);
console.log(
  `${cases} cases of ${FAULTS} faults, ${depth} deep: best set found in ${(100 * value).toFixed(1)} % (${(100 * low).toFixed(1)} to ${(100 * high).toFixed(1)}); ` +
    `largest error of a part's probability: median ${errors[Math.floor(errors.length / 2)].toFixed(4)}, 95 % ${errors[Math.floor(0.95 * errors.length)].toFixed(3)}, worst ${errors.at(-1)?.toFixed(3)}`,
);
