/**
 * Ohms through junctions depend on who made the meter: each has its own open voltage and its own source in each range, and a
 * junction is a different resistance at each. Here the same settled circuit is seen by the two ends of that variety; what they show
 * is where the reading is centred and how far it may stand. Resistors read the same on all of them, and are not asked again.
 */
import type { ColdMode } from "../bench/event.ts";
import type { Problem } from "../circuit/equations.ts";
import { junctionAmps } from "../circuit/junction.ts";
import { solveCircuit } from "../circuit/solve.ts";
import type { Probed } from "./probing.ts";
import { ohmsAt, type Range } from "./ranges.ts";

export const OTHER_METERS = {
  /**
   * the softest and the hardest source among hand-held meters: open volts, and source ohms as a multiple of this range's (data
   * sheets name 0.2 to 0.9 V of open voltage where a range is meant to leave junctions alone; from memory)
   */
  softest: { openVolts: 0.2, sourceFactor: 8 },
  hardest: { openVolts: 0.9, sourceFactor: 1 },
  /** where meters centre on the way, in ln(ohms), from what the hardest shows to what the softest does (from memory) */
  middle: 0.75,
  /** their deviation as a share of half that way (from memory) */
  spanShare: 0.95,
  /** junctions that carry less than this share of the probes' current at the hardest source are no junctions here */
  straightShare: 0.003,
  /** leads that nobody subtracts, ohms (published hand-held meters: 0.1 to 0.5 ohm) */
  leadOhms: 0.25,
  /** insulation of a board that is not new, and of one that was wet, beside every reading of megohms; deviation of its ln (from memory) */
  boardOhms: 2e8,
  wetBoardOhms: 1.5e6,
  boardSpreadLn: 1.2,
} as const;

/** Where a reading in ohms is centred on a meter that nobody knows, and the deviation of its ln by meter and board. */
export interface AmongMeters {
  readonly centreOhms: number;
  readonly deviationLn: number;
}

/**
 * What meters of other makes show of the settled circuit.
 * @param ranges - of the reference meter in this mode
 * @param transfer - volts at the probes per amp put into each net (`Linearised.transfer`)
 * @param boardOhms - insulation of the board
 */
export function amongMeters(
  mode: ColdMode,
  probed: Probed,
  ranges: readonly Range[],
  transfer: Float64Array,
  boardOhms: number,
): AmongMeters {
  const M = OTHER_METERS;
  const here = onTheBoard(probed.raw, boardOhms);
  let [least, most] = [here, here];
  if (mode === "ohms" && !straight(probed, transfer))
    for (const meter of [M.softest, M.hardest]) {
      const ohms = seenBy(probed, ranges, meter);
      if (ohms === null) continue;
      least = Math.min(least, onTheBoard(ohms, boardOhms));
      most = Math.max(most, onTheBoard(ohms, boardOhms));
    }
  const centre = least * (most / least) ** M.middle;
  const span = (M.spanShare * Math.log(most / least)) / 2;
  return {
    centreOhms: centre + M.leadOhms,
    deviationLn: Math.hypot(span, (M.boardSpreadLn * centre) / boardOhms),
  };
}

/** Ohms with the insulation of the board beside them. */
export function onTheBoard(ohms: number, boardOhms: number): number {
  return 1 / (1 / Math.max(ohms, 1e-6) + 1 / boardOhms);
}

/** The ohms that read `ohms` with the insulation of the board beside them; open where it alone reads less. */
export function withoutTheBoard(ohms: number, boardOhms: number): number {
  const rest = 1 / ohms - 1 / boardOhms;
  return rest > 0 ? 1 / rest : Number.POSITIVE_INFINITY;
}

/**
 * Ohms by a meter with another source, in the range that fits it, tried from the one below the reference meter's; null where the
 * circuit does not settle.
 */
function seenBy(
  { problem, range, answer }: Probed,
  ranges: readonly Range[],
  meter: { readonly openVolts: number; readonly sourceFactor: number },
): number | null {
  const { plus, minus } = problem.source;
  let volts = answer.volts;
  let ohms: number | null = null;
  for (const one of ranges.slice(Math.max(0, ranges.indexOf(range) - 1))) {
    const other: Range = { ...one, openVolts: meter.openVolts, ohms: one.ohms * meter.sourceFactor };
    const source = { plus, minus, amps: other.openVolts / other.ohms, siemens: 1 / other.ohms };
    const found = solveCircuit({ ...problem, source }, volts);
    if (!found.solved) return null;
    volts = found.volts;
    ohms = ohmsAt(other, acrossProbes(problem, volts));
    if (ohms <= one.limit) break;
  }
  return ohms;
}

function acrossProbes({ netlist, source }: Problem, volts: Float64Array): number {
  const at = (net: number): number => volts[net < 0 ? netlist.nets : net];
  return at(source.plus) - at(source.minus);
}

/**
 * Would the circuit, driven as hard as the hardest source can, still be one of resistors? Judged by the current that the
 * junctions would carry if all voltages rose in proportion, seen from the probes.
 */
function straight({ problem, range, answer, volts }: Probed, transfer: Float64Array): boolean {
  const { netlist, values } = problem;
  const ground = netlist.nets;
  const factor = OTHER_METERS.hardest.openVolts / range.openVolts;
  const allowed = OTHER_METERS.straightShare * Math.max(volts, 1e-3 * range.openVolts) * factor;
  const across = (array: Float64Array, from: number, to: number): number =>
    array[from < 0 ? ground : from] - array[to < 0 ? ground : to];
  let moved = 0;
  const { from, to, emissionVolts } = netlist.junctions;
  for (let i = 0; i < values.saturation.length; i++) {
    if (values.saturation[i] === 0) continue;
    const seen = Math.abs(across(transfer, from[i], to[i]));
    if (seen === 0) continue;
    const here = factor * across(answer.volts, from[i], to[i]);
    moved += seen * Math.abs(junctionAmps(values.saturation[i], emissionVolts[i], here));
    if (!(moved <= allowed)) return false;
  }
  const { base, collector, emitter, sign, emissionVolts: bend } = netlist.bjts;
  for (let i = 0; i < values.bjtSaturation.length; i++)
    for (const end of [emitter[i], collector[i]]) {
      const here = factor * sign[i] * across(answer.volts, base[i], end);
      moved += Math.abs(
        junctionAmps(values.bjtSaturation[i], bend, here) * across(transfer, collector[i], emitter[i]),
      );
      if (!(moved <= allowed)) return false;
    }
  return true;
}
