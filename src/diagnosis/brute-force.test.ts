/**
 * The diagnosis against an independent brute force on a board of 25 parts: every set of up to two faults, its prior worked
 * out again from the definition and its likelihood from plain sums, must carry the same log probability.
 */
import { expect, test } from "vitest";
import type { JobEvent, MeasureEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import type { Fault } from "../board/fault.ts";
import { parseBoard } from "../board/parse-board.ts";
import { OTHER_METERS } from "../meter/other-meters.ts";
import type { ColdCheck, MeterReading } from "../meter/prediction.ts";
import { makePredictor, sharingPredictors } from "../meter/predictor.ts";
import { DEFAULT_METER } from "../meter/settings.ts";
import { StateMemory } from "../meter/state-memory.ts";
import type { FaultPrior, PriorTable } from "../priors/fault-prior.ts";
import { priorTable } from "../priors/prior-table.ts";
import { believe } from "./believe.ts";
import { coldEvidence, coldGroups, EvidenceMemory } from "./cold-evidence.ts";
import { datedFaults } from "./dated-faults.ts";
import { COMMON_POINTS, COMMON_WEIGHTS } from "./evidence.ts";
import { READING_MODEL } from "./reading-model.ts";
import { scoreSet } from "./scored-set.ts";
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
  { do: "measure", mode: "ohms", red: "GATE", black: "NBUS", reading: 10_050 },
  { do: "measure", mode: "continuity", red: "L_IN", black: "L_F", reading: "silent" },
  { do: "measure", mode: "diode", red: "V5", black: "NBUS", reading: "junction" },
];
const timeline = (() => {
  const folded = foldLog(board, [], LOG);
  if (!folded.ok) throw new Error(folded.problem);
  return folded.value;
})();
// Room for every state: two solves of one circuit from different starts agree to some nanovolts, and this test to less.
const predictor = sharingPredictors(undefined, new StateMemory(1e9))(board, timeline.now, DEFAULT_METER);

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

/** P(X > x), by Simpson's rule: slow and plain. */
function tailAgain(x: number): number {
  if (x < 0) return 1 - tailAgain(-x);
  if (x > 12) return 0;
  const steps = 2000;
  const h = 14 / steps;
  const density = (t: number): number => Math.exp(-t * t * 0.5) / Math.sqrt(2 * Math.PI);
  let sum = density(x) + density(x + 14);
  for (let k = 1; k < steps; k++) sum += (k % 2 === 1 ? 4 : 2) * density(x + k * h);
  return (sum * h) / 3;
}
const tails = new Map<number, number>();
function tailKept(x: number): number {
  const kept = tails.get(x) ?? tailAgain(x);
  tails.set(x, kept);
  return kept;
}

/** Square of how far the unknown resistance of these faults spreads a reading: by one deviation of ln(ohms). */
function unknownOhmsAgain(check: ColdCheck, set: readonly number[]): number {
  const at = (volts: number): number =>
    check.mode === "diode" ? volts : Math.log(Math.max(0, volts) + READING_MODEL.contactOhms);
  const reading = (faults: readonly Fault[]): number => {
    const prediction = predictor.predict(check, faults);
    return prediction.solved ? at(prediction.raw) : Number.NaN;
  };
  return set.reduce((sum, index) => {
    const { fault, spreadLn } = priors.faults[index];
    if (spreadLn === 0 || (fault.mode !== "short" && fault.mode !== "leaky")) return sum;
    const ohms = fault.value ?? (fault.mode === "short" ? 0.2 : 1000);
    if (check.mode === "diode" && ohms <= 1) return sum;
    const others = set.filter((other) => other !== index).map((other) => priors.faults[other].fault);
    const higher = reading([...others, { ...fault, value: ohms * Math.exp(spreadLn) }]);
    return sum + (higher - reading([...others, fault])) ** 2;
  }, 0);
}

