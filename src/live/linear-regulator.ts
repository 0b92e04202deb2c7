/** A linear regulator: its volts, its drop-out, its current limit, and the heat at which it shuts down. */
import type { FaultedBoard } from "./faulted-board.ts";
import { REGULATOR_MODEL } from "./live-models.ts";

export interface Regulated {
  readonly volts: number;
  readonly amps: number;
  /** turned to heat in it */
  readonly watts: number;
  /** at its limit of amps or heat */
  readonly limited: boolean;
}

const DEAD: Regulated = { volts: 0, amps: 0, watts: 0, limited: false };

function dropout(nominal: number): number {
  return nominal < 4 ? REGULATOR_MODEL.lowDropoutVolts : REGULATOR_MODEL.dropoutVolts;
}

/**
 * What a regulator of `nominal` volts makes of `input` volts into a load that draws `draw(volts)` amps. One that limits is taken
 * for a current into the load's resistance at those volts.
 */
export function regulate(
  board: FaultedBoard,
  ref: string,
  nominal: number,
  input: number,
  draw: (volts: number) => number,
): Regulated {
  const part = board.part(ref);
  if (part === null || board.isOpen(ref, "inout") || input <= 0) return DEAD;
  if (["in", "out", "gnd"].some((pin) => board.netOf(ref, pin) === null)) return DEAD;
  if (board.isShort(ref, "inout")) {
    const ohms = board.acrossOhms(ref, "inout");
    const amps = draw(input);
    const volts = input / (1 + (ohms * amps) / input);
    return { volts, amps: draw(volts), watts: (input - volts) * draw(volts), limited: false };
  }
  const wanted = Math.max(0, Math.min(nominal, input - dropout(nominal)));
  const amps = draw(wanted);
  const { limitTimes, shutdownWatts } = REGULATOR_MODEL;
  const byHeat = shutdownWatts / Math.max(input - wanted, 0.1);
  const limit = (part.value.amps ?? REGULATOR_MODEL.amps) * limitTimes;
  if (amps <= limit && amps <= byHeat)
    return { volts: wanted, amps, watts: (input - wanted) * amps, limited: false };
  // Into a short the whole input stands across it: heat, not amps, is what it gives in the mean.
  const mean = Math.min(limit, shutdownWatts / input);
  const volts = Math.min(wanted, (wanted * mean) / amps);
  return { volts, amps: mean, watts: (input - volts) * mean, limited: true };
}
