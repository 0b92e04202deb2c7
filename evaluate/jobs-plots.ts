/** Plots of whole jobs as inline SVG: intervals of profit by player, and the gap to the all-knowing player in its pieces. */
import type { Interval } from "./intervals.ts";
import type { Figures, Gap } from "./jobs-figures.ts";
import { PLAYERS, type PlayerName } from "./trial.ts";

/** A group of trials by name, with its figures. */
export type Group = readonly [string, Figures];

export const escaped = (words: string): string => words.replace(/[&<>"]/g, (c) => `&#${c.charCodeAt(0)};`);

const SIZE = { width: 920, left: 230, right: 60, row: 14, gap: 16, bar: 22 } as const;
const COLOURS: Readonly<Record<PlayerName, string>> = {
  engine: "#0b5a41",
  walk: "#9a5b13",
  "walk with inference": "#44609c",
  "all-knowing": "#6d6d6d",
};
type Piece = Exclude<keyof Gap, "total">;
const PIECES: readonly (readonly [Piece, string, string])[] = [
  ["givenUp", "repairable boards given up", "#b5482f"],
  ["falselyClosed", "falsely closed", "#7a2f6b"],
  ["minutes", "time", "#c99a2e"],
  ["parts", "parts", "#4f7fa8"],
];

interface Scale {
  readonly x: (value: number) => number;
  readonly marks: readonly number[];
}

function scaleOf(values: readonly number[]): Scale {
  const least = Math.min(0, ...values);
  const most = Math.max(1, ...values);
  const step = [5, 10, 20, 50, 100, 200, 500].find((one) => (most - least) / one <= 10) ?? 1000;
  const from = Math.floor(least / step) * step;
  const to = Math.ceil(most / step) * step;
  const width = SIZE.width - SIZE.left - SIZE.right;
  return {
    x: (value) => SIZE.left + ((value - from) / (to - from)) * width,
    marks: Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) => from + i * step),
  };
}

function frame(label: string, height: number, { x, marks }: Scale, inside: readonly string[]): string {
  const bottom = height - 40;
  const grid = marks.map(
    (value) =>
      `<line x1="${x(value)}" x2="${x(value)}" y1="0" y2="${bottom}" stroke="${value === 0 ? "#7d8a82" : "#e0e6df"}"/>` +
      `<text x="${x(value)}" y="${bottom + 15}" text-anchor="middle" fill="#55635b">${value}</text>`,
  );
  return `<svg role="img" aria-label="${escaped(label)}" viewBox="0 0 ${SIZE.width} ${height}" width="${SIZE.width}" height="${height}">${[...grid, ...inside].join("")}</svg>`;
}

function legend(entries: readonly (readonly [string, string])[], y: number): string[] {
  return entries.map(
    ([words, colour], at) =>
      `<rect x="${SIZE.left + 180 * at - 14}" y="${y - 10}" width="10" height="10" fill="${colour}"/><text x="${SIZE.left + 180 * at}" y="${y}" fill="#14201b">${escaped(words)}</text>`,
  );
}

const said = ({ value, low, high }: Interval): string =>
  `${value.toFixed(0)} (${low.toFixed(0)} to ${high.toFixed(0)})`;

/** One bar of interval and a dot of mean for each player and group. */
export function profitPlot(groups: readonly Group[]): string {
  const scale = scaleOf(
    groups.flatMap(([, { players }]) => players.flatMap(({ profit }) => [profit.low, profit.high])),
  );
  const block = PLAYERS.length * SIZE.row + SIZE.gap;
  const height = groups.length * block + 50;
  const marks = groups.flatMap(([name, { players, trials }], g) => {
    const top = 8 + g * block;
    return [
      `<text x="0" y="${top + 12}" font-weight="600">${escaped(name)}</text><text x="0" y="${top + 28}" fill="#55635b">${trials} boards</text>`,
      ...players.map(({ player, profit }, p) => {
        const y = top + p * SIZE.row + 8;
        const colour = COLOURS[player];
        return `<g><title>${player}: ${said(profit)}</title><line x1="${scale.x(profit.low)}" x2="${scale.x(profit.high)}" y1="${y}" y2="${y}" stroke="${colour}" stroke-width="3"/><circle cx="${scale.x(profit.value)}" cy="${y}" r="4.5" fill="${colour}"/></g>`;
      }),
    ];
  });
  const key = PLAYERS.map((player) => [player, COLOURS[player]] as const);
  return frame("Mean profit by player, with 90 % intervals", height, scale, [
    ...marks,
    ...legend(key, height - 4),
  ]);
}

/** The mean gap of each group as one bar of its pieces; what the engine saved against the all-knowing player goes left of zero. */
export function gapPlot(groups: readonly Group[]): string {
  const sums = groups.flatMap(([, { gap }]) => {
    const values = PIECES.map(([piece]) => gap[piece].value);
    const side = (sign: number) => values.filter((one) => one * sign > 0).reduce((sum, one) => sum + one, 0);
    return [side(1), side(-1), gap.total.high];
  });
  const scale = scaleOf(sums);
  const height = groups.length * (SIZE.bar + SIZE.gap) + 50;
  const marks = groups.flatMap(([name, { gap, trials }], g) => {
    const top = 8 + g * (SIZE.bar + SIZE.gap);
    const ends = { left: 0, right: 0 };
    const bars = PIECES.map(([piece, words, colour]) => {
      const { value } = gap[piece];
      const from = value < 0 ? ends.left + value : ends.right;
      if (value < 0) ends.left = from;
      else ends.right = from + value;
      const width = scale.x(from + Math.abs(value)) - scale.x(from);
      return `<rect x="${scale.x(from)}" y="${top}" width="${width}" height="${SIZE.bar}" fill="${colour}"><title>${words}: ${said(gap[piece])}</title></rect>`;
    });
    const middle = top + SIZE.bar / 2;
    return [
      `<text x="0" y="${middle + 4}"><tspan font-weight="600">${escaped(name)}</tspan> <tspan fill="#55635b">${trials}</tspan></text>`,
      ...bars,
      `<line x1="${scale.x(gap.total.low)}" x2="${scale.x(gap.total.high)}" y1="${middle}" y2="${middle}" stroke="#14201b" stroke-width="1.5"/><circle cx="${scale.x(gap.total.value)}" cy="${middle}" r="3.5" fill="#14201b"><title>gap: ${said(gap.total)}</title></circle>`,
    ];
  });
  const key = PIECES.map(([, words, colour]) => [words, colour] as const);
  return frame("Mean gap to the all-knowing player and its pieces", height, scale, [
    ...marks,
    ...legend(key, height - 4),
  ]);
}
