/** Where each branch of a netlist stamps into a matrix: the elimination plan of one pattern with its slots looked up. */
import { type EliminationPlan, extendPlan, planElimination, slotOf } from "../numeric/elimination-plan.ts";
import { type Netlist, patternPairs } from "./netlist.ts";

/** Four slots per branch: from-from, to-to, from-to, to-from. */
export type PairSlots = Int32Array;

export interface Frame {
  readonly plan: EliminationPlan;
  readonly resistors: PairSlots;
  readonly junctions: PairSlots;
  readonly capacitors: PairSlots;
  /** nine slots per transistor: rows base, collector, emitter by columns base, collector, emitter */
  readonly bjts: Int32Array;
  /** slots of the pairs given beyond the netlist's own, in their order */
  readonly extra: PairSlots;
}

function pairSlots(plan: EliminationPlan, from: ArrayLike<number>, to: ArrayLike<number>): PairSlots {
  const slots = new Int32Array(4 * from.length);
  for (let i = 0; i < from.length; i++) {
    const a = from[i];
    const b = to[i];
    slots[4 * i] = slotOf(plan, a, a);
    slots[4 * i + 1] = slotOf(plan, b, b);
    slots[4 * i + 2] = slotOf(plan, a, b);
    slots[4 * i + 3] = slotOf(plan, b, a);
  }
  return slots;
}

const bare = new WeakMap<Netlist, Frame>();

/** The frame of the netlist alone: planned once, all others of it are grown from its plan. */
export function bareFrame(netlist: Netlist): Frame {
  const known = bare.get(netlist);
  if (known !== undefined) return known;
  const plan = planElimination(netlist.nets, patternPairs(netlist));
  const { base, collector, emitter } = netlist.bjts;
  const bjts = new Int32Array(9 * base.length);
  for (let i = 0; i < base.length; i++) {
    const pins = [base[i], collector[i], emitter[i]];
    for (let row = 0; row < 3; row++)
      for (let column = 0; column < 3; column++)
        bjts[9 * i + 3 * row + column] = slotOf(plan, pins[row], pins[column]);
  }
  const frame = {
    plan,
    resistors: pairSlots(plan, netlist.resistors.from, netlist.resistors.to),
    junctions: pairSlots(plan, netlist.junctions.from, netlist.junctions.to),
    capacitors: pairSlots(plan, netlist.capacitors.from, netlist.capacitors.to),
    bjts,
    extra: new Int32Array(0),
  };
  bare.set(netlist, frame);
  return frame;
}

/** The frame of `netlist` with further pairs of nets joined (the meter, leaks, clips); two indexes per pair. */
export function frameOf(netlist: Netlist, extraPairs: readonly number[]): Frame {
  const own = bareFrame(netlist);
  const plan = extendPlan(own.plan, extraPairs);
  const extra = pairSlots(
    plan,
    extraPairs.filter((_, i) => i % 2 === 0),
    extraPairs.filter((_, i) => i % 2 === 1),
  );
  return { ...own, plan, extra };
}

/** Adds a conductance between two nets to a matrix: four slots from `at` on. */
export function stampPair(matrix: Float64Array, slots: PairSlots, at: number, siemens: number): void {
  matrix[slots[at]] += siemens;
  matrix[slots[at + 1]] += siemens;
  matrix[slots[at + 2]] -= siemens;
  matrix[slots[at + 3]] -= siemens;
}
