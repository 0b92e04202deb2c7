/** The table of `evaluate/prediction.ts`: coverage with intervals, Brier scores, and which parts dominate the misses. */
import { KINDS, type Predicted } from "./predict-board.ts";

/** Half the width of a 95 % band in deviations. */
const BAND = 1.96;
/** Deviate of a two-sided 90 % interval. */
const NINETY = 1.645;

/** The interval for a share by Wilson's score (1927). */
export function wilson(hits: number, of: number): readonly [number, number] {
  if (of === 0) return [0, 1];
  const share = hits / of;
  const square = NINETY ** 2;
  const middle = (share + square / (2 * of)) / (1 + square / of);
  const half = (NINETY * Math.sqrt((share * (1 - share)) / of + square / (4 * of * of))) / (1 + square / of);
  return [Math.max(0, middle - half), Math.min(1, middle + half)];
}

const percent = (share: number): string => (100 * share).toFixed(1);

function quantile(sorted: readonly number[], share: number): number {
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}

type OffOf = (row: Predicted) => number | null;
const asItIs: OffOf = ({ off }) => off;

function coverageLine(title: string, rows: readonly Predicted[], offOf: OffOf = asItIs): string {
  const offs = rows.flatMap((row) => offOf(row) ?? []).sort((a, b) => a - b);
  const inside = offs.filter((off) => Math.abs(off) <= BAND).length;
  const [low, high] = wilson(inside, offs.length);
  const sizes = offs.map(Math.abs).sort((a, b) => a - b);
  const cells = [
    String(offs.length),
    offs.length === 0 ? "-" : percent(inside / offs.length),
    offs.length === 0 ? "-" : `${percent(low)}-${percent(high)}`,
    quantile(offs, 0.5).toFixed(2),
    quantile(sizes, 0.5).toFixed(2),
    quantile(sizes, 0.95).toFixed(2),
  ];
  return [title.padEnd(30), ...cells.map((cell) => cell.padStart(13))].join("");
}

function brierLine(title: string, rows: readonly Predicted[], happened: (row: Predicted) => boolean): string {
  const score =
    rows.reduce((sum, row) => sum + (row.band.chance - (happened(row) ? 1 : 0)) ** 2, 0) / rows.length;
  const share = rows.filter(happened).length / rows.length;
  return `${title.padEnd(30)}${String(rows.length).padStart(13)}${score.toFixed(4).padStart(13)}   always guessing the share ${percent(share)} %: ${(share * (1 - share)).toFixed(4)}`;
}

/** Kinds of part between the probes, with how often the readings there miss. */
function missLines(rows: readonly Predicted[], offOf: OffOf): string[] {
  const groups = new Map<string, { missed: number; of: number; offs: number[] }>();
  for (const row of rows) {
    const off = offOf(row);
    if (off === null || row.kind === null) continue;
    const key = `${row.kind} | ${row.between.join(" ") || "no part directly"}`;
    const group = groups.get(key) ?? { missed: 0, of: 0, offs: [] };
    group.of++;
    if (Math.abs(off) > BAND) group.missed++;
    group.offs.push(off);
    groups.set(key, group);
  }
  return [...groups]
    .sort(([, a], [, b]) => b.missed - a.missed)
    .slice(0, 16)
    .map(
      ([key, { missed, of, offs }]) =>
        `  ${key.padEnd(70)} ${String(missed).padStart(4)} of ${String(of).padStart(4)}, median ${quantile(
          offs.sort((a, b) => a - b),
          0.5,
        ).toFixed(2)} deviations`,
    );
}

/** The whole printed report. */
export function predictionReport(rows: readonly Predicted[]): string {
  const head = ["readings", "in 95 % band", "90 % interval", "median off", "median |off|", "95 % of |off|"];
  const groups: [string, readonly Predicted[]][] = [
    ["file true", rows.filter((row) => row.fileTrue)],
    ["board differs", rows.filter((row) => !row.fileTrue)],
  ];
  const lines = groups.flatMap(([name, own]) => [
    "",
    [name.padEnd(30), ...head.map((word) => word.padStart(13))].join(""),
    ...KINDS.map((kind) =>
      coverageLine(
        kind,
        own.filter((row) => row.kind === kind),
      ),
    ),
    coverageLine("all", own),
    coverageLine(
      "diode junction, calibrated",
      own.filter((row) => row.kind === "diode junction"),
      ({ calibratedOff }) => calibratedOff,
    ),
    brierLine(
      "OL in diode mode",
      own.filter((row) => row.check.mode === "diode"),
      (row) => row.reading === "OL",
    ),
    brierLine(
      "OL in ohms",
      own.filter((row) => row.check.mode === "ohms"),
      (row) => row.reading === "OL",
    ),
    brierLine(
      "OL in farads",
      own.filter((row) => row.check.mode === "farads"),
      (row) => row.reading === "OL",
    ),
    brierLine(
      "beep",
      own.filter((row) => row.check.mode === "continuity"),
      (row) => row.reading === "beep",
    ),
  ]);
  const fileTrue = groups[0]?.[1] ?? [];
  return [
    ...lines,
    "",
    "parts between the probes of what missed (file true):",
    ...missLines(fileTrue, asItIs),
  ].join("\n");
}
