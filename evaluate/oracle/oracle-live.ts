/**
 * What a meter clipped across two places of a powered oracle board, or a thermometer held to it, reads. The powered board is the engine's own live model, put on
 * the board as it really is with its true faults; mains, loads and meter are drawn anew. What this shows is how readings under power
 * are used, not how true the live model is: that is held against a reference simulator.
 */
import type { BenchState } from "../../src/bench/bench-state.ts";
import type { PowerEvent } from "../../src/bench/event.ts";
import { liveStates } from "../../src/live/live-of-log.ts";
import { type LiveCheck, liveReading } from "../../src/live/live-reading.ts";
import { normalDeviate, seededRandom } from "../../src/practice/seeded-random.ts";
import type { OracleBoard } from "./oracle-board.ts";
import type { Hidden } from "./oracle-course.ts";
import { asLive } from "./supply-truth.ts";

/** Share by which a hand-held meter's volts are off, one deviation, and its last digit (published: 0.5 to 1 %). */
const METER_SHARE = 0.006;

/** What a live check reads; null where the live model cannot say. One power-up of one board always reads the same. */
export function liveAnswer(
  { board, seed }: OracleBoard,
  { faults }: Hidden,
  bench: BenchState,
  power: PowerEvent,
  check: LiveCheck,
): number | null {
  const found = liveReading(liveStates(board, bench, power).state(asLive(faults)), check);
  if (found === null) return null;
  // what the model leaves open of mains and load is one draw for this board, not for each reading
  const draw = normalDeviate(seededRandom(seed, `live ${check.mode} ${power.id ?? ""}`));
  const meter = 1 + METER_SHARE * normalDeviate(seededRandom(seed, "meter volts"));
  const value = (found.value + draw * found.spread) * (check.mode === "temperature" ? 1 : meter);
  return check.mode === "acv" || check.mode === "amps" ? Math.max(0, value) : value;
}
