import type { Board } from "../board/board.ts";
import { shownWord } from "../diagnosis/shown-words.ts";
import { said } from "../messages/said.ts";
import type { MeterReading } from "../meter/prediction.ts";
import { ANYTHING_ELSE, type Outcome } from "./check-outcomes.ts";
import { byChance, faultChances, type NamedFault } from "./fault-chances.ts";
import { andList, brief, commaList, inOneBreath, orList, percent, semicolonList } from "./faults-in-words.ts";
import type { Hypotheses } from "./hypotheses.ts";
import { sightMeans } from "./power-sights.ts";
import type { Expectation } from "./proposal.ts";
import { type FindingStep, outcomeProbabilities } from "./steps.ts";
import { testedFaults } from "./tested-faults.ts";

/** How much likelier a fault must become to be named as what an outcome accuses, and how much less to be named as cleared. */
const ACCUSED_FACTOR = 1.3;
const CLEARED_FACTOR = 0.35;
const NAMED_LEAST = 0.04;
/** What was this likely is worth naming when an outcome takes it away; below the second it is cleared, above only less likely. */
const CLEARED_LEAST = 0.01;
const CLEARED_BELOW = 0.005;
/** Faults whose chances add up to more than this do not shut each other out. */
const TOGETHER = 1.02;
const MOST_NAMED = 3;

/**
 * What may come out of a step and what each outcome would mean, most probable first. Only faults that the step tests are spoken of.
 * @param good - what a good board would show; null where the step is no cold check
 */
export function expectations(
  step: FindingStep,
  hypotheses: Hypotheses,
  board: Board,
  good: MeterReading | null,
): readonly Expectation[] {
  const probabilities = outcomeProbabilities(step.shares, hypotheses);
  const tested = testedFaults(step, hypotheses);
  const before = faultChances(hypotheses, board, null, tested);
  const unit = unitOf(step);
  const { action } = step;
  return step.outcomes
    .map((outcome, o) => {
      const after = faultChances(hypotheses, board, step.shares[o], tested);
      const means = meaning(before, after, isGood(outcome, good));
      return {
        if: ifWords(outcome, unit),
        low: outcome.low,
        high: outcome.high,
        unit,
        probability: probabilities[o],
        means:
          (action.do === "power" ? sightMeans(action, outcome.word, means) : means) ?? said`tells little`,
      };
    })
    .filter(({ probability }) => probability >= 0.0005)
    .sort((a, b) => b.probability - a.probability || (a.low ?? -1) - (b.low ?? -1));
}

function isGood({ word, low, high }: Outcome, good: MeterReading | null): boolean {
  if (good === null || !good.solved) return false;
  if (typeof good.shown === "string" || word !== null) return word === good.shown;
  const shown = Math.abs(good.shown);
  return low !== null && high !== null && low <= shown && shown <= high;
}

function unitOf({ action }: FindingStep): string {
  if (action.do !== "measure") return "";
  if (action.mode === "ohms") return "ohm";
  if (action.mode === "farads") return "F";
  if (action.mode === "amps") return "A";
  return action.mode === "temperature" ? "" : "V";
}

/** A sight under power stands there as the log spells it, with what the meters then show behind `, then`. */
function ifWords({ word, low, high, then }: Outcome, unit: string): string {
  if (then !== undefined) return `${word}, then ${then}`;
  if (word !== null) return shownWord(word);
  return low === null || high === null ? ANYTHING_ELSE : said`${amount(low, unit)} to ${amount(high, unit)}`;
}

/** A quantity as the meter would show it. */
export function amount(value: number, unit: string): string {
  if (unit === "V") return `${value.toFixed(2)} V`;
  const scales: readonly (readonly [number, string])[] =
    unit === "F"
      ? [
          [1e-3, "m"],
          [1e-6, "u"],
          [1e-9, "n"],
          [1e-12, "p"],
        ]
      : [
          [1e6, "M"],
          [1e3, "k"],
          [1, ""],
        ];
  // A hand meter shows tenths of an ohm, no more.
  if (unit === "ohm" && value < 10) return `${Number(value.toFixed(1))} ohm`;
  const [scale, prefix] = scales.find(([size]) => value >= size) ?? scales[scales.length - 1];
  return `${Number((value / scale).toPrecision(3))} ${prefix}${unit}`;
}

/** Null where it tells little. */
function meaning(
  before: ReadonlyMap<NamedFault, number>,
  after: ReadonlyMap<NamedFault, number>,
  good: boolean,
): string | null {
  const accused = [...after]
    .filter(([fault, p]) => p >= NAMED_LEAST && p >= ACCUSED_FACTOR * (before.get(fault) ?? 0))
    .sort(byChance)
    .slice(0, MOST_NAMED);
  const less = [...before]
    .filter(([fault, p]) => p >= CLEARED_LEAST && (after.get(fault) ?? 0) <= CLEARED_FACTOR * p)
    .sort(byChance);
  const named = less.map(([fault]) => fault);
  if (accused.length > 0) {
    // Another fault may hide behind the one that shows: it is not cleared, only not needed to explain this.
    const instead = brief(named.slice(0, MOST_NAMED));
    return instead.length === 0
      ? accusation(accused)
      : said`${accusation(accused)}, rather than ${orList(instead)}`;
  }
  const left = (fault: NamedFault) => after.get(fault) ?? 0;
  const cleared = brief(named.filter((fault) => left(fault) <= CLEARED_BELOW).slice(0, MOST_NAMED), andList);
  const doubted = brief(named.filter((fault) => left(fault) > CLEARED_BELOW).slice(0, MOST_NAMED), andList);
  const told = good ? [said`as on a good board`] : [];
  if (cleared.length > 0) told.push(said`clears ${andList(cleared)}`);
  if (doubted.length > 0) told.push(said`less likely: ${andList(doubted)}`);
  return told.length > 0 ? semicolonList(told) : null;
}

/** Faults that shut each other out are joined by `or`; where they add up to more than one, several of them are there at once. */
function accusation(accused: readonly (readonly [NamedFault, number])[]): string {
  const together = accused.reduce((sum, [, p]) => sum + p, 0) > TOGETHER;
  const alike = new Map<string, NamedFault[]>();
  for (const [fault, p] of accused) {
    const chance = percent(p);
    alike.set(chance, [...(alike.get(chance) ?? []), fault]);
  }
  const named = [...alike].flatMap(([chance, faults]) => {
    // `a, b or c` in one breath says that one of them holds
    const words = together ? faults.map((fault) => fault.words) : inOneBreath(faults);
    return words.map((one) =>
      words.length === faults.length ? said`${one} (${chance})` : said`${one} (${chance} each)`,
    );
  });
  return together ? commaList(named) : orList(named);
}
