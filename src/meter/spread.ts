/**
 * The standard deviation of a prediction: part tolerances through the adjoint (one transposed solve gives the slope for every
 * part), and what all readings share: the meter's current and the room's temperature.
 */

import type { ColdMode } from "../bench/event.ts";
import { junctionAmps } from "../circuit/junction.ts";
import type { Linearised } from "../circuit/linearised.ts";
import type { ColdCircuit } from "../cold/cold-circuit.ts";
import { BJT_MODEL, TABLE_AMPS } from "../cold/model-table.ts";
import { type AssumedCharge, assumedVolts, chargeSpread, restsOn } from "./assumed-spread.ts";
import { amongMeters } from "./other-meters.ts";
import type { Probed } from "./probing.ts";
import { ohmsPerVolt, type Range } from "./ranges.ts";

export const METER_SPREAD = {
  /** meters differ in test current by this share (published hand-held meters: 0.4 to 1.5 mA; from memory) */
  currentShare: 0.33,
  /** share of the way to a constant-current meter that a real one may stand (from memory) */
  constantCurrentShare: 0.5,
  /** a workshop is this many kelvin from 25 degC, 10 to 40 degC over the year (from memory), and a junction drops this much less per kelvin (published: J12) */
  kelvin: 9,
  voltsPerKelvin: -0.002,
  /** ohms ranges: share of reading (published hand-held meters: 0.8 %, two deviations) and contact, ohms */
  ohmsShare: 0.004,
  ohmsContact: 0.1,
  /** added to ohms before their logarithm is taken: below it a dead short, contact and leads are one reading (from memory) */
  contactOhms: 0.3,
  /** farads of junctions, gates and leads beside anything that is measured: far below it a capacitance says nothing (from memory) */
  strayFarads: 1.2e-9,
  /** emission of a junction, share: 1.2 to 1.6 among silicon parts (from memory) */
  emissionShare: 0.12,
  /** current of a junction in reverse, deviation of its ln (from memory) */
  leakSpreadLn: 1.5,
  /** the last digit in diode mode, volts */
  diodeVolts: 0.001,
} as const;

export interface Spread {
  /** where unknown meters centre (`MeterReading.centre`) */
  readonly centre: number;
  readonly spread: number;
  readonly common: number;
  readonly alike: number;
  /** assumed parts that make much of the spread, weightiest first */
  readonly restsOn: readonly string[];
}

/** A junction by which the probes move less than this many volts for each volt of its drop is left out. */
const LEAST_SHARE = 1e-9;

/**
 * Variance from type to type of a junction's drop at `amps`, volts squared: at the 1 mA of the table, and by its emission, which
 * below that matters ever more; of a leak in reverse hardly more than the decade is known.
 */
function typeVariance(
  saturationAmps: number,
  emissionVolts: number,
  amps: number,
  volts: number,
  atOneMilliamp: number,
): number {
  const M = METER_SPREAD;
  const folds = Math.log(Math.max(amps, saturationAmps) / TABLE_AMPS);
  const byEmission = M.emissionShare * emissionVolts * folds;
  const leak = volts < 0 ? M.leakSpreadLn * emissionVolts : 0;
  return atOneMilliamp * atOneMilliamp + byEmission * byEmission + leak * leak;
}

interface PartVolts {
  alike: number;
  types: number;
  perJunctionVolt: number;
}

/**
 * Sums of squares of the volts at the probes that parts of one type and types make, and the signed slope per junction volt.
 */
function partVolts(circuit: ColdCircuit, probed: Probed, transfer: Float64Array): PartVolts {
  const { netlist, deviations } = circuit;
  const { values } = probed.problem;
  const { volts } = probed.answer;
  const ground = netlist.nets;
  const sums: PartVolts = { alike: 0, types: 0, perJunctionVolt: 0 };
  const { siemens } = values;
  const { from, to } = netlist.resistors;
  for (let i = 0; i < siemens.length; i++) {
    const sigma = deviations.resistors[i];
    if (sigma === 0 || siemens[i] === 0) continue;
    const a = from[i] < 0 ? ground : from[i];
    const b = to[i] < 0 ? ground : to[i];
    const own = (transfer[a] - transfer[b]) * (volts[a] - volts[b]) * siemens[i] * sigma;
    sums.alike += own * own;
  }
  addJunctions(circuit, probed, transfer, sums);
  addTransistors(circuit, probed, transfer, sums);
  return sums;
}

function addJunctions(
  { netlist, deviations }: ColdCircuit,
  { problem, answer }: Probed,
  transfer: Float64Array,
  sums: PartVolts,
): void {
  const { saturation } = problem.values;
  const { volts } = answer;
  const ground = netlist.nets;
  const { from, to, emissionVolts } = netlist.junctions;
  for (let i = 0; i < saturation.length; i++) {
    if (saturation[i] === 0) continue;
    const a = from[i] < 0 ? ground : from[i];
    const b = to[i] < 0 ? ground : to[i];
    const bend = emissionVolts[i];
    const seen = (transfer[a] - transfer[b]) / bend;
    // no junction carries more than the meter gives
    if (Math.abs(seen * problem.source.amps) < LEAST_SHARE) continue;
    const here = volts[a] - volts[b];
    const amps = Math.abs(junctionAmps(saturation[i], bend, here));
    // a drop higher by one volt takes the current down by the factor exp(-1 / bend), at whatever volts it stands
    const perVolt = seen * amps;
    if (Math.abs(perVolt) < LEAST_SHARE) continue;
    const own = perVolt * deviations.junctions[i];
    sums.alike += own * own;
    sums.types +=
      perVolt * perVolt * typeVariance(saturation[i], bend, amps, here, deviations.junctionTypes[i]);
    sums.perJunctionVolt += Math.sign(here) * perVolt;
  }
}

