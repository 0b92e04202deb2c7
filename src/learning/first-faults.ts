/** Of the faults a board came in with, which failed first and which were brought by another. */
import type { PriorTable } from "../priors/fault-prior.ts";

/** A knock-on that could happen, its levels taken together: one parent, one junction and mode of a child. */
export interface Chance {
  readonly rule: string;
  readonly children: ReadonlyMap<number, number>;
  readonly rate: number;
}

export interface KnockOnIndex {
  chancesOf(parent: number): readonly Chance[];
  rate(parent: number, child: number): number;
  /** sum of the rates from `parent` to every mode of the junction that `child` is at */
  rateToSite(parent: number, child: number): number;
}

/** The table's knock-ons before a board comes in, by parent, gathered when one is first asked for. */
export function knockOnIndex({ faults, knockOns }: PriorTable): KnockOnIndex {
  const byParent = new Map<number, { child: number; rate: number; rule: string }[]>();
  for (const { parent, child, arrivalRate, rule } of knockOns) {
    const edge = { child, rate: arrivalRate, rule };
    const there = byParent.get(parent);
    if (there === undefined) byParent.set(parent, [edge]);
    else there.push(edge);
  }
  const known = new Map<number, readonly Chance[]>();
  const sum = (parent: number, counts: (child: number) => boolean) =>
    (byParent.get(parent) ?? []).reduce(
      (total, { child, rate }) => (counts(child) ? total + rate : total),
      0,
    );
  return {
    chancesOf: (parent) => {
      const made = known.get(parent) ?? gathered(byParent.get(parent) ?? [], faults);
      known.set(parent, made);
      return made;
    },
    rate: (parent, child) => sum(parent, (other) => other === child),
    rateToSite: (parent, child) => sum(parent, (other) => faults[other].site === faults[child].site),
  };
}

function gathered(
  edges: readonly { child: number; rate: number; rule: string }[],
  faults: PriorTable["faults"],
): readonly Chance[] {
  const chances = new Map<string, { rule: string; children: Map<number, number>; rate: number }>();
  for (const { child, rate, rule } of edges) {
    const key = `${rule} ${faults[child].site}:${faults[child].fault.mode}`;
    const chance = chances.get(key) ?? { rule, children: new Map<number, number>(), rate: 0 };
    chance.children.set(child, (chance.children.get(child) ?? 0) + rate);
    chance.rate += rate;
    chances.set(key, chance);
  }
  return [...chances.values()];
}

export interface FirstFaults {
  /** per member of the set: probability that it failed first */
  readonly first: readonly number[];
  /** `brought[i][j]`: probability that member i failed first and brought member j */
  readonly brought: readonly (readonly number[])[];
  /** `tried[i][j]`: probability that member i failed first and member j had not */
  readonly tried: readonly (readonly number[])[];
}

/** Sets are small (the search stops at nine); beyond this each member is weighed by itself. */
const MOST_TOGETHER = 10;

/**
 * The two-layer prior of `diagnosis/universe.ts` taken apart: over every way to split the set into those that failed first and those
 * that followed, weighed as the prior weighs them.
 * @param set - faults of the table that the board came in with, at most one a junction
 */
export function firstFaults(table: PriorTable, index: KnockOnIndex, set: readonly number[]): FirstFaults {
  const size = Math.min(set.length, MOST_TOGETHER);
  const to = set.map((parent) => set.map((child) => (parent === child ? 0 : index.rate(parent, child))));
  const toSite = set.map((parent) =>
    set.map((child) => (parent === child ? 0 : index.rateToSite(parent, child))),
  );
  const outside = set.map(
    (parent, i) =>
      index.chancesOf(parent).reduce((sum, { rate }) => sum + rate, 0) -
      toSite[i].reduce((sum, rate) => sum + rate, 0),
  );
  const first = set.map((_, i) => (i < size ? 0 : 1));
  const brought = set.map(() => set.map(() => 0));
  const tried = set.map(() => set.map(() => 0));
  let total = 0;
  for (let firsts = 1; firsts < 1 << size; firsts++) {
    let weight = 1;
    const into = set.map((_, j) =>
      (firsts & (1 << j)) !== 0
        ? 0
        : set.reduce((sum, _parent, i) => ((firsts & (1 << i)) !== 0 ? sum + to[i][j] : sum), 0),
    );
    for (let j = 0; j < size && weight > 0; j++) {
      if ((firsts & (1 << j)) !== 0) {
        weight *= table.faults[set[j]].rate * Math.exp(-outside[j]);
        continue;
      }
      const site = set.reduce((sum, _parent, i) => ((firsts & (1 << i)) !== 0 ? sum + toSite[i][j] : sum), 0);
      weight *= into[j] > 0 ? (-Math.expm1(-site) * into[j]) / site : 0;
    }
    if (weight <= 0) continue;
    total += weight;
    for (let i = 0; i < size; i++) {
      if ((firsts & (1 << i)) === 0) continue;
      first[i] += weight;
      for (let j = 0; j < size; j++) {
        if (into[j] > 0) brought[i][j] += (weight * to[i][j]) / into[j];
        if ((firsts & (1 << j)) === 0) tried[i][j] += weight;
      }
    }
  }
  if (total > 0)
    for (let i = 0; i < size; i++) {
      first[i] /= total;
      brought[i] = brought[i].map((share) => share / total);
      tried[i] = tried[i].map((share) => share / total);
    }
  return { first, brought, tried };
}
