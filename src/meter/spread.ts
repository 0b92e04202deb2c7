/**
 * The standard deviation of a prediction: part tolerances through the adjoint (one transposed solve gives the slope for every
 * part), and what all readings share: the meter's current and the room's temperature.
 */

import type { ColdMode } from "../bench/event.ts";
import { junctionSiemens } from "../circuit/junction.ts";
import { Linearised } from "../circuit/linearised.ts";
import type { ColdCircuit } from "../cold/cold-circuit.ts";
import type { Probed } from "./probing.ts";
import { ohmsPerVolt } from "./ranges.ts";

export const METER_SPREAD = {
  /** meters of one class differ in test current by this share (published hand-held meters: 0.7 to 1.5 mA; from memory) */
  currentShare: 0.1,
  /** share of the way to a constant-current meter that a real one may stand (from memory) */
  constantCurrentShare: 0.5,
  /** a room is this many kelvin from 25 degC (from memory), and a junction drops this much less per kelvin (published: J12) */
  kelvin: 3,
  voltsPerKelvin: -0.002,
  /** ohms ranges: share of reading (published hand-held meters: 0.8 %) and contact, ohms */
  ohmsShare: 0.008,
  ohmsContact: 0.05,
  /** capacitance of a charging bus, share (20 % parts, two deviations) */
  capacitanceShare: 0.1,
  /** the last digit in diode mode, volts */
  diodeVolts: 0.001,
} as const;

export interface Spread {
  readonly spread: number;
  readonly common: number;
}

/** What the adjoint found, kept for the filter of silent faults. */
export interface Sensitivity extends Spread {
  readonly linearised: Linearised;
}

/** Sum of squares of the volts at the probes that part tolerances make, and the signed slope per junction volt. */
function partVolts(
  circuit: ColdCircuit,
  probed: Probed,
  transfer: Float64Array,
): { square: number; perJunctionVolt: number } {
  const { netlist, deviations } = circuit;
  const { values } = probed.problem;
  const { volts } = probed.answer;
  const ground = netlist.nets;
  const at = (array: Float64Array, net: number) => array[net < 0 ? ground : net];
  const across = (array: Float64Array, from: number, to: number) => at(array, from) - at(array, to);
  let square = 0;
  let perJunctionVolt = 0;
  for (let i = 0; i < values.siemens.length; i++) {
    const sigma = deviations.resistors[i];
    if (sigma === 0 || values.siemens[i] === 0) continue;
    const from = netlist.resistors.from[i];
    const to = netlist.resistors.to[i];
    square += (across(transfer, from, to) * across(volts, from, to) * values.siemens[i] * sigma) ** 2;
  }
  for (let i = 0; i < values.saturation.length; i++) {
    if (values.saturation[i] === 0) continue;
    const from = netlist.junctions.from[i];
    const to = netlist.junctions.to[i];
    const slope = junctionSiemens(
      values.saturation[i],
      netlist.junctions.emissionVolts[i],
      across(volts, from, to),
    );
    const perVolt = across(transfer, from, to) * slope;
    square += (perVolt * deviations.junctions[i]) ** 2;
    perJunctionVolt += perVolt;
  }
  return { square, perJunctionVolt };
}

/** Spread of a settled reading in the reading's unit. */
export function sensitivityOf(circuit: ColdCircuit, mode: ColdMode, probed: Probed): Sensitivity {
  const { problem, range, volts } = probed;
  const linearised = new Linearised(problem, probed.answer.volts);
  const { plus, minus } = problem.source;
  const transfer = linearised.transfer(plus, minus);
  const ground = problem.netlist.nets;
  const seen = transfer[plus < 0 ? ground : plus] - transfer[minus < 0 ? ground : minus];
  const { square, perJunctionVolt } = partVolts(circuit, probed, transfer);
  const M = METER_SPREAD;
  const amps = (range.openVolts - volts) / range.ohms;
  const heat = perJunctionVolt * M.voltsPerKelvin * M.kelvin;
  if (mode === "diode") {
    const current = seen * amps * M.currentShare;
    const toConstant =
      M.constantCurrentShare * Math.min((seen * volts) / range.ohms, range.openVolts - volts);
    const common = Math.hypot(heat, current, toConstant);
    return { linearised, common, spread: Math.hypot(Math.sqrt(square), common, M.diodeVolts) };
  }
  const perVolt = ohmsPerVolt(range, volts);
  const common = Math.hypot(heat * perVolt, M.ohmsShare * probed.raw);
  return {
    linearised,
    common,
    spread: Math.hypot(Math.sqrt(square) * perVolt, common, M.ohmsContact),
  };
}

/**
 * Spread of a climbing reading. Between the probes stands a capacitance that charges towards the open voltage: from V = E (1 -
 * exp(-x)) follow the slopes with its tolerance and with the meter's current, and what a constant current would show (E x).
 */
export function climbingSpread(mode: ColdMode, probed: Probed, settled: Spread): Spread {
  const { range, volts } = probed;
  const M = METER_SPREAD;
  const share = Math.min(Math.max(volts / range.openVolts, 0), 0.999);
  const x = -Math.log1p(-share);
  const slope = (range.openVolts - volts) * x;
  const toConstant = M.constantCurrentShare * (range.openVolts * Math.min(1, x) - volts);
  const scale = mode === "diode" ? 1 : ohmsPerVolt(range, volts);
  const common = Math.hypot(slope * M.currentShare, mode === "diode" ? toConstant : 0) * scale;
  const own = Math.hypot(slope * M.capacitanceShare * scale, settled.spread - Math.abs(settled.common));
  return { common, spread: Math.hypot(common, own) };
}
