/** Small circuits for the solver's tests, written as lists of wires. */
import type { Problem } from "./equations.ts";
import { frameOf } from "./frame.ts";
import { type Netlist, setSaturation, type Values } from "./netlist.ts";

export type Wire = readonly [from: number, to: number, size: number];

export interface Network {
  readonly netlist: Netlist;
  readonly values: Values;
}

/** n kT/q of every junction here. */
export const BEND = 0.0257;

/** Resistors in ohms, junctions as drops in volts at 1 mA (25 mV per e-fold), npn transistors as base, collector, emitter. */
export function network(
  nets: number,
  ohms: readonly Wire[],
  drops: readonly Wire[] = [],
  npn: readonly Wire[] = [],
): Network {
  const ends = (wires: readonly Wire[]) => ({
    from: Int32Array.from(wires, ([from]) => from),
    to: Int32Array.from(wires, ([, to]) => to),
  });
  const netlist: Netlist = {
    nets,
    names: Array.from({ length: nets }, (_, i) => `net${i}`),
    resistors: ends(ohms),
    henries: new Float64Array(ohms.length),
    junctions: { ...ends(drops), emissionVolts: new Float64Array(drops.length).fill(BEND) },
    capacitors: ends([]),
    bjts: {
      base: Int32Array.from(npn, ([b]) => b),
      collector: Int32Array.from(npn, ([, c]) => c),
      emitter: Int32Array.from(npn, ([, , e]) => e),
      sign: new Int8Array(npn.length).fill(1),
      forwardGain: 100,
      reverseGain: 2,
      emissionVolts: BEND,
    },
  };
  const values: Values = {
    siemens: Float64Array.from(ohms, ([, , r]) => 1 / r),
    saturation: new Float64Array(drops.length),
    critical: new Float64Array(drops.length),
    farads: new Float64Array(0),
    bjtSaturation: new Float64Array(npn.length).fill(1e-14),
    extra: [],
  };
  drops.forEach(([, , volts], i) => {
    setSaturation(netlist, values, i, 1e-3 * Math.exp(-volts / BEND));
  });
  return { netlist, values };
}

/** The meter between two nets. */
export function probe(
  { netlist, values }: Network,
  plus: number,
  minus: number,
  volts = 3,
  ohms = 3000,
): Problem {
  const source = { plus, minus, amps: volts / ohms, siemens: 1 / ohms };
  return { netlist, values, source, frame: frameOf(netlist, [plus, minus]), companions: null };
}