/** P(reading | prediction, common unknown z), worked out again from what `reading-model.ts` says of it. */
function likelihoodAgain(event: MeasureEvent, p: MeterReading, z: number, unknownOhms: number): number {
  const M = READING_MODEL;
  const diode = event.mode === "diode";
  const contact = M.contactOhms;
  const at = (x: number): number => (diode ? x : Math.log(Math.max(0, x) + contact));
  const unit = diode ? 1 : Math.max(0, p.raw) + OTHER_METERS.leadOhms + contact;
  const shared = M.commonShared * p.common;
  const cell = (COMMON_POINTS[1] - COMMON_POINTS[0]) * shared;
  const parts = Math.sqrt(Math.max(0, p.spread ** 2 - shared ** 2) + (cell * cell) / 12) / unit;
  const deviation = diode
    ? Math.sqrt(parts ** 2 + M.diodeVolts ** 2 + (M.diodeShare * p.raw) ** 2 + unknownOhms)
    : Math.sqrt(
        parts ** 2 + M.ohmsModelLn ** 2 + ((0.5 * contact) / unit) ** 2 + M.ohmsShare ** 2 + unknownOhms,
      );
  const mean = at(p.centre) + (shared / unit) * z;
  const [zero, high] = diode ? [M.diodeZeroVolts, M.diodeHighVolts] : [at(M.ohmsZero), at(M.ohmsHigh)];
  const limit = diode ? 2.0 : at(M.ohmsLimit);
  const lowest = diode ? -M.diodeZeroVolts : at(0);
  const between = (low: number, up: number): number =>
    tailKept((low - mean) / deviation) - tailKept((up - mean) / deviation);
  let good: number;
  let slip: number;
  if (typeof event.reading === "number") {
    const x = at(event.reading);
    good = Math.exp(-(((x - mean) / deviation) ** 2) / 2) / deviation / Math.sqrt(2 * Math.PI);
    slip = (x <= zero ? M.slipZero / (zero - lowest) : 0) + M.slipAnywhere / (limit - lowest);
  } else if (event.reading === "OL") {
    good = tailKept((limit - mean) / deviation);
    if (diode)
      good = (1 - M.lowLimitShare) * good + M.lowLimitShare * tailKept((M.lowLimitVolts - mean) / deviation);
    slip = M.slipOpen;
  } else if (event.reading === "silent") {
    good = tailKept((at(DEFAULT_METER.beepOhms) - mean) / deviation);
    slip = M.slipOpen + (M.slipAnywhere * (limit - at(DEFAULT_METER.beepOhms))) / (limit - lowest);
  } else {
    good = between(zero, high);
    slip = (M.slipAnywhere * (high - zero)) / (limit - lowest);
  }
  return (1 - M.slipShare) * good + M.slipShare * slip;
}

/** ln P(set, readings) of every set of up to two faults, by brute force. */
const scores = new Map<string, number>();

test(`every set of up to two faults on a board of ${board.parts.size} parts has the log probability of the brute force`, () => {
  expect(board.parts.size).toBe(25);
  const universe = datedFaults(board, timeline, priors, []);
  const groups = coldGroups(timeline);
  const evidence = groups.map((group) =>
    coldEvidence(group, predictor, priors.faults, new EvidenceMemory(), new Set()),
  );
  const logWeights = Float64Array.from(COMMON_WEIGHTS, Math.log);
  let compared = 0;
  let worst = 0;
  const count = priors.faults.length;
  const compare = (set: readonly number[]): void => {
    const faults = set.map((index) => priors.faults[index].fault);
    const seen = groups.map((group) => {
      const prediction = predictor.predict(group.check, faults);
      if (!prediction.solved || group.entry.event.do !== "measure") throw new Error("no prediction");
      return { event: group.entry.event, prediction, unknownOhms: unknownOhmsAgain(group.check, set) };
    });
    const likelihood = COMMON_POINTS.reduce(
      (sum, z, k) =>
        sum +
        COMMON_WEIGHTS[k] *
          seen.reduce(
            (product, { event, prediction, unknownOhms }) =>
              product * likelihoodAgain(event, prediction, z, unknownOhms),
            1,
          ),
      0,
    );
    const again = priorAgain(priors, set) + Math.log(likelihood);
    const scored = scoreSet(universe, evidence, logWeights, set).score;
    if (again === Number.NEGATIVE_INFINITY && scored === Number.NEGATIVE_INFINITY) return;
    worst = Math.max(worst, Math.abs(again - scored));
    scores.set(set.join(","), again);
    compared++;
  };
  compare([]);
  for (let a = 0; a < count; a++) compare([a]);
  for (let a = 0; a < count; a++)
    for (let b = 0; b < a; b++) if (priors.faults[a].site !== priors.faults[b].site) compare([b, a]);
  expect(compared).toBeGreaterThan((count * (count - 1)) / 3);
  expect(worst).toBeLessThan(1e-6);
}, 240_000);

test("the search finds for itself the best set that the brute force finds", () => {
  const belief = believe({
    board,
    timeline,
    cause: "surge",
    symptom: "dead",
    priors,
    absent: [],
    predictorFor: (bench) => makePredictor(board, bench, DEFAULT_METER),
    memory: new EvidenceMemory(),
  });
  const found = belief.explanations.map(({ faults }) => faults.map(({ fault }) => fault).join(","));
  const [best] = [...scores].sort(([, x], [, y]) => y - x);
  expect(found).toContain(best[0]);
  // Of the sets of up to two faults, the search ranks as the brute force does.
  const small = found.filter((set) => scores.has(set)).map((set) => scores.get(set) ?? Number.NaN);
  expect(small[0]).toBe(best[1]);
});
