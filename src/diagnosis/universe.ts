/**
 * What can be wrong before any reading speaks: elements (a fault with the span in which it appeared), their rates, which
 * exclude each other, and which cause which.
 *
 * The prior of a set S unrolls failure in two layers, first failures R and what they knocked on, so that a leg may kill its
 * driver and a driver its leg without the definition going round in circles:
 *
 *   P(S) = sum over R within S of  P(exactly R fails first) * P(exactly S \ R follows | R)
 *
 * A site (one junction, in one life of the part) fails first with probability 1 - exp(-sum of its rates), its mode drawn in
 * proportion to the rates; given R it follows with 1 - exp(-sum of the knock-on rates from R). The two layers each sum to one,
 * so P does.
 */

export interface KnockOnEdge {
  readonly to: number;
  readonly rate: number;
}

export interface Universe {
  /** element -> index of its fault in the prior table */
  readonly fault: Int32Array; // (elements)
  /** element -> site; elements of one site exclude each other */
  readonly site: Int32Array; // (elements)
  /** element -> rate of failing first */
  readonly rate: Float64Array; // (elements)
  /** log index from which the element is there, and from which it is cured */
  readonly from: Int32Array; // (elements)
  readonly until: Int32Array; // (elements)
  /** element -> what it knocks on, and what can knock it on */
  readonly knocksOn: readonly (readonly KnockOnEdge[])[];
  readonly knockedOnBy: readonly (readonly KnockOnEdge[])[];
  /** site -> sum of the rates of its elements */
  readonly siteRate: Float64Array; // (sites)
  readonly totalRate: number;
}

export interface UniverseParts {
  readonly fault: readonly number[];
  readonly site: readonly number[];
  readonly rate: readonly number[];
  readonly from: readonly number[];
  readonly until: readonly number[];
  readonly knockOns: readonly { readonly from: number; readonly to: number; readonly rate: number }[];
}

/** Freezes the parts of a universe into flat arrays. Rates must be positive or zero; sites are numbered from 0. */
export function makeUniverse(parts: UniverseParts): Universe {
  const count = parts.fault.length;
  const sites = parts.site.reduce((most, site) => Math.max(most, site + 1), 0);
  const siteRate = new Float64Array(sites);
  for (let e = 0; e < count; e++) siteRate[parts.site[e]] += parts.rate[e];
  const knocksOn: KnockOnEdge[][] = Array.from({ length: count }, () => []);
  const knockedOnBy: KnockOnEdge[][] = Array.from({ length: count }, () => []);
  for (const edge of parts.knockOns) {
    if (parts.site[edge.from] === parts.site[edge.to]) continue;
    knocksOn[edge.from].push({ to: edge.to, rate: edge.rate });
    knockedOnBy[edge.to].push({ to: edge.from, rate: edge.rate });
  }
  return {
    fault: Int32Array.from(parts.fault),
    site: Int32Array.from(parts.site),
    rate: Float64Array.from(parts.rate),
    from: Int32Array.from(parts.from),
    until: Int32Array.from(parts.until),
    knocksOn,
    knockedOnBy,
    siteRate,
    totalRate: siteRate.reduce((sum, rate) => sum + rate, 0),
  };
}

/** Is the element on the board at this index of the log? */
export function presentAt(universe: Universe, element: number, logIndex: number): boolean {
  return universe.from[element] <= logIndex && logIndex < universe.until[element];
}
