/**
 * `node scripts/bundled.mjs evaluate/exact.ts [cases] [first seed] [depth]`: the search against exact enumeration. Each case is a
 * shipped board, in turn, with forty faults drawn from its prior table, one to three of them present, and eight noisy readings
 * out of the twelve of the sweep. Enumerated are all sets of up to `depth` faults (four, one more than are ever present).
 *
 * What is compared is what the engine claims. It lists *cores*: sets in which each fault is heard by some reading given the others.
 * What no reading could have shown stands beside a core unlisted. So each enumerated set is reduced, silent fault by silent fault,
 * to the cores it stands for (two, where either of two faults hides the other), and a core's exact weight is the sum of them.
 *
 * - best set: the engine's first explanation has the largest exact weight (within a tie, and to the last digit);
 * - of the search alone: among the cores it lists is the one with the best joint score of all, silent faults left aside;
 * - the probability of every part, as it is reported, against the sum over all sets.
 *
 * The reference stops at `depth` faults where the engine does not: how far the last step moved its own answer is printed too.
 */
import { readFileSync } from "node:fs";
import type { Board } from "../src/board/board.ts";
import { faultName } from "../src/board/fault.ts";
import { parseBoard } from "../src/board/parse-board.ts";
import { believe } from "../src/diagnosis/believe.ts";
import { commonLogWeights } from "../src/diagnosis/calibration.ts";
import { EvidenceMemory } from "../src/diagnosis/cold-evidence.ts";
import { datedFaults } from "../src/diagnosis/dated-faults.ts";
import { DEAD_THOUGH_HEALTHY } from "../src/diagnosis/silent-beside.ts";
import { logAdd, logSumExp } from "../src/numeric/log-space.ts";
import type { PriorTable } from "../src/priors/fault-prior.ts";
import { priorTable } from "../src/priors/prior-table.ts";
import { bringsIn } from "../src/priors/symptom-effects.ts";
import { Enumeration } from "./enumeration.ts";
import { drawCase, type ExactCase, FAULTS } from "./exact-case.ts";
import { shareInterval } from "./intervals.ts";

const BOARDS = [
  "greenhouse-fan-drive",
  "washing-machine-drive",
  "induction-hob",
  "small-frequency-drive",
  "small-frequency-drive-3ph",
  "outdoor-unit-inverter",
];
/** Weights closer than this are a tie (nats): both sides call likelihoods as close as this the same answer. */
const TIE = 0.05;
/** And this is rounding. */
const ROUNDING = 1e-6;
/** A case whose probabilities are further off than this is described. */
const WORTH_A_LOOK = 0.05;

interface Compared {
  readonly seed: number;
  readonly board: string;
  readonly hidden: readonly string[];
  /** nats by which the best-scored core that the engine lists falls short of the best of all */
  readonly searchLacks: number;
  /** nats by which the first explanation's weight falls short of the largest; infinite where it was not enumerated */
  readonly firstLacks: number;
  readonly worst: { readonly part: string; readonly engine: number; readonly exact: number };
  /** largest change of a part's exact probability by the last step of depth */
  readonly lastStep: number;
  readonly first: string;
  readonly best: string;
}

/** Chance of every part, over the sets of up to `depth` elements. */
function partChances(
  found: Enumeration,
  logs: readonly number[],
  depth: number,
  partOf: (element: number) => string,
): Map<string, number> {
  const within = found.sets.flatMap(({ set }, i) => (set.length <= depth ? [i] : []));
  const total = logSumExp(within.map((i) => logs[i]));
  const chances = new Map<string, number>();
  for (const i of within)
    for (const part of new Set(found.sets[i].set.map(partOf)))
      chances.set(part, (chances.get(part) ?? 0) + Math.exp(logs[i] - total));
  return chances;
}

