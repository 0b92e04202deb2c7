/** What it adds to the spread of a reading that parts on its way were never seen: they may be of another value than drawn. */
import { junctionAmps } from "../circuit/junction.ts";
import type { ColdCircuit } from "../cold/cold-circuit.ts";
import type { Probed } from "./probing.ts";

/**
 * How far a part that nobody has seen may be from what the trade would fit there, standard deviations. From memory: a resistor or
 * capacitor half or twice the usual one, a junction of another sort.
 */
const ASSUMED_SPREAD = { ohmsShare: 0.7, faradsShare: 0.7, junctionVolts: 0.1 } as const;
/** Deviation of a charging bus's capacitance, share (20 % parts, two deviations). */
const CHARGE_SPREAD = 0.1;
/** A reading rests on an assumed part that widens it by this share of the spread it would have otherwise (from memory). */
const RESTS_ON_SHARE = 0.5;

export interface AssumedVariance {
  /** of all assumed parts together, in the square of the unit of the slopes */
  readonly variance: number;
  /** by index into the circuit's assumed parts */
  readonly byPart: Float64Array;
}

const NOTHING: AssumedVariance = { variance: 0, byPart: new Float64Array(0) };

function summed(byPart: Float64Array): AssumedVariance {
  return { variance: byPart.reduce((sum, own) => sum + own, 0), byPart };
}

/** Of the volts at the probes; `transfer` as in `meter/spread.ts`. */
export function assumedVolts(circuit: ColdCircuit, probed: Probed, transfer: Float64Array): AssumedVariance {
  const { netlist, deviations } = circuit;
  const { assumed } = deviations;
  if (assumed.parts.length === 0) return NOTHING;
  const { siemens, saturation } = probed.problem.values;
  const { volts } = probed.answer;
  const ground = netlist.nets;
  const across = (array: Float64Array, from: number, to: number) =>
    array[from < 0 ? ground : from] - array[to < 0 ? ground : to];
  const byPart = new Float64Array(assumed.parts.length);
  for (const [branch, part] of assumed.resistors) {
    if (deviations.resistors[branch] === 0 || siemens[branch] === 0) continue;
    const from = netlist.resistors.from[branch];
    const to = netlist.resistors.to[branch];
    const perShare = across(transfer, from, to) * across(volts, from, to) * siemens[branch];
    byPart[part] += (perShare * ASSUMED_SPREAD.ohmsShare) ** 2;
  }
  for (const [branch, part] of assumed.junctions) {
    if (saturation[branch] === 0) continue;
    const from = netlist.junctions.from[branch];
    const to = netlist.junctions.to[branch];
    const bend = netlist.junctions.emissionVolts[branch];
    const amps = Math.abs(junctionAmps(saturation[branch], bend, across(volts, from, to)));
    byPart[part] += ((across(transfer, from, to) / bend) * amps * ASSUMED_SPREAD.junctionVolts) ** 2;
  }
  return summed(byPart);
}

/** Of an admittance; `perShare` is its slope with the share by which one capacitor is larger. */
export function assumedFarads(
  circuit: ColdCircuit,
  perShare: (capacitor: number) => number,
): AssumedVariance {
  const { assumed } = circuit.deviations;
  if (assumed.parts.length === 0) return NOTHING;
  const byPart = new Float64Array(assumed.parts.length);
  for (const [branch, part] of assumed.capacitors)
    byPart[part] += (perShare(branch) * ASSUMED_SPREAD.faradsShare) ** 2;
  return summed(byPart);
}

/** How much of what has charged so far stands on capacitors nobody has seen, as a share, and on which. */
export interface AssumedCharge {
  readonly share: number;
  readonly parts: readonly string[];
}

/** Of a circuit that charges, at one time, every capacitor empty before. */
export function assumedCharge(circuit: ColdCircuit, { problem, answer }: Probed): AssumedCharge {
  const { netlist, deviations } = circuit;
  const { assumed } = deviations;
  if (assumed.capacitors.length === 0) return { share: 0, parts: [] };
  const { from, to } = netlist.capacitors;
  const ground = netlist.nets;
  const chargeOf = (branch: number) => {
    const here = answer.volts[from[branch] < 0 ? ground : from[branch]];
    const there = answer.volts[to[branch] < 0 ? ground : to[branch]];
    return problem.values.farads[branch] * Math.abs(here - there);
  };
  const total = from.reduce((sum, _, branch) => sum + chargeOf(branch), 0);
  if (total === 0) return { share: 0, parts: [] };
  const own = assumed.capacitors.map(([branch, part]) => ({ part, share: chargeOf(branch) / total }));
  return {
    share: own.reduce((sum, { share }) => sum + share, 0),
    parts: own
      .filter(({ share }) => share * ASSUMED_SPREAD.faradsShare >= RESTS_ON_SHARE * CHARGE_SPREAD)
      .sort((a, b) => b.share - a.share)
      .map(({ part }) => assumed.parts[part]),
  };
}

/** Deviation of a charging capacitance of which this share was never seen, as a share of it. */
export function chargeSpread({ share }: AssumedCharge): number {
  return Math.hypot(CHARGE_SPREAD, ASSUMED_SPREAD.faradsShare * share);
}

/** The assumed parts that a reading of this deviation rests on, weightiest first; `scale` takes their unit into its own. */
export function restsOn(
  circuit: ColdCircuit,
  { byPart }: AssumedVariance,
  otherwise: number,
  scale: number,
): readonly string[] {
  const least = (RESTS_ON_SHARE * otherwise) ** 2;
  return [...byPart]
    .map((variance, index) => ({
      ref: circuit.deviations.assumed.parts[index],
      own: variance * scale * scale,
    }))
    .filter(({ own }) => own > 0 && own >= least)
    .sort((a, b) => b.own - a.own)
    .map(({ ref }) => ref);
}