function addTransistors(
  { netlist }: ColdCircuit,
  { problem, answer }: Probed,
  transfer: Float64Array,
  sums: PartVolts,
): void {
  const { bjtSaturation } = problem.values;
  const ground = netlist.nets;
  const across = (array: Float64Array, from: number, to: number): number =>
    array[from < 0 ? ground : from] - array[to < 0 ? ground : to];
  const { volts } = answer;
  const { base, collector, emitter, sign, forwardGain, reverseGain, emissionVolts } = netlist.bjts;
  for (let i = 0; i < bjtSaturation.length; i++) {
    if (bjtSaturation[i] === 0) continue;
    const [b, c, e] = [base[i], collector[i], emitter[i]];
    const forward = junctionAmps(bjtSaturation[i], emissionVolts, sign[i] * across(volts, b, e));
    const reverse = junctionAmps(bjtSaturation[i], emissionVolts, sign[i] * across(volts, b, c));
    const moved =
      across(transfer, c, e) * (forward - reverse) +
      (across(transfer, b, e) * forward) / forwardGain +
      (across(transfer, b, c) * reverse) / reverseGain;
    const perVolt = moved / emissionVolts;
    sums.alike += (perVolt * BJT_MODEL.partVolts) ** 2;
    sums.types += (perVolt * BJT_MODEL.typeVolts) ** 2;
    sums.perJunctionVolt += sign[i] * perVolt;
  }
}

/**
 * Spread of a settled reading in the reading's unit.
 * @param linearised - the circuit at its solution
 * @param ranges - of the reference meter in this mode
 * @param boardOhms - insulation of the board
 */
export function sensitivityOf(
  circuit: ColdCircuit,
  mode: ColdMode,
  probed: Probed,
  linearised: Linearised,
  ranges: readonly Range[],
  boardOhms: number,
): Spread {
  const { problem, range, volts } = probed;
  const { plus, minus } = problem.source;
  const transfer = linearised.transfer(plus, minus);
  const ground = problem.netlist.nets;
  const seen = transfer[plus < 0 ? ground : plus] - transfer[minus < 0 ? ground : minus];
  const parts = partVolts(circuit, probed, transfer);
  const assumed = assumedVolts(circuit, probed, transfer);
  const M = METER_SPREAD;
  const amps = (range.openVolts - volts) / range.ohms;
  const heat = parts.perJunctionVolt * M.voltsPerKelvin * M.kelvin;
  if (mode === "diode") {
    const current = seen * amps * M.currentShare;
    const toConstant =
      M.constantCurrentShare * Math.min((seen * volts) / range.ohms, range.openVolts - volts);
    const common = Math.hypot(heat, current, toConstant);
    const alike = Math.hypot(Math.sqrt(parts.alike), M.diodeVolts);
    const seenSpread = Math.hypot(alike, Math.sqrt(parts.types), common);
    return {
      common,
      alike,
      spread: Math.hypot(seenSpread, Math.sqrt(assumed.variance)),
      centre: probed.raw,
      restsOn: restsOn(circuit, assumed, seenSpread, 1),
    };
  }
  const perVolt = ohmsPerVolt(range, volts);
  const { centreOhms, deviationLn } = amongMeters(mode, probed, ranges, transfer, boardOhms);
  const common = Math.hypot(heat * perVolt, M.ohmsShare * probed.raw);
  const meters = deviationLn * probed.raw;
  const alike = Math.hypot(Math.sqrt(parts.alike) * perVolt, M.ohmsContact);
  const seenSpread = Math.hypot(alike, Math.sqrt(parts.types) * perVolt, common, meters);
  return {
    common,
    alike,
    centre: centreOhms,
    spread: Math.hypot(seenSpread, Math.sqrt(assumed.variance) * perVolt),
    restsOn: restsOn(circuit, assumed, seenSpread, perVolt),
  };
}

/**
 * Spread of a climbing reading. Between the probes stands a capacitance that charges towards the open voltage: from V = E (1 -
 * exp(-x)) follow the slopes with its tolerance and with the meter's current, and what a constant current would show (E x).
 */
export function climbingSpread(
  mode: ColdMode,
  probed: Probed,
  settled: Spread,
  assumed: AssumedCharge,
): Spread {
  const { range, volts } = probed;
  const M = METER_SPREAD;
  const share = Math.min(Math.max(volts / range.openVolts, 0), 0.999);
  const x = -Math.log1p(-share);
  const slope = (range.openVolts - volts) * x;
  const toConstant = M.constantCurrentShare * (range.openVolts * Math.min(1, x) - volts);
  const scale = mode === "diode" ? 1 : ohmsPerVolt(range, volts);
  const common = Math.hypot(slope * M.currentShare, mode === "diode" ? toConstant : 0) * scale;
  const own = Math.hypot(slope * chargeSpread(assumed) * scale, settled.spread - Math.abs(settled.common));
  return {
    centre: probed.raw,
    common,
    alike: own,
    spread: Math.hypot(common, own),
    restsOn: [...new Set([...assumed.parts, ...settled.restsOn])],
  };
}
