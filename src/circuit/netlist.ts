/**
 * A circuit as flat arrays: nets numbered from 0, the reference -1, and branches between them. What a fault changes are the
 * numbers (`Values`); which nets a branch joins never changes, so that one elimination plan serves every fault.
 */
import { criticalVolts } from "./junction.ts";

/** Conductance from every net to the reference, so that a floating net has a voltage. It stands in every deck. */
export const NET_LEAK_SIEMENS = 1e-12;
/** No wire is better than this: keeps conductances within what doubles can add up. */
export const LEAST_OHMS = 1e-3;

/** Two-ended branches: from -> to. */
export interface Ends {
  readonly from: Int32Array;
  readonly to: Int32Array;
}

export interface Netlist {
  readonly nets: number;
  /** name of each net, for decks and failures */
  readonly names: readonly string[];
  readonly resistors: Ends;
  /** series inductance of each resistor, henries; it matters for alternating current only */
  readonly henries: Float64Array;
  readonly junctions: Ends & { readonly emissionVolts: Float64Array };
  readonly capacitors: Ends;
  /** transistors, Ebers-Moll in its transport form; sign is 1 for NPN, -1 for PNP */
  readonly bjts: {
    readonly base: Int32Array;
    readonly collector: Int32Array;
    readonly emitter: Int32Array;
    readonly sign: Int8Array;
    readonly forwardGain: number;
    readonly reverseGain: number;
    readonly emissionVolts: number;
  };
}

/** The numbers of the branches: siemens, saturation amps, farads. Zero takes a branch out. */
export interface Values {
  readonly siemens: Float64Array;
  readonly saturation: Float64Array;
  readonly critical: Float64Array;
  readonly farads: Float64Array;
  readonly bjtSaturation: Float64Array;
  /** resistors that the pattern does not have: leaks between nets, clips; one after the other from, to, siemens */
  readonly extra: readonly ExtraResistor[];
}

export interface ExtraResistor {
  readonly from: number;
  readonly to: number;
  readonly siemens: number;
}

/** Values with arrays of their own where they are about to change; what stays is shared. */
export function ownValues(
  values: Values,
  changing: { readonly siemens: boolean; readonly junctions: boolean; readonly farads: boolean },
  extra: readonly ExtraResistor[],
): Values {
  return {
    siemens: changing.siemens ? values.siemens.slice() : values.siemens,
    saturation: changing.junctions ? values.saturation.slice() : values.saturation,
    critical: changing.junctions ? values.critical.slice() : values.critical,
    farads: changing.farads ? values.farads.slice() : values.farads,
    bjtSaturation: changing.junctions ? values.bjtSaturation.slice() : values.bjtSaturation,
    extra,
  };
}

/** Sets the saturation current of one junction (0 takes it out) with the step limit that follows from it. */
export function setSaturation(netlist: Netlist, values: Values, junction: number, amps: number): void {
  values.saturation[junction] = amps;
  values.critical[junction] = amps > 0 ? criticalVolts(amps, netlist.junctions.emissionVolts[junction]) : 0;
}

/** Every pair of nets that a branch joins: the pattern, two indexes each. */
export function patternPairs(netlist: Netlist): number[] {
  const pairs: number[] = [];
  for (const ends of [netlist.resistors, netlist.junctions, netlist.capacitors])
    for (let i = 0; i < ends.from.length; i++) pairs.push(ends.from[i], ends.to[i]);
  const { base, collector, emitter } = netlist.bjts;
  for (let i = 0; i < base.length; i++)
    pairs.push(base[i], collector[i], base[i], emitter[i], collector[i], emitter[i]);
  return pairs;
}
