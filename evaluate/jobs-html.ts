/** The page of whole jobs: it stands by itself, without script. */
import type { Board } from "../src/board/board.ts";
import { type Figures, figuresOf, gapOf, grouped, isBroken } from "./jobs-figures.ts";
import { escaped, type Group, gapPlot, profitPlot } from "./jobs-plots.ts";
import { jobsText, span } from "./jobs-text.ts";
import { believedWords, lossWords, storyOf } from "./story.ts";
import { timeText } from "./time-spent.ts";
import { PLAYERS, type Trial } from "./trial.ts";

/** The worst trials are told step by step. */
const TOLD = 20;

export function worstOf(trials: readonly Trial[]): readonly Trial[] {
  return [...trials]
    .filter((trial) => !isBroken(trial))
    .sort((a, b) => gapOf(b).total - gapOf(a).total)
    .slice(0, TOLD);
}

/** Name of the job file that replays a trial, beside the page. */
export function caseFile({ board, seed }: Trial): string {
  return `cases/${board}-${seed}.json`;
}

const STYLE = `
body { font: 15px/1.45 system-ui, sans-serif; margin: 24px auto; max-width: 1180px; padding-inline: 20px; color: #14201b; background: #fbfcf8 }
pre { font-size: 12px; overflow-x: auto; background: #f1f4ee; padding: 12px }
table { border-collapse: collapse; margin-block: 8px 24px } td, th { padding: 3px 10px; text-align: left; vertical-align: top; border-bottom: 1px solid #d8dfd8 }
td.n { text-align: right; font-variant-numeric: tabular-nums; white-space: nowrap } svg { max-width: 100%; height: auto } svg text { font-size: 12px }
details { margin-block: 10px; border-left: 3px solid #c9d3ca; padding-left: 12px } summary { cursor: pointer; font-weight: 600 } .why { color: #55635b } .turn { color: #9c3414; font-weight: 600 }
.warn { background: #fff0d6; padding: 8px 12px }`;

/** @param boards - by id, for the words of the steps */
export function jobsPage(all: readonly Trial[], boards: ReadonlyMap<string, Board>, title: string): string {
  const trials = all.filter((trial) => !isBroken(trial));
  const own = trials.some(({ readings }) => readings === "own solver");
  const byBoard = groupsOf(trials, ({ board }) => board);
  const byCause = groupsOf(trials, ({ cause }) => cause);
  const groups: readonly Group[] = [["all boards", figuresOf(trials)], ...byBoard, ...byCause];
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><title>${escaped(title)}</title>
<meta name="viewport" content="width=device-width, initial-scale=1">
<style>${STYLE}
</style></head><body>
<h1>${escaped(title)}</h1>
${own ? '<p class="warn">Readings from our own solver are among these: they show the plan, not the truth of the model.</p>' : ""}
<pre>${escaped(`${jobsText(all)}\n${timeText(trials, boards)}`)}</pre>
<h2>Where the gap to the all-knowing player goes, money a board</h2>
${gapPlot(groups)}
<h2>Mean profit, 90 % interval</h2>
${profitPlot(groups)}
<table><tr><th>boards</th><th>count</th>${PLAYERS.map((player) => `<th>${player}</th>`).join("")}<th>of the way</th></tr>
${groups.map(groupRow).join("\n")}</table>
<h2>The worst ${TOLD}, step by step</h2>
<p>Each is a job file that every command takes: <code>faultwright bench reports/cases/BOARD-SEED.json</code>. Minutes, then the step and
what came of it; where a proposal begins, the probability that the engine gave the true faults.</p>
${worstOf(trials)
  .map((trial) => told(trial, boards.get(trial.board)))
  .join("\n")}
<h2>All boards, the largest gap first</h2>
${allTable(trials)}
</body></html>
`;
}

function groupsOf(trials: readonly Trial[], key: (trial: Trial) => string): readonly Group[] {
  return grouped(trials, key).map(([name, some]): Group => [name, figuresOf(some)]);
}

function groupRow([name, figures]: readonly [string, Figures]): string {
  const cells = figures.players.map(({ profit }) => `<td class="n">${span(profit, 0)}</td>`).join("");
  return `<tr><td>${escaped(name)}</td><td class="n">${figures.trials}</td>${cells}<td class="n">${span(figures.wayToAllKnowing, 2)}</td></tr>`;
}

function told(trial: Trial, board: Board | undefined): string {
  const { cause, symptom, seed, arrived, mattering, differences, outcomes } = trial;
  const truth = [
    `came with ${arrived.join(" ") || "nothing"}`,
    `to be cured: ${mattering.join(" ") || "nothing"}`,
    `left: ${outcomes.engine.left.join(" ") || "nothing"}`,
    ...(differences.length > 0 ? [`unlike its file: ${differences.join("; ")}`] : []),
    ...(outcomes.engine.goodReplaced.length > 0
      ? [`good parts replaced: ${outcomes.engine.goodReplaced.join(" ")}`]
      : []),
  ];
  const others = PLAYERS.map(
    (player) => `${player} ${outcomes[player].verdict} ${outcomes[player].profit.toFixed(0)}`,
  ).join(", ");
  const rows = (board === undefined ? [] : storyOf(trial, board)).map(
    ({ from, words, outcome, step, turn }) => {
      const belief =
        step === null
          ? ""
          : `<div class="${turn ? "turn" : "why"}">${turn ? "the truth lost credit: " : ""}${escaped(believedWords(step))}; outlook ${step.margin.toFixed(0)}, ends repaired ${(100 * step.repair).toFixed(0)} %</div>`;
      return `<tr><td class="n">${from.toFixed(1)}</td><td>${escaped(words)}${belief}</td><td>${escaped(outcome)}</td></tr>`;
    },
  );
  return `<details><summary>${escaped(`${trial.board} ${seed}, ${cause}, ${symptom}: ${lossWords(trial)}`)}</summary>
<p>${truth.map(escaped).join("<br>")}<br>${escaped(others)}<br><a href="${caseFile(trial)}">${caseFile(trial)}</a></p>
<table>${rows.join("")}</table></details>`;
}

function allTable(trials: readonly Trial[]): string {
  const rows = [...trials]
    .sort((a, b) => gapOf(b).total - gapOf(a).total)
    .map((trial) => {
      const { engine } = trial.outcomes;
      const verdict = engine.falselyRepaired ? `${engine.verdict}, but ${engine.state}` : engine.verdict;
      const numbers = [gapOf(trial).total, engine.minutes, engine.partsMoney].map(
        (value) => `<td class="n">${value.toFixed(0)}</td>`,
      );
      const unlike = trial.differences.length > 0 ? " *" : "";
      return `<tr><td>${trial.board}${unlike}</td><td class="n">${trial.seed}</td><td>${trial.cause}</td><td>${verdict}</td><td>${trial.outcomes["all-knowing"].verdict}</td>${numbers.join("")}<td>${escaped(trial.arrived.join(" "))}</td><td>${escaped(engine.left.join(" "))}</td></tr>`;
    });
  return `<table><tr><th>board (* unlike its file)</th><th>seed</th><th>cause</th><th>engine</th><th>all-knowing</th><th>gap</th><th>minutes</th><th>parts</th><th>came with</th><th>left</th></tr>
${rows.join("\n")}</table>`;
}
