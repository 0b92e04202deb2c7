/** What a live check reads: the one answer that the terminal, the practice bench and the explanations share. */
import type { LiveMode, MeasureEvent, Place } from "../bench/event.ts";
import type { LiveState } from "./live-state.ts";

/** A live check: where the probes go, or which part's warmth is taken and how. */
export interface LiveCheck {
  readonly mode: LiveMode;
  readonly red?: Place | undefined;
  readonly black?: Place | undefined;
  readonly part?: string | undefined;
  readonly ambient?: number | undefined;
  readonly by?: MeasureEvent["by"] | undefined;
  readonly afterPower?: number | undefined;
}

/** Volts, amps or degC, and one standard deviation of what is not known of the board. */
export interface LiveReading {
  readonly value: number;
  readonly spread: number;
  /** volts between two places that the feed holds, where nothing is picked up */
  readonly held?: boolean;
}

/** The reading; null where the model cannot say. Amps are told between the two places of the feed alone. */
export function liveReading(state: LiveState, check: LiveCheck): LiveReading | null {
  const { mode, red, black, part } = check;
  if (mode === "temperature") {
    const { ambient, by, afterPower } = check;
    const found = part === undefined ? null : state.temperature(part, { ambient, by, afterPower });
    return found === null ? null : { value: found.celsius, spread: found.spread };
  }
  if (red === undefined || black === undefined) return null;
  if (mode === "amps") {
    const amps = state.isFeed(red, black) ? state.feedAmps : null;
    return amps === null ? null : { value: amps.amps, spread: amps.spread };
  }
  const volts = state.volts(red, black);
  if (volts === null) return null;
  return mode === "dcv"
    ? { value: volts.dc, spread: volts.dcSpread, held: volts.held }
    : { value: volts.ac, spread: volts.acSpread, held: volts.held };
}
