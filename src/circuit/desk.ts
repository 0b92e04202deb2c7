/**
 * Where a solve works: the branches that conduct and the points of the junctions, in arrays that are there as long as the program
 * (`numeric/sparse-lu.ts` says why, and why loops take them into constants of their own). One circuit lies here at a time; the
 * reference is the net behind the last.
 */
import type { LiveJunctions, LiveResistors } from "./live.ts";

/** More than any board needs: what is never written to takes no memory. */
const MOST_NETS = 1 << 16;
const MOST_BRANCHES = 1 << 17;

const whole = (most: number) => new Int32Array(most);
const reals = (most: number) => new Float64Array(most);

export const DESK = {
  /** voltage of each net in hand */
  netVolts: reals(MOST_NETS),

  /** resistors between two nets; what joins each net to the reference */
  resistorFrom: whole(MOST_BRANCHES),
  resistorTo: whole(MOST_BRANCHES),
  siemens: reals(MOST_BRANCHES),
  toReference: reals(MOST_NETS),

  /** junctions in the order of `LiveJunctions`, with the numbers of their laws */
  anode: whole(MOST_BRANCHES),
  cathode: whole(MOST_BRANCHES),
  saturations: reals(MOST_BRANCHES),
  /** n kT/q, and one over it */
  bends: reals(MOST_BRANCHES),
  perVolt: reals(MOST_BRANCHES),
  critical: reals(MOST_BRANCHES),
  slots: whole(4 * MOST_BRANCHES),
  groundedNet: whole(MOST_BRANCHES),
  groundedSign: reals(MOST_BRANCHES),

  /** where each junction is linearised (volts), with the amps and the slope of its law there, its own leak not counted */
  at: reals(MOST_BRANCHES),
  amps: reals(MOST_BRANCHES),
  slope: reals(MOST_BRANCHES),
  /** the voltage between its nets where the last step ended; the point that the factors in use were made at */
  ends: reals(MOST_BRANCHES),
  factoredAt: reals(MOST_BRANCHES),
} as const;

/** The packs that lie here, and the values that were in them. */
const lying = {
  resistors: null as LiveResistors | null,
  siemens: null as Float64Array | null,
  junctions: null as LiveJunctions | null,
  saturation: null as Float64Array | null,
};

/** Lays a circuit out, or as much of it as does not lie here already. */
export function layOut(nets: number, resistors: LiveResistors, junctions: LiveJunctions): void {
  if (nets >= MOST_NETS || resistors.from.length > MOST_BRANCHES || junctions.from.length > MOST_BRANCHES)
    throw new Error(`${nets} nets with their branches are more than there is room for`);
  DESK.netVolts[nets] = 0;
  if (lying.resistors !== resistors || lying.siemens !== resistors.of) {
    DESK.resistorFrom.set(resistors.from);
    DESK.resistorTo.set(resistors.to);
    DESK.siemens.set(resistors.siemens);
    DESK.toReference.set(resistors.toReference);
    lying.resistors = resistors;
    lying.siemens = resistors.of;
  }
  if (lying.junctions !== junctions || lying.saturation !== junctions.of) {
    DESK.anode.set(junctions.from);
    DESK.cathode.set(junctions.to);
    DESK.saturations.set(junctions.saturation);
    DESK.bends.set(junctions.emissionVolts);
    DESK.perVolt.set(junctions.perVolt);
    DESK.critical.set(junctions.critical);
    DESK.slots.set(junctions.slots);
    DESK.groundedNet.set(junctions.net);
    DESK.groundedSign.set(junctions.sign);
    lying.junctions = junctions;
    lying.saturation = junctions.of;
  }
}
