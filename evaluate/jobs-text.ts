/** The figures of whole jobs in lines of text; 90 % intervals in brackets. */
import type { Interval } from "./intervals.ts";
import { type Figures, figuresOf, grouped, isBroken, type PlayerFigures } from "./jobs-figures.ts";
import type { Trial } from "./trial.ts";

export const span = ({ value, low, high }: Interval, digits = 1): string =>
  Number.isNaN(value)
    ? "none"
    : `${value.toFixed(digits)} (${low.toFixed(digits)} to ${high.toFixed(digits)})`;
const percent = ({ value, low, high }: Interval): string =>
  `${(100 * value).toFixed(1)} % (${(100 * low).toFixed(1)} to ${(100 * high).toFixed(1)})`;

const ROWS: readonly (readonly [string, (one: PlayerFigures) => string])[] = [
  ["profit", ({ profit }) => span(profit)],
  ["minutes", ({ minutes }) => span(minutes)],
  ["parts money", ({ partsMoney }) => span(partsMoney)],
  ["closed, but dead", ({ falseDead }) => percent(falseDead)],
  ["closed, but weak", ({ falseWeak }) => percent(falseWeak)],
  ["wrong verdicts", ({ wrongVerdicts }) => percent(wrongVerdicts)],
  ["repairable given up", ({ repairableGivenUp }) => percent(repairableGivenUp)],
  ["out of steps", ({ ranOut }) => percent(ranOut)],
  ["parts for boards given up", ({ partsLost }) => span(partsLost, 2)],
  ["lifts and removals", ({ lifts }) => span(lifts)],
  ["power-ups", ({ powerUps }) => span(powerUps)],
  ["second tries", ({ secondTries }) => span(secondTries, 2)],
  ["good parts replaced", ({ goodReplacedAsFile }) => span(goodReplacedAsFile, 2)],
  ["  on boards unlike file", ({ goodReplacedOther }) => span(goodReplacedOther, 2)],
];
const CELL = 26;

/** The figures, the ratios with their bars, and where the gap goes. */
export function figuresText(figures: Figures): string {
  const line = (title: string, cells: readonly string[]) =>
    [title.padEnd(CELL), ...cells.map((cell) => cell.padEnd(CELL))].join("").trimEnd();
  const { unrepairable: lost, gap } = figures;
  return [
    `${figures.trials} boards, 90 % intervals`,
    line(
      "",
      figures.players.map(({ player }) => player),
    ),
    ...ROWS.map(([title, cell]) => line(title, figures.players.map(cell))),
    `of the way from the walk with inference to the all-knowing player: ${span(figures.wayToAllKnowing, 2)} (bar 0.60, lower limit above 0.5)`,
    lost.boards === 0
      ? "no board was beyond repair"
      : `${lost.boards} boards that it does not pay to repair: the engine takes ${span(lost.minutes, 2)} of the plain walk's minutes (bar 0.33) and ${span(lost.parts, 2)} of its parts money (bar 0.10)`,
    `gap to the all-knowing player, money a board: ${span(gap.total)} = repairable boards given up ${span(gap.givenUp)} + falsely closed ${span(gap.falselyClosed)} + time ${span(gap.minutes)} + parts ${span(gap.parts)}`,
  ].join("\n");
}

function quantile(sorted: readonly number[], share: number): number {
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}

/** Everything that is printed of some trials: what they are, the figures, by board and by cause, and the time of proposals. */
export function jobsText(all: readonly Trial[]): string {
  const broken = all.filter(isBroken);
  const trials = all.filter((trial) => !isBroken(trial));
  if (trials.length === 0) return "no trial was played to its end";
  const readings = [...new Set(trials.map((trial) => trial.readings))].join(" and ");
  const line = (name: string, some: readonly Trial[]) => {
    const { wayToAllKnowing, gap, players } = figuresOf(some);
    const profits = players.map(({ player, profit }) => `${player} ${span(profit, 0)}`).join(", ");
    return `${name.padEnd(24)} ${String(some.length).padStart(4)}: ${profits}; of the way ${span(wayToAllKnowing, 2)}; gap ${gap.total.value.toFixed(0)} = given up ${gap.givenUp.value.toFixed(0)} + falsely closed ${gap.falselyClosed.value.toFixed(0)} + time ${gap.minutes.value.toFixed(0)} + parts ${gap.parts.value.toFixed(0)}`;
  };
  const waits = trials.flatMap(({ proposals }) => proposals).sort((a, b) => a - b);
  const slips = trials.reduce((sum, { outcomes }) => sum + outcomes.engine.slips, 0);
  const unanswered = trials.reduce((sum, { outcomes }) => sum + outcomes.engine.unanswered.length, 0);
  return [
    `readings from the ${readings}${readings === "oracle" ? "" : ": OUR OWN SOLVER shows the plan, not the truth of the model"}`,
    figuresText(figuresOf(trials)),
    ...grouped(trials, ({ board }) => board).map(([name, some]) => line(name, some)),
    ...grouped(trials, ({ cause }) => cause).map(([name, some]) => line(name, some)),
    ...grouped(trials, ({ differences }) =>
      differences.length === 0 ? "as the file says" : "unlike the file",
    ).map(([name, some]) => line(name, some)),
    `reading to proposal, processor time: median ${quantile(waits, 0.5).toFixed(0)} ms, 95 % ${quantile(waits, 0.95).toFixed(0)} ms`,
    `the engine met ${slips} slips and ${unanswered} checks without an answer`,
    ...broken.map(
      ({ board, seed, outcomes }) =>
        `broken, not counted: ${board} ${seed}: ${Object.entries(outcomes)
          .filter(([, { verdict }]) => verdict === "broken")
          .map(([player, { unanswered: why }]) => `${player}: ${why.at(-1) ?? "no step left"}`)
          .join("; ")}`,
    ),
  ].join("\n");
}
