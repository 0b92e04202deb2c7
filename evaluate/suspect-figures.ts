/** How right the probabilities of parts are after so many readings: log-loss, calibration, rank of the true faults. */
import type { ColdSession } from "./cold-session.ts";
import { bootstrap, type Interval, meanOf, shareInterval } from "./intervals.ts";

/** A mark of the session: a number of readings, or its end. */
export type Mark = number | "end";

/** A probability below this, or so near to one, is not claimed: it is scored as this. */
const LEAST = 1e-4;
/** Edges of the bins of probability; most parts of a board are hardly suspected, so the bins are fine there. */
const EDGES = [0, 0.001, 0.003, 0.01, 0.03, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.97] as const;
/** Bins that hold fewer are too uncertain to judge. */
export const BIN_LEAST = 100;

export interface Bin {
  readonly from: number;
  readonly to: number;
  readonly count: number;
  readonly believed: number;
  readonly faulty: number;
}

export interface MarkFigures {
  readonly mark: Mark;
  /** sessions that had not ended before it; the others count with the belief they ended with */
  readonly going: number;
  /** nats a board, over all parts and leaks */
  readonly logLoss: Interval;
  readonly bins: readonly Bin[];
  /** mean over bins that hold enough, weighted by their count, of the difference between belief and truth; and the largest */
  readonly expectedError: Interval;
  readonly largestError: number;
  /** share of boards with all tellable faults, and with all faults, within the top (number of true faults + 1) suspects */
  readonly ranked: Interval;
  readonly rankedBoards: number;
  readonly allRanked: Interval;
}

/** Every name with its probability and whether it is faulty; true faults that the belief does not name have none. */
function claims(session: ColdSession, mark: Mark): readonly (readonly [number, boolean])[] {
  const { probabilities } = snapshotAt(session, mark);
  const dead = new Set(session.dead);
  const named = new Set(probabilities.map(([name]) => name));
  return [
    ...probabilities.map(([name, p]) => [p, dead.has(name)] as const),
    ...session.dead.filter((name) => !named.has(name)).map(() => [0, true] as const),
  ];
}

/** The belief at the mark, or the last one of a session that ended before. */
function snapshotAt({ snapshots }: ColdSession, mark: Mark): ColdSession["snapshots"][number] {
  const at =
    mark === "end"
      ? snapshots.at(-1)
      : (snapshots.find(({ readings }) => readings === mark) ?? snapshots.at(-1));
  if (at === undefined) throw new Error("a session without a belief");
  return at;
}

function lossOf(session: ColdSession, mark: Mark): number {
  return claims(session, mark).reduce((sum, [p, faulty]) => {
    const claimed = Math.min(1 - LEAST, Math.max(LEAST, p));
    return sum - Math.log(faulty ? claimed : 1 - claimed);
  }, 0);
}

function binOf(p: number): number {
  return EDGES.findLastIndex((edge) => p >= edge);
}

function binsOf(all: readonly (readonly (readonly [number, boolean])[])[], which: readonly number[]): Bin[] {
  const sums = EDGES.map(() => ({ count: 0, believed: 0, faulty: 0 }));
  for (const session of which)
    for (const [p, faulty] of all[session] ?? []) {
      const bin = sums[binOf(p)];
      if (bin === undefined) continue;
      bin.count++;
      bin.believed += p;
      bin.faulty += Number(faulty);
    }
  return sums.map(({ count, believed, faulty }, at) => ({
    from: EDGES[at] ?? 0,
    to: EDGES[at + 1] ?? 1,
    count,
    believed: count === 0 ? 0 : believed / count,
    faulty: count === 0 ? 0 : faulty / count,
  }));
}

const errorOf = ({ believed, faulty }: Bin): number => Math.abs(believed - faulty);

/** Are these names all within the first (true faults + 1) suspects? */
function withinTop(session: ColdSession, mark: Mark, names: readonly string[]): boolean {
  const { probabilities } = snapshotAt(session, mark);
  const top = new Set(probabilities.slice(0, session.dead.length + 1).map(([name]) => name));
  return names.every((name) => top.has(name));
}

/** @param sessions - at least one */
export function markFigures(sessions: readonly ColdSession[], mark: Mark): MarkFigures {
  const all = sessions.map((session) => claims(session, mark));
  const everyone = sessions.map((_, at) => at);
  const bins = binsOf(all, everyone);
  const judged = bins.flatMap(({ count }, at) => (count >= BIN_LEAST ? [at] : []));
  const expected = (which: readonly number[]): number => {
    const some = binsOf(all, which);
    const total = judged.reduce((sum, at) => sum + (some[at]?.count ?? 0), 0);
    const wrong = judged.reduce((sum, at) => {
      const bin = some[at];
      return bin === undefined ? sum : sum + bin.count * errorOf(bin);
    }, 0);
    return wrong / Math.max(1, total);
  };
  const losses = sessions.map((session) => lossOf(session, mark));
  const telling = sessions.filter(({ tellable }) => tellable.length > 0);
  return {
    mark,
    going:
      mark === "end"
        ? sessions.length
        : sessions.filter((one) => (one.snapshots.at(-1)?.readings ?? 0) >= mark).length,
    logLoss: bootstrap(losses.length, (which) => meanOf(losses, which)),
    bins,
    expectedError: bootstrap(sessions.length, expected),
    largestError: Math.max(
      0,
      ...judged.map((at) => errorOf(bins[at] ?? { from: 0, to: 0, count: 0, believed: 0, faulty: 0 })),
    ),
    ranked: shareInterval(
      telling.filter((session) => withinTop(session, mark, session.tellable)).length,
      telling.length,
    ),
    rankedBoards: telling.length,
    allRanked: shareInterval(
      telling.filter((session) => withinTop(session, mark, session.dead)).length,
      telling.length,
    ),
  };
}