function compareCase(one: ExactCase, seed: number, depth: number): Compared {
  const { board, table, predictor, timeline } = one;
  const universe = datedFaults(board, timeline, table, []);
  const weights = commonLogWeights(timeline);
  const found = new Enumeration(timeline, universe, predictor, table.faults, weights, depth);
  const accounts = bringsIn(board, "dead", table.faults);
  const logs = found.sets.map(({ set, score }) => {
    const missed = set.reduce(
      (none, element) => none * (1 - accounts[universe.fault[element]]),
      1 - DEAD_THOUGH_HEALTHY,
    );
    return score + Math.log(1 - missed);
  });

  const cores = found.cores();
  const weight = new Map<number, number>();
  cores.forEach((standsFor, i) => {
    for (const core of standsFor)
      weight.set(core, logAdd(weight.get(core) ?? Number.NEGATIVE_INFINITY, logs[i]));
  });
  const [best] = [...weight].sort(([, a], [, b]) => b - a);
  const bestScore = [...weight.keys()].reduce((most, core) => Math.max(most, found.sets[core].score), -1e300);

  const belief = believe({
    ...{ board, timeline, cause: "surge", symptom: "dead", priors: table, absent: [] },
    predictorFor: () => predictor,
    memory: new EvidenceMemory(),
  });
  const elementOf = (fault: number) => universe.fault.indexOf(fault);
  const listed = belief.explanations.map(({ faults }) =>
    found.indexOf(faults.map(({ fault }) => elementOf(fault)).sort((a, b) => a - b)),
  );
  const listedBest = listed.reduce<number>(
    (most, at) => (at === undefined ? most : Math.max(most, found.sets[at].score)),
    Number.NEGATIVE_INFINITY,
  );
  const first = listed[0] === undefined ? undefined : weight.get(listed[0]);

  const partOf = (element: number) => table.faults[universe.fault[element]].part;
  const exact = partChances(found, logs, depth, partOf);
  const before = partChances(found, logs, depth - 1, partOf);
  const [worst] = belief.suspects
    .map(({ part, probability }) => ({ part, engine: probability, exact: exact.get(part) ?? 0 }))
    .sort((a, b) => Math.abs(b.engine - b.exact) - Math.abs(a.engine - a.exact));
  const named = (set: readonly number[]) =>
    set.map((element) => faultName(table.faults[universe.fault[element]].fault)).join(" + ") || "nothing";
  const say = (set: readonly number[], log: number) =>
    `${named(set)} (${Math.exp(log - logSumExp(logs)).toFixed(3)})`;
  const [top] = belief.explanations;
  return {
    ...{ seed, board: board.name, hidden: one.hidden, worst },
    searchLacks: bestScore - listedBest,
    firstLacks: first === undefined ? Number.POSITIVE_INFINITY : best[1] - first,
    lastStep: Math.max(...[...exact].map(([part, chance]) => Math.abs(chance - (before.get(part) ?? 0)))),
    first: `${named(top.faults.map(({ fault }) => elementOf(fault)))} (claimed ${top.probability.toFixed(3)}, exact ${first === undefined ? "not a core" : Math.exp(first - logSumExp(logs)).toFixed(3)})`,
    best: say(found.sets[best[0]].set, best[1]),
  };
}

function describe(one: Compared): string {
  const { worst } = one;
  return [
    `case ${one.seed}, ${one.board}: ${one.hidden.join(" + ")}`,
    `  first ${one.first}`,
    `  exact ${one.best}; first lacks ${one.firstLacks.toFixed(4)}, search lacks ${one.searchLacks.toFixed(4)} nats`,
    `  ${worst.part}: said ${worst.engine.toFixed(3)}, exact ${worst.exact.toFixed(3)}; the last step of depth moved a part by ${one.lastStep.toFixed(3)}`,
  ].join("\n");
}

function share(compared: readonly Compared[], hit: (one: Compared) => boolean): string {
  const { value, low, high } = shareInterval(compared.filter(hit).length, compared.length);
  return `${(100 * value).toFixed(1)} % (${(100 * low).toFixed(1)} to ${(100 * high).toFixed(1)})`;
}

function spread(values: readonly number[]): string {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (part: number) => sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))];
  return `median ${at(0.5).toFixed(4)}, 95 % ${at(0.95).toFixed(3)}, worst ${at(1).toFixed(3)}`;
}

const cases = Number(process.argv[2] ?? 200);
const firstSeed = Number(process.argv[3] ?? 1);
const depth = Number(process.argv[4] ?? 4);
const boards = BOARDS.map((name): { board: Board; whole: PriorTable } => {
  const parsed = parseBoard(JSON.parse(readFileSync(`boards/${name}.json`, "utf8")));
  if (!parsed.ok) throw new Error(parsed.problem);
  return { board: parsed.value, whole: priorTable(parsed.value, "surge", "dead") };
});
const compared: Compared[] = [];
for (let seed = firstSeed; seed < firstSeed + cases; seed++) {
  const { board, whole } = boards[seed % boards.length];
  const one = compareCase(drawCase(board, whole, seed), seed, depth);
  compared.push(one);
  const off = Math.abs(one.worst.engine - one.worst.exact);
  const agrees = one.firstLacks <= ROUNDING && one.searchLacks <= ROUNDING && off <= WORTH_A_LOOK;
  console.log(
    agrees ? `case ${seed}: same, ${off.toFixed(3)} (last step ${one.lastStep.toFixed(3)})` : describe(one),
  );
}
const off = compared.map(({ worst }) => Math.abs(worst.engine - worst.exact));
console.log(
  [
    `${cases} cases of ${FAULTS} faults, ${depth} deep, seeds from ${firstSeed}`,
    `best set the same: ${share(compared, ({ firstLacks }) => firstLacks <= TIE)}; to the last digit: ${share(compared, ({ firstLacks }) => firstLacks <= ROUNDING)}`,
    `best-scored core listed: ${share(compared, ({ searchLacks }) => searchLacks <= TIE)}`,
    `largest error of a part's probability in a case: ${spread(off)}`,
    `the reference's own last step: ${spread(compared.map(({ lastStep }) => lastStep))}`,
  ].join("\n"),
);
