/**
 * Readings taken under power as evidence. Each asks the live board for what it would show with the faults on it at that moment;
 * what could change the reading is found once for the board with nothing else wrong, since a powered state takes as long as a hundred cold
 * readings: a guess that the scoring of every kept set mends.
 */
import type { MeasureEvent } from "../bench/event.ts";
import { isColdMode } from "../bench/words.ts";
import type { Fault } from "../board/fault.ts";
import { type LiveCheck, type LiveReading, liveReading } from "../live/live-reading.ts";
import type { LiveState } from "../live/live-state.ts";
import type { FaultPrior } from "../priors/fault-prior.ts";
import type { EvidenceMemory } from "./cold-evidence.ts";
import { COMMON_POINTS, type Evidence } from "./evidence.ts";
import {
  bestLiveLog,
  liveDiffer,
  liveLogLikelihood,
  liveSlipLog,
  unknownLiveLog,
} from "./live-reading-model.ts";
import { NO_ANSWER } from "./shown-words.ts";

/** A board under one feed, as it was when the reading was taken. */
export interface LivePredictor {
  /** bench, feed and what was seen: what its answers depend on besides the faults */
  readonly key: string;
  state(faults: readonly Fault[]): LiveState;
}

/** The live check that a `measure` event made; null for a cold one, and for one without a number. */
export function liveCheckOf(
  event: MeasureEvent,
): { readonly check: LiveCheck; readonly reading: number } | null {
  const { mode, reading, red, black, part, ambient, by, afterPower } = event;
  if (isColdMode(mode) || typeof reading !== "number") return null;
  return { check: { mode, red, black, part, ambient, by, afterPower }, reading };
}

/** The evidence of one reading under power. */
export function liveEvidence(
  { check, reading }: { readonly check: LiveCheck; readonly reading: number },
  logIndex: number,
  live: LivePredictor,
  priors: readonly FaultPrior[],
  memory: EvidenceMemory,
): Evidence {
  const { mode } = check;
  const key = `live|${JSON.stringify(check)}|${live.key}`;
  const faultsOf = (indexes: readonly number[]) => indexes.map((index) => priors[index].fault);
  const shows = (indexes: readonly number[]): LiveReading | null =>
    liveReading(live.state(faultsOf(indexes)), check);
  const mask = (): Uint8Array =>
    memory.mask(key, () => {
      const healthy = shows([]);
      return Uint8Array.from(priors, (_, index) => (liveDiffer(mode, healthy, shows([index])) ? 1 : 0));
    });
  return memory.remembering(`${key}=${reading}`, {
    logIndex,
    best: bestLiveLog(mode, reading),
    slip: liveSlipLog(mode, reading),
    logLikelihood: (indexes) =>
      memory.vector(`${key}=${reading}`, indexes.join(","), () => {
        const predicted = shows(indexes);
        const log =
          predicted === null ? unknownLiveLog(mode, reading) : liveLogLikelihood(mode, reading, predicted);
        return new Float64Array(COMMON_POINTS.length).fill(log);
      }),
    wouldShow(indexes) {
      const predicted = shows(indexes);
      return predicted === null ? NO_ANSWER : shownLive(mode, predicted.value);
    },
    hears: (indexes, fault) =>
      liveDiffer(mode, shows(indexes), shows([...indexes, fault].sort((a, b) => a - b))),
    audible: mask,
  });
}

/** A reading under power as the display would show it. */
export function shownLive(mode: LiveCheck["mode"], value: number): string {
  switch (mode) {
    case "dcv":
      return `${value.toFixed(Math.abs(value) < 60 ? 2 : 0)} V`;
    case "acv":
      return `${value.toFixed(1)} V ac`;
    case "amps":
      return `${value.toFixed(3)} A`;
    case "temperature":
      return `${value.toFixed(0)} degC`;
  }
}
