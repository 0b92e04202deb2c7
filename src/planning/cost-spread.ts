/** The ways in which a job may end from here, and their figures: what is expected, how far it spreads, and the money from which giving up is better. */

/** One way in which the job may end from here. */
export interface Ending {
  /** share of the belief; all endings and what nothing explains sum to one */
  readonly chance: number;
  readonly repaired: boolean;
  readonly minutes: number;
  readonly partsMoney: number;
  /** what power breaks on the way, on the average */
  readonly brokenMoney: number;
}

export interface CostToGo {
  readonly course: "repair" | "find out";
  readonly endings: readonly Ending[];
  readonly perMinute: number;
  /** what going on is worth to the planner: the margin expected, less the least margin wherever it ends repaired */
  readonly value: number;
  /** what stopping at once leaves, by the same weights */
  readonly stopValue: number;
  /** what a repaired board leaves above one given up, the least margin taken off */
  readonly gain: number;
  /** margin that the shop wants of a repaired board at least */
  readonly leastMargin: number;
}

/** Money of one ending, the hour counted. */
function costOf({ minutes, partsMoney, brokenMoney }: Ending, perMinute: number): number {
  return minutes * perMinute + partsMoney + brokenMoney;
}

/** A figure and the span in which it lies in eight of ten such jobs. */
export interface Spread {
  readonly mean: number;
  readonly low: number;
  readonly high: number;
}

const LOW = 0.1;
const HIGH = 0.9;

function spreadOf(endings: readonly Ending[], figure: (ending: Ending) => number): Spread {
  const ranked = endings
    .map((ending) => ({ chance: ending.chance, figure: figure(ending) }))
    .filter(({ chance }) => chance > 0)
    .sort((a, b) => a.figure - b.figure);
  const total = ranked.reduce((sum, { chance }) => sum + chance, 0);
  const at = (share: number): number => {
    let passed = 0;
    for (const one of ranked) {
      passed += one.chance;
      if (passed >= share * total) return one.figure;
    }
    return ranked.at(-1)?.figure ?? 0;
  };
  const mean = total > 0 ? ranked.reduce((sum, one) => sum + one.chance * one.figure, 0) / total : 0;
  return { mean, low: at(LOW), high: at(HIGH) };
}

/** Going on, in figures that fit a hand. */
export interface Outlook {
  /** until it is repaired or given up, by the plan */
  readonly minutes: Spread;
  readonly partsMoney: Spread;
  readonly money: Spread;
  readonly repairProbability: number;
  /** expected margin of going on */
  readonly margin: number;
  /** the money still to be spent from which giving up is better than going on */
  readonly stopLine: number;
}

/**
 * The figures of a cost to go. Going on is worth p of a repair's gain less its cost, so giving up is better once what is still expected
 * exceeds p times that gain: the planner's own comparison of going on with stopping, solved for the cost.
 */
export function outlookOf({ endings, perMinute, gain, value, leastMargin }: CostToGo): Outlook {
  const repairProbability = endings.reduce((sum, { chance, repaired }) => (repaired ? sum + chance : sum), 0);
  const total = endings.reduce((sum, { chance }) => sum + chance, 0);
  return {
    minutes: spreadOf(endings, ({ minutes }) => minutes),
    partsMoney: spreadOf(endings, ({ partsMoney }) => partsMoney),
    money: spreadOf(endings, (ending) => costOf(ending, perMinute)),
    repairProbability,
    margin: value + repairProbability * leastMargin,
    stopLine: total > 0 ? Math.max(0, (repairProbability / total) * gain) : 0,
  };
}
