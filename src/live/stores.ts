/** Capacitors between the same two terminals, as one: side by side they share their charge. */
import type { CapacitorBranch } from "./power-circuit.ts";

/** Two terminals; the number after the last one is the reference. */
export interface Ends {
  readonly from: number;
  readonly to: number;
}

export interface Store extends Ends {
  farads: number;
  readonly of: number[];
}

/** `ends`: those of each capacitor, in their order. */
export function storesOf(capacitors: readonly CapacitorBranch[], ends: readonly Ends[]): readonly Store[] {
  const stores: Store[] = [];
  capacitors.forEach(({ farads }, i) => {
    const { from, to } = ends[i];
    const same = stores.find((store) => store.from === from && store.to === to);
    if (same === undefined) {
      stores.push({ from, to, farads, of: [i] });
      return;
    }
    same.farads += farads;
    same.of.push(i);
  });
  return stores;
}

/** Volts held, from those of each capacitor. */
export function gather(
  stores: readonly Store[],
  capacitors: readonly CapacitorBranch[],
  volts: Float64Array,
): Float64Array {
  return Float64Array.from(
    stores,
    ({ of, farads }) => of.reduce((sum, i) => sum + volts[i] * capacitors[i].farads, 0) / farads,
  );
}

/** Volts of each capacitor, from those held. */
export function scatter(
  stores: readonly Store[],
  capacitors: readonly CapacitorBranch[],
  held: Float64Array,
): Float64Array {
  const volts = new Float64Array(capacitors.length);
  stores.forEach(({ of }, store) => {
    for (const i of of) volts[i] = held[store];
  });
  return volts;
}
