/**
 * The diagnosis against an independent brute force on a board of 25 parts: every set of up to two faults, its prior worked
 * out again from the definition and its likelihood from plain sums, must carry the same log probability.
 */
import { expect, test } from "vitest";
import type { JobEvent, MeasureEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import { parseBoard } from "../board/parse-board.ts";
import { makePredictor } from "../meter/predictor.ts";
import { DEFAULT_METER } from "../meter/settings.ts";
import type { FaultPrior, PriorTable } from "../priors/fault-prior.ts";
import { priorTable } from "../priors/prior-table.ts";
import { believe } from "./believe.ts";
import { AudibleMemory, coldEvidence, coldGroups } from "./cold-evidence.ts";
import { datedFaults } from "./dated-faults.ts";
import { COMMON_NODES, COMMON_WEIGHTS } from "./evidence.ts";
import { scoreSet } from "./search.ts";
import { TWENTY_FIVE_PARTS } from "./twenty-five-parts.fixture.ts";

const parsed = parseBoard(TWENTY_FIVE_PARTS);
if (!parsed.ok) throw new Error(parsed.problem);
const board = parsed.value;
const priors = priorTable(board, "surge", "dead");
const LOG: JobEvent[] = [
  { do: "measure", mode: "dcv", red: "PBUS", black: "NBUS", reading: 0.4 },
  { do: "measure", mode: "diode", red: "PBUS", black: "NBUS", reading: "OL" },
  { do: "measure", mode: "diode", red: "NBUS", black: "SW", reading: 0.002 },
  { do: "measure", mode: "diode", red: "SW", black: "PBUS", reading: 0.44 },
  { do: "measure", mode: "ohms", red: "GATE", black: "NBUS", reading: 30 },
  { do: "measure", mode: "continuity", red: "L_IN", black: "L_F", reading: "silent" },
  { do: "measure", mode: "diode", red: "V5", black: "NBUS", reading: "junction" },
];
const timeline = (() => {
  const folded = foldLog(board, [], LOG);
  if (!folded.ok) throw new Error(folded.problem);
  return folded.value;
})();
const predictor = makePredictor(board, timeline.now, DEFAULT_METER);

/** ln P(exactly these failed), written out for none, one and two faults. */
function priorAgain(table: PriorTable, set: readonly number[]): number {
  const rows = table.faults;
  const siteRate = new Map<string, number>();
  for (const row of rows) siteRate.set(row.site, (siteRate.get(row.site) ?? 0) + row.rate);
  const none = [...siteRate.values()].reduce((product, rate) => product * Math.exp(-rate), 1);
  const siteOf = (row: FaultPrior): number => siteRate.get(row.site) ?? 0;
  const first = (row: FaultPrior): number =>
    ((1 - Math.exp(-siteOf(row))) * row.rate) / siteOf(row) / Math.exp(-siteOf(row));
  const knock = (from: number, toSite: string): number =>
    table.knockOns
      .filter(
        (edge) => edge.parent === from && rows[edge.child].site === toSite && rows[from].site !== toSite,
      )
      .reduce((sum, edge) => sum + edge.rate, 0);
  const quiet = (from: number, except: readonly string[]): number =>
    table.knockOns
      .filter(
        (edge) =>
          edge.parent === from &&
          !except.includes(rows[edge.child].site) &&
          rows[from].site !== rows[edge.child].site,
      )
      .reduce((product, edge) => product * Math.exp(-edge.rate), 1);
  if (set.length === 0) return Math.log(none);
  const [a, b] = set.map((index) => rows[index]);
  if (set.length === 1) return Math.log(none * first(a) * quiet(set[0], [a.site]));
  const except = [a.site, b.site];
  const follows = (parent: number, child: number): number => {
    const toSite = knock(parent, rows[child].site);
    const toFault = table.knockOns
      .filter((edge) => edge.parent === parent && edge.child === child)
      .reduce((sum, edge) => sum + edge.rate, 0);
    return toSite === 0 ? 0 : ((1 - Math.exp(-toSite)) * toFault) / toSite;
  };
  const both = none * first(a) * first(b) * quiet(set[0], except) * quiet(set[1], except);
  const aThenB = none * first(a) * quiet(set[0], except) * follows(set[0], set[1]);
  const bThenA = none * first(b) * quiet(set[1], except) * follows(set[1], set[0]);
  return Math.log(both + aThenB + bThenA);
}

test(`every set of up to two faults on a board of ${board.parts.size} parts has the log probability of the brute force`, () => {
  expect(board.parts.size).toBe(25);
  const universe = datedFaults(board, timeline, priors, []);
  const groups = coldGroups(timeline);
  const evidence = groups.map((group) =>
    coldEvidence(group, predictor, priors.faults, new AudibleMemory(), new Set()),
  );
  const logWeights = Float64Array.from(COMMON_WEIGHTS, Math.log);
  let compared = 0;
  let worst = 0;
  const count = priors.faults.length;
  const compare = (set: readonly number[]): void => {
    const likelihoods = groups.map((_, i) => evidence[i].logLikelihood([...set].sort((x, y) => x - y)));
    const likelihood = COMMON_NODES.reduce(
      (sum, _, z) =>
        sum + COMMON_WEIGHTS[z] * Math.exp(likelihoods.reduce((log, vector) => log + vector[z], 0)),
      0,
    );
    const again = priorAgain(priors, set) + Math.log(likelihood);
    const scored = scoreSet(universe, evidence, logWeights, set).score;
    if (again === Number.NEGATIVE_INFINITY && scored === Number.NEGATIVE_INFINITY) return;
    worst = Math.max(worst, Math.abs(again - scored));
    compared++;
  };
  compare([]);
  for (let a = 0; a < count; a++) compare([a]);
  for (let a = 0; a < count; a++)
    for (let b = 0; b < a; b++) if (priors.faults[a].site !== priors.faults[b].site) compare([b, a]);
  expect(compared).toBeGreaterThan((count * (count - 1)) / 3);
  expect(worst).toBeLessThan(1e-6);
}, 240_000);

test("the search puts the part that the brute force finds most probable first", () => {
  const belief = believe({
    board,
    timeline,
    cause: "surge",
    priors,
    absent: [],
    predictorFor: (bench) => makePredictor(board, bench, DEFAULT_METER),
    memory: new AudibleMemory(),
  });
  const evidence = coldGroups(timeline).map((group) =>
    coldEvidence(group, predictor, priors.faults, new AudibleMemory(), new Set()),
  );
  const universe = datedFaults(board, timeline, priors, []);
  const logWeights = Float64Array.from(COMMON_WEIGHTS, Math.log);
  const byPart = new Map<string, number>();
  let total = 0;
  for (let a = 0; a < priors.faults.length; a++)
    for (let b = 0; b <= a; b++) {
      const weight = Math.exp(scoreSet(universe, evidence, logWeights, a === b ? [a] : [a, b]).score);
      total += weight;
      for (const part of new Set([priors.faults[a].part, priors.faults[b].part]))
        byPart.set(part, (byPart.get(part) ?? 0) + weight);
    }
  const [best] = [...byPart].sort(([, x], [, y]) => y - x);
  expect(belief.suspects[0].part).toBe(best[0]);
  expect(belief.suspects[0].probability).toBeCloseTo(best[1] / total, 1);
});
