/** The figures of many trials, each with a 90 % interval by drawing the boards again. */
import { bootstrap, type Interval, meanOf, shareInterval } from "./intervals.ts";
import type { Outcome } from "./players/course.ts";
import { PLAYERS, type PlayerName, type Trial } from "./trial.ts";

export interface PlayerFigures {
  readonly player: PlayerName;
  readonly profit: Interval;
  readonly minutes: Interval;
  readonly partsMoney: Interval;
  /** closed as repaired or sound: it does not run; it runs and comes back */
  readonly falseDead: Interval;
  readonly falseWeak: Interval;
  readonly wrongVerdicts: Interval;
  readonly repairableGivenUp: Interval;
  readonly ranOut: Interval;
  /** money a board for parts of boards given up */
  readonly partsLost: Interval;
  readonly lifts: Interval;
  readonly powerUps: Interval;
  readonly secondTries: Interval;
  /** good parts replaced a board: where the board is as its file says, and where it is not */
  readonly goodReplacedAsFile: Interval;
  readonly goodReplacedOther: Interval;
}

/** Where the profit of the all-knowing player goes, money a board. */
export interface Gap {
  readonly total: Interval;
  /** income lost on repairable boards given up or never finished, and on boards falsely closed; then time and parts on all */
  readonly givenUp: Interval;
  readonly falselyClosed: Interval;
  readonly minutes: Interval;
  readonly parts: Interval;
}

export interface Figures {
  readonly trials: number;
  readonly players: readonly PlayerFigures[];
  /** share of the way from the walk with inference to the all-knowing player */
  readonly wayToAllKnowing: Interval;
  /** of boards that the all-knowing player gives up: the engine's minutes and parts as shares of the plain walk's */
  readonly unrepairable: { readonly boards: number; readonly minutes: Interval; readonly parts: Interval };
  readonly gap: Gap;
}

const NONE: Interval = { value: Number.NaN, low: Number.NaN, high: Number.NaN };
const mended = ({ verdict }: Outcome): boolean => verdict === "repaired" || verdict === "no-fault";

/** Does it pay to repair this board, for one who knows what is wrong? */
export function isRepairable({ outcomes }: Trial): boolean {
  return mended(outcomes["all-knowing"]);
}

/** Given up, or never finished, though it pays to repair it. */
export function givenUp(trial: Trial, player: PlayerName): boolean {
  return isRepairable(trial) && !mended(trial.outcomes[player]);
}

/** The wrong verdict: a false `repaired` or `no-fault`, a repairable board given up, or none at all. */
export function isWrong(trial: Trial, player: PlayerName): boolean {
  const { falselyRepaired, verdict } = trial.outcomes[player];
  return falselyRepaired || givenUp(trial, player) || verdict === "ran out";
}

/** Trials in which the bench left a player without an answer and without another step. */
export function isBroken({ outcomes }: Trial): boolean {
  return PLAYERS.some((player) => outcomes[player].verdict === "broken");
}

/** @param trials - at least one, none of them broken */
export function figuresOf(trials: readonly Trial[]): Figures {
  const profits = (player: PlayerName) => trials.map(({ outcomes }) => outcomes[player].profit);
  const [engine, walk, best] = [profits("engine"), profits("walk with inference"), profits("all-knowing")];
  const wayToAllKnowing = bootstrap(trials.length, (which) => {
    const from = meanOf(walk, which);
    return (meanOf(engine, which) - from) / (meanOf(best, which) - from);
  });
  return {
    trials: trials.length,
    players: PLAYERS.map((player) => playerFigures(trials, player)),
    wayToAllKnowing,
    unrepairable: unrepairable(trials),
    gap: gapFigures(trials),
  };
}

function playerFigures(trials: readonly Trial[], player: PlayerName): PlayerFigures {
  const outcomes = trials.map((trial) => trial.outcomes[player]);
  const mean = (value: (outcome: Outcome) => number, of: readonly Outcome[] = outcomes): Interval => {
    const values = of.map(value);
    return of.length === 0 ? NONE : bootstrap(of.length, (which) => meanOf(values, which));
  };
  const share = (holds: (trial: Trial) => boolean): Interval =>
    shareInterval(trials.filter(holds).length, trials.length);
  const asFile = (same: boolean) =>
    trials
      .filter(({ differences }) => (differences.length === 0) === same)
      .map((one) => one.outcomes[player]);
  return {
    player,
    profit: mean(({ profit }) => profit),
    minutes: mean(({ minutes }) => minutes),
    partsMoney: mean(({ partsMoney }) => partsMoney),
    falseDead: share(({ outcomes: all }) => all[player].falselyRepaired && all[player].state === "dead"),
    falseWeak: share(({ outcomes: all }) => all[player].falselyRepaired && all[player].state === "weak"),
    wrongVerdicts: share((trial) => isWrong(trial, player)),
    repairableGivenUp: share((trial) => givenUp(trial, player)),
    ranOut: share(({ outcomes: all }) => all[player].verdict === "ran out"),
    partsLost: mean((outcome) => (mended(outcome) ? 0 : outcome.partsMoney)),
    lifts: mean(({ lifts }) => lifts),
    powerUps: mean(({ powerUps }) => powerUps),
    secondTries: mean(({ secondTries }) => secondTries),
    goodReplacedAsFile: mean(({ goodReplaced }) => goodReplaced.length, asFile(true)),
    goodReplacedOther: mean(({ goodReplaced }) => goodReplaced.length, asFile(false)),
  };
}

function unrepairable(trials: readonly Trial[]): Figures["unrepairable"] {
  const lost = trials.filter((trial) => !isRepairable(trial));
  const ratio = (value: (outcome: Outcome) => number): Interval =>
    lost.length === 0
      ? NONE
      : bootstrap(lost.length, (which) => {
          const sum = (player: PlayerName) =>
            which.reduce((total, i) => total + value(lost[i].outcomes[player]), 0);
          return sum("engine") / Math.max(sum("walk"), 1e-9);
        });
  return {
    boards: lost.length,
    minutes: ratio(({ minutes }) => minutes),
    parts: ratio(({ partsMoney }) => partsMoney),
  };
}

/** One trial's gap to the all-knowing player in its four pieces; they add up to the total. */
export function gapOf({ outcomes }: Trial): Readonly<Record<keyof Gap, number>> {
  const { engine, "all-knowing": best } = outcomes;
  const income = best.income - engine.income;
  const parts = engine.partsMoney - best.partsMoney;
  const total = best.profit - engine.profit;
  return {
    total,
    givenUp: engine.falselyRepaired ? 0 : income,
    falselyClosed: engine.falselyRepaired ? income : 0,
    minutes: total - income - parts,
    parts,
  };
}

function gapFigures(trials: readonly Trial[]): Gap {
  const gaps = trials.map(gapOf);
  const mean = (piece: keyof Gap): Interval => {
    const values = gaps.map((gap) => gap[piece]);
    return bootstrap(values.length, (which) => meanOf(values, which));
  };
  return {
    total: mean("total"),
    givenUp: mean("givenUp"),
    falselyClosed: mean("falselyClosed"),
    minutes: mean("minutes"),
    parts: mean("parts"),
  };
}

/** Trials by a word of theirs, in the order of their first appearance. */
export function grouped(
  trials: readonly Trial[],
  key: (trial: Trial) => string,
): readonly (readonly [string, readonly Trial[]])[] {
  const groups = new Map<string, Trial[]>();
  for (const trial of trials) groups.set(key(trial), [...(groups.get(key(trial)) ?? []), trial]);
  return [...groups].sort(([a], [b]) => (a < b ? -1 : 1));
}
