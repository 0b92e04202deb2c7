/** Signs of life at a power-up as evidence: each asks the live board whether it would have come on with the faults present then. */

import type { BenchState } from "../bench/bench-state.ts";
import { isWorkOn } from "../bench/dead-board.ts";
import type { PowerEvent } from "../bench/event.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import { type Sign, signChance, signShown, signsOf } from "../live/signs.ts";
import type { FaultPrior } from "../priors/fault-prior.ts";
import type { EvidenceMemory } from "./cold-evidence.ts";
import { COMMON_POINTS, type Evidence, type Piece } from "./evidence.ts";
import type { LivePredictor } from "./live-evidence.ts";
import { NO_ANSWER } from "./shown-words.ts";

/** Where the model cannot say whether it comes on, both are as likely. */
const NOBODY_KNOWS = 0.5;

/** A sign is never a slip of the probe: below this no board comes. */
const EXPLAINED_BY_ANYTHING = Math.log(1e-3);

interface Noted {
  readonly sign: Sign;
  readonly came: boolean;
  readonly logIndex: number;
  readonly bench: BenchState;
  readonly power: PowerEvent;
  readonly logIndexes: number[];
}

/**
 * One piece a sign. The same sign at the same feed of a board left as it is tells nothing new, whatever hides or drives it: one piece for
 * all of them.
 */
export function signPieces(
  board: Board,
  { entries }: Timeline,
  liveFor: (bench: BenchState, power: PowerEvent) => LivePredictor,
  priors: readonly FaultPrior[],
  memory: EvidenceMemory,
): readonly Piece[] {
  const noted: Noted[] = [];
  const seen = new Map<string, Noted>();
  for (const { event, logIndex, after } of entries) {
    if (isWorkOn(board, event)) seen.clear();
    if (event.do !== "power" || event.signs === undefined) continue;
    const { feed, watts, at, load } = event;
    for (const sign of signsOf(board)) {
      const came = event.signs[sign.part];
      if (came === undefined) continue;
      const key = JSON.stringify([sign.part, came, feed, watts, at, load]);
      const before = seen.get(key);
      if (before !== undefined) {
        before.logIndexes.push(logIndex);
        continue;
      }
      const one = { sign, came, logIndex, bench: after, power: event, logIndexes: [logIndex] };
      seen.set(key, one);
      noted.push(one);
    }
  }
  return noted.map(({ sign, came, logIndex, bench, power, logIndexes }) => ({
    evidence: signEvidence(sign, came, logIndex, liveFor(bench, power), priors, memory),
    logIndexes,
  }));
}

function signEvidence(
  sign: Sign,
  came: boolean,
  logIndex: number,
  live: LivePredictor,
  priors: readonly FaultPrior[],
  memory: EvidenceMemory,
): Evidence {
  const key = `sign|${sign.part}|${live.key}`;
  const gives = (indexes: readonly number[]): boolean | null =>
    live.state(indexes.map((index) => priors[index].fault)).givesSign(sign);
  // what could change it is found once for the board with nothing else wrong, as for volts under power
  const mask = (): Uint8Array =>
    memory.mask(key, () => {
      const healthy = gives([]);
      return Uint8Array.from(priors, (_, index) => (gives([index]) === healthy ? 0 : 1));
    });
  const chance = (given: boolean | null): number =>
    given === null ? NOBODY_KNOWS : signChance(sign.kind, came, given);
  return memory.remembering(`${key}=${came}`, {
    logIndex,
    best: Math.log(Math.max(chance(true), chance(false))),
    slip: EXPLAINED_BY_ANYTHING,
    logLikelihood: (indexes) =>
      memory.vector(`${key}=${came}`, indexes.join(","), () =>
        new Float64Array(COMMON_POINTS.length).fill(Math.log(chance(gives(indexes)))),
      ),
    wouldShow: (indexes) => {
      const given = gives(indexes);
      return given === null ? NO_ANSWER : signShown(sign, given);
    },
    hears: (indexes, fault) =>
      gives(indexes) !== gives([...indexes, fault].sort((one, other) => one - other)),
    audible: mask,
  });
}
