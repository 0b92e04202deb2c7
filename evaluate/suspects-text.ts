/** The figures of cold sessions in lines of text; 90 % intervals in brackets. */
import type { ColdSession } from "./cold-session.ts";
import type { Interval } from "./intervals.ts";
import { BIN_LEAST, type Bin, type Mark, type MarkFigures, markFigures } from "./suspect-figures.ts";

const span = ({ value, low, high }: Interval, digits: number): string =>
  `${value.toFixed(digits)} (${low.toFixed(digits)} to ${high.toFixed(digits)})`;
const percent = ({ value, low, high }: Interval): string =>
  Number.isNaN(value)
    ? "none"
    : `${(100 * value).toFixed(0)} % (${(100 * low).toFixed(0)} to ${(100 * high).toFixed(0)})`;

function markLine(one: MarkFigures): string {
  const title = one.mark === "end" ? "at the end" : `after ${one.mark}`;
  return (
    `${title.padEnd(12)} ${String(one.going).padStart(4)} going | log-loss ${span(one.logLoss, 2)} nats a board | ` +
    `calibration error expected ${span(one.expectedError, 4)}, largest ${one.largestError.toFixed(3)} | ` +
    `tellable faults in the top ${percent(one.ranked)}, all faults ${percent(one.allRanked)} of ${one.rankedBoards} boards`
  );
}

function binLine({ from, to, count, believed, faulty }: Bin): string {
  return `  ${from} to ${to}: ${count} parts, believed ${(100 * believed).toFixed(2)} %, faulty ${(100 * faulty).toFixed(2)} %${count < BIN_LEAST ? " (too few to judge)" : ""}`;
}

/** What was asked, the figures at each mark, and the bins of the last. */
export function suspectsText(sessions: readonly ColdSession[], marks: readonly Mark[]): string {
  const figures = marks.map((mark) => markFigures(sessions, mark));
  const unlike = sessions.filter(({ differences }) => differences.length > 0).length;
  const told = sessions.filter(({ tellable }) => tellable.length > 0).length;
  const readings = sessions.reduce((sum, { snapshots }) => sum + (snapshots.at(-1)?.readings ?? 0), 0);
  const ends = new Map<string, number>();
  for (const { ended } of sessions) ends.set(ended, (ends.get(ended) ?? 0) + 1);
  return [
    `${sessions.length} boards of the oracle (${unlike} unlike their file), ${told} with a fault that a cold check can tell; ${(readings / sessions.length).toFixed(1)} readings a session, first proposals not followed: ${[...ends].map(([word, count]) => `${word} ${count}`).join(", ")}`,
    ...figures.map(markLine),
    "bins at the end:",
    ...(figures.at(-1)?.bins.map(binLine) ?? []),
  ].join("\n");
}
