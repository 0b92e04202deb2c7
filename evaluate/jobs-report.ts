/** The figures of many trials, in words and as a page with plots. */
import { bootstrap, type Interval, meanOf, shareInterval } from "./intervals.ts";
import type { Outcome } from "./players/course.ts";
import { PLAYERS, type PlayerName, type Trial } from "./trial.ts";

export interface PlayerFigures {
  readonly player: PlayerName;
  readonly profit: Interval;
  readonly minutes: Interval;
  readonly partsMoney: Interval;
  readonly falselyRepaired: Interval;
  readonly givenUpRepairable: Interval;
  readonly lifts: Interval;
  readonly powerUps: Interval;
}

export interface Figures {
  readonly trials: number;
  readonly players: readonly PlayerFigures[];
  /** share of the way from the walk with inference to the all-knowing player */
  readonly wayToAllKnowing: Interval;
  /** of boards that the all-knowing player gives up: the engine's minutes and parts as shares of the plain walk's */
  readonly unrepairable: { readonly boards: number; readonly minutes: Interval; readonly parts: Interval };
}

export function figuresOf(trials: readonly Trial[]): Figures {
  const of = (player: PlayerName, value: (outcome: Outcome) => number) =>
    trials.map(({ outcomes }) => value(outcomes[player]));
  const mean = (values: readonly number[]) => bootstrap(trials.length, (which) => meanOf(values, which));
  const share = (values: readonly number[]) =>
    shareInterval(values.filter((one) => one > 0).length, values.length);
  const players = PLAYERS.map(
    (player): PlayerFigures => ({
      player,
      profit: mean(of(player, ({ profit }) => profit)),
      minutes: mean(of(player, ({ minutes }) => minutes)),
      partsMoney: mean(of(player, ({ partsMoney }) => partsMoney)),
      falselyRepaired: share(of(player, (outcome) => Number(outcome.falselyRepaired))),
      givenUpRepairable: share(of(player, (outcome) => Number(outcome.givenUpRepairable))),
      lifts: mean(of(player, ({ lifts }) => lifts)),
      powerUps: mean(of(player, ({ powerUps }) => powerUps)),
    }),
  );
  const [engine, walk, best] = (["engine", "walk with inference", "all-knowing"] as const).map((player) =>
    of(player, ({ profit }) => profit),
  );
  const wayToAllKnowing = bootstrap(trials.length, (which) => {
    const from = meanOf(walk, which);
    return (meanOf(engine, which) - from) / (meanOf(best, which) - from);
  });
  return { trials: trials.length, players, wayToAllKnowing, unrepairable: unrepairable(trials) };
}

