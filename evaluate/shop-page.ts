/** Figures of the simulated shop as text, and as a page that stands by itself. */
import { escaped } from "./jobs-plots.ts";
import { FIGURES, type FiguresName, type ShopRun } from "./shop-run.ts";
import { calibrationOf, compared, type Score } from "./shop-score.ts";

/** Jobs over which a point of the curve is the mean, and in a block of the text. */
const WINDOW = 50;

const losses = (scores: readonly Score[] | undefined): number[] => (scores ?? []).map(({ loss }) => loss);
const mean = (values: readonly number[]): number =>
  values.reduce((sum, one) => sum + one, 0) / Math.max(1, values.length);

/** The first and the second half of the jobs by themselves: what is learnt shows in the second. */
function halves<T>(values: readonly T[]): readonly (readonly [string, readonly T[]])[] {
  const middle = Math.floor(values.length / 2);
  return [
    ["first half", values.slice(0, middle)],
    ["second half", values.slice(middle)],
  ];
}

function lossRows(scores: ReadonlyMap<FiguresName, readonly Score[]>): string[] {
  const tables = halves(scores.get("tables") ?? []);
  return FIGURES.flatMap((name) =>
    halves(scores.get(name) ?? []).map(([half, own], at) => {
      const against = compared(losses(own), losses(tables[at]?.[1]));
      const toTrue = mean(own.map((one) => one.toTrue));
      return `  ${name.padEnd(16)} ${half.padEnd(12)} ${mean(losses(own)).toFixed(3)} nats a job, to the tables ${against.mean.toFixed(3)} +- ${against.error.toFixed(3)}; to a bad part ${toTrue.toFixed(3)}`;
    }),
  );
}

/** Whether learning was ever worse than the tables by more than chance: block after block of jobs. */
function blockRows(scores: ReadonlyMap<FiguresName, readonly Score[]>): string[] {
  const [learnt, tables] = [losses(scores.get("learnt")), losses(scores.get("tables"))];
  const blocks = Array.from({ length: Math.ceil(learnt.length / WINDOW) }, (_, at) => at * WINDOW);
  return blocks.map((from) => {
    const to = Math.min(from + WINDOW, learnt.length);
    const { mean: worse, error } = compared(learnt.slice(from, to), tables.slice(from, to));
    return `  jobs ${from + 1}-${to}: ${worse.toFixed(3)} +- ${error.toFixed(3)}`;
  });
}

export function shopText({ before, after, readAt }: ShopRun): string {
  return [
    "before any reading:",
    ...lossRows(before),
    "learnt to the tables, block by block, before any reading:",
    ...blockRows(before),
    `after eight readings, ${readAt.length} jobs:`,
    ...lossRows(after),
    "said and was, second half, before any reading, by each set of figures:",
    ...FIGURES.flatMap((name) => [`  ${name}:`, ...calibrationRows(before.get(name) ?? [])]),
  ].join("\n");
}

function calibrationRows(scores: readonly Score[]): string[] {
  const rows = calibrationOf(scores.slice(Math.floor(scores.length / 2)));
  return rows.map(
    ({ from, to, parts, said, was, error }) =>
      `    ${from} to ${to}: ${parts} parts, said ${said.toFixed(4)}, was ${was.toFixed(4)} +- ${error.toFixed(4)}`,
  );
}

const SIZE = { width: 920, height: 340, left: 60, right: 170, top: 12, bottom: 40 } as const;
const COLOURS: Readonly<Record<FiguresName, string>> = {
  tables: "#6d6d6d",
  learnt: "#0b5a41",
  "told the truth": "#44609c",
  "the shop's own": "#9a5b13",
};
function running(values: readonly number[]): number[] {
  return values.flatMap((_, at) => (at + 1 < WINDOW ? [] : [mean(values.slice(at + 1 - WINDOW, at + 1))]));
}

/** Mean log-loss of the last fifty jobs, over the course of the jobs. */
function curves(scores: ReadonlyMap<FiguresName, readonly Score[]>): string {
  const lines = FIGURES.map((name) => [name, running(losses(scores.get(name)))] as const);
  const all = lines.flatMap(([, values]) => values);
  if (all.length === 0) return "<p>Too few jobs for a curve.</p>";
  const [least, most] = [Math.min(...all), Math.max(...all)];
  const count = Math.max(2, lines[0]?.[1].length ?? 2);
  const x = (at: number) => SIZE.left + (at / (count - 1)) * (SIZE.width - SIZE.left - SIZE.right);
  const y = (value: number) =>
    SIZE.top + ((most - value) / Math.max(1e-9, most - least)) * (SIZE.height - SIZE.top - SIZE.bottom);
  const drawn = lines.map(([name, values]) => {
    const points = values.map((value, at) => `${x(at).toFixed(1)},${y(value).toFixed(1)}`).join(" ");
    const last = values[values.length - 1] ?? least;
    return (
      `<polyline points="${points}" fill="none" stroke="${COLOURS[name]}" stroke-width="2"/>` +
      `<text x="${SIZE.width - SIZE.right + 8}" y="${y(last) + 4}" fill="${COLOURS[name]}">${escaped(name)}</text>`
    );
  });
  const marks = [least, (least + most) / 2, most].map(
    (value) => `<text x="${SIZE.left - 8}" y="${y(value) + 4}" text-anchor="end">${value.toFixed(2)}</text>`,
  );
  const ends = [0, count - 1].map(
    (at) => `<text x="${x(at)}" y="${SIZE.height - 14}" text-anchor="middle">${at + WINDOW}</text>`,
  );
  return `<svg role="img" aria-label="Log-loss over the jobs" viewBox="0 0 ${SIZE.width} ${SIZE.height}" width="${SIZE.width}" height="${SIZE.height}">${[...marks, ...ends, ...drawn].join("")}</svg>`;
}

export function shopPage(run: ShopRun, words: string): string {
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><title>A bench that learns</title>
<meta name="viewport" content="width=device-width, initial-scale=1">
<style>body { font: 15px/1.45 system-ui, sans-serif; margin: 24px auto; max-width: 980px; padding-inline: 20px } pre { overflow-x: auto } svg { max-width: 100%; height: auto } svg text { font-size: 12px }</style></head><body>
<h1>A bench that learns</h1>
<p>${escaped(words)}. Log-loss before any reading, in nats a job, mean of the last ${WINDOW} jobs: lower is better.</p>
${curves(run.before)}
<pre>${escaped(shopText(run))}</pre>
</body></html>
`;
}