function unrepairable(trials: readonly Trial[]): Figures["unrepairable"] {
  const lost = trials.filter(({ outcomes }) => {
    const { verdict } = outcomes["all-knowing"];
    return verdict === "not-repairable" || verdict === "not-economic";
  });
  const ratio = (value: (outcome: Outcome) => number): Interval =>
    lost.length === 0
      ? { value: Number.NaN, low: Number.NaN, high: Number.NaN }
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

const text = ({ value, low, high }: Interval, digits = 1): string =>
  `${value.toFixed(digits)} (${low.toFixed(digits)} to ${high.toFixed(digits)})`;
const percent = ({ value, low, high }: Interval): string =>
  `${(100 * value).toFixed(1)} % (${(100 * low).toFixed(1)} to ${(100 * high).toFixed(1)})`;

/** One line a player, then the ratios; 90 % intervals in brackets. */
export function figuresText(figures: Figures): string {
  const rows = figures.players.map(
    (one) =>
      `${one.player.padEnd(20)} profit ${text(one.profit)}, minutes ${text(one.minutes)}, parts ${text(one.partsMoney)}, ` +
      `repaired but never ran ${percent(one.falselyRepaired)}, given up though curable ${percent(one.givenUpRepairable)}, ` +
      `lifts ${one.lifts.value.toFixed(1)}, power-ups ${one.powerUps.value.toFixed(1)}`,
  );
  const { unrepairable: lost } = figures;
  return [
    `${figures.trials} boards, 90 % intervals`,
    ...rows,
    `of the way from the walk with inference to the all-knowing player: ${text(figures.wayToAllKnowing, 2)}`,
    lost.boards === 0
      ? "no board was beyond repair"
      : `${lost.boards} boards that are beyond repair: the engine takes ${text(lost.minutes, 2)} of the plain walk's minutes and ${text(lost.parts, 2)} of its parts money`,
  ].join("\n");
}

const escaped = (words: string): string => words.replace(/[&<>"]/g, (c) => `&#${c.charCodeAt(0)};`);

/** A page that stands by itself: figures by board and cause, where the gap to the all-knowing player goes, board by board. */
export function jobsPage(trials: readonly Trial[], title: string): string {
  const groups = [
    ["all boards", trials] as const,
    ...grouped(trials, ({ board }) => board),
    ...grouped(trials, ({ cause }) => cause),
  ];
  const rows = groups.map(([name, some]) => groupRow(name, figuresOf(some)));
  const byGap = [...trials].sort((a, b) => gapOf(b) - gapOf(a));
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><title>${escaped(title)}</title>
<meta name="viewport" content="width=device-width, initial-scale=1">
<style>
body { font: 15px/1.45 system-ui, sans-serif; margin: 24px; color: #14201b; background: #fbfcf8 }
table { border-collapse: collapse; margin-block: 12px 28px } td, th { padding: 4px 10px; text-align: left; border-bottom: 1px solid #ccd4cd }
td.n { text-align: right; font-variant-numeric: tabular-nums } svg text { font-size: 12px }
</style></head><body>
<h1>${escaped(title)}</h1>
<pre>${escaped(figuresText(figuresOf(trials)))}</pre>
<h2>Mean profit, 90 % interval</h2>
${profitPlot(groups.map(([name, some]) => [name, figuresOf(some)] as const))}
<table><tr><th>boards</th><th>count</th>${PLAYERS.map((player) => `<th>${player}</th>`).join("")}<th>of the way</th></tr>
${rows.join("\n")}</table>
<h2>Where the gap to the all-knowing player goes</h2>
<p>Each board can be played again on the bench: a practice job on that board with that cause and practice number.</p>
<table><tr><th>board</th><th>cause</th><th>number</th><th>gap</th><th>engine</th><th>minutes</th><th>parts</th><th>came with</th><th>left</th></tr>
${byGap
  .map(({ board, cause, seed, outcomes: { engine } }, at) => {
    const cells = [engine.verdict, engine.minutes.toFixed(0), engine.partsMoney.toFixed(0)];
    return `<tr><td>${board}</td><td>${cause}</td><td class="n">${seed}</td><td class="n">${gapOf(byGap[at]).toFixed(0)}</td>${cells.map((cell) => `<td class="n">${cell}</td>`).join("")}<td>${escaped(engine.arrived.join(" "))}</td><td>${escaped(engine.left.join(" "))}</td></tr>`;
  })
  .join("\n")}</table>
</body></html>
`;
}

function gapOf({ outcomes }: Trial): number {
  return outcomes["all-knowing"].profit - outcomes.engine.profit;
}

function grouped(trials: readonly Trial[], key: (trial: Trial) => string): (readonly [string, Trial[]])[] {
  const groups = new Map<string, Trial[]>();
  for (const trial of trials) groups.set(key(trial), [...(groups.get(key(trial)) ?? []), trial]);
  return [...groups];
}

function groupRow(name: string, figures: Figures): string {
  const cells = figures.players.map(({ profit }) => `<td class="n">${text(profit, 0)}</td>`).join("");
  return `<tr><td>${escaped(name)}</td><td class="n">${figures.trials}</td>${cells}<td class="n">${text(figures.wayToAllKnowing, 2)}</td></tr>`;
}

const PLOT = { width: 900, left: 220, row: 16, gap: 14 } as const;
const COLOURS: Readonly<Record<PlayerName, string>> = {
  engine: "#0b5a41",
  walk: "#9a5b13",
  "walk with inference": "#5b6f9a",
  "all-knowing": "#777",
};

/** One bar of interval and a dot of mean for each player and group. */
function profitPlot(groups: readonly (readonly [string, Figures])[]): string {
  const all = groups.flatMap(([, { players }]) => players.map(({ profit }) => profit));
  const least = Math.min(0, ...all.map(({ low }) => low));
  const most = Math.max(...all.map(({ high }) => high));
  const x = (value: number) => PLOT.left + ((value - least) / (most - least)) * (PLOT.width - PLOT.left - 20);
  const height = groups.length * (PLAYERS.length * PLOT.row + PLOT.gap) + 20;
  const marks = groups.flatMap(([name, { players }], g) => {
    const top = 10 + g * (PLAYERS.length * PLOT.row + PLOT.gap);
    return [
      `<text x="0" y="${top + 12}">${escaped(name)}</text>`,
      ...players.map(({ player, profit }, p) => {
        const y = top + p * PLOT.row + 8;
        const colour = COLOURS[player];
        return `<line x1="${x(profit.low)}" x2="${x(profit.high)}" y1="${y}" y2="${y}" stroke="${colour}" stroke-width="3"/><circle cx="${x(profit.value)}" cy="${y}" r="5" fill="${colour}"><title>${player}: ${text(profit, 0)}</title></circle>`;
      }),
    ];
  });
  const legend = PLAYERS.map(
    (player, p) =>
      `<text x="${PLOT.left + 160 * p}" y="${height - 4}" fill="${COLOURS[player]}">${player}</text>`,
  );
  return `<svg role="img" aria-label="Mean profit by player" width="${PLOT.width}" height="${height}"><line x1="${x(0)}" x2="${x(0)}" y1="0" y2="${height - 20}" stroke="#ccd4cd"/>${[...marks, ...legend].join("")}</svg>`;
}
