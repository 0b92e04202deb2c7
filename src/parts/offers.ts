/** Which parts of a catalogue may go into a place, best first. */
import { type Catalogue, inHouse, type StockLine } from "./catalogue.ts";
import { RATINGS, type Ratings } from "./ratings.ts";
import { type Finding, type Fits, judge, objects, type Verdict } from "./verdict.ts";
import type { Wanted } from "./wanted.ts";

/** One line of the catalogue with what the rules say of it. */
export interface Offer {
  readonly line: StockLine;
  readonly verdict: Verdict;
}

const FITS_ORDER: Readonly<Record<Fits, number>> = { fits: 0, "fits with conditions": 1, no: 2 };

const isOfOtherKind = (finding: Finding) => finding.rule === "kind" && finding.says === "bars";

/**
 * Every line of the right kind with its verdict. Sorted by verdict, then by what is in the house, then by how much has to be fulfilled or
 * looked up, then by price (a line without one last), new before pulled, then by how near the figures are to the original's.
 */
export function offersFor(wanted: Wanted, catalogue: Catalogue): readonly Offer[] {
  const offers = catalogue.map((line) => ({
    line,
    verdict: judge(wanted, { type: line.type, used: line.used }),
  }));
  const keys = ({ line, verdict }: Offer): readonly number[] => [
    FITS_ORDER[verdict.fits],
    inHouse(line) ? 0 : 1,
    verdict.findings.filter(objects).length,
    line.price ?? Number.MAX_VALUE,
    line.used ? 1 : 0,
    distance(wanted.ratings, line.type.ratings),
  ];
  return offers
    .filter(({ verdict }) => !verdict.findings.some(isOfOtherKind))
    .map((offer) => ({ offer, keys: keys(offer) }))
    .sort((a, b) => firstDifference(a.keys, b.keys))
    .map(({ offer }) => offer);
}

/** How far two parts' figures lie apart, each by its ratio; what only one of them has does not count. */
function distance(had: Ratings, has: Ratings): number {
  return [...RATINGS].reduce((sum, [name]) => {
    const [one, other] = [had[name], has[name]];
    const both = typeof one === "number" && typeof other === "number" && one > 0 && other > 0;
    return both ? sum + Math.abs(Math.log(other / one)) : sum;
  }, 0);
}

function firstDifference(a: readonly number[], b: readonly number[]): number {
  for (const [at, key] of a.entries()) {
    const difference = key - (b[at] ?? 0);
    if (difference !== 0) return difference;
  }
  return 0;
}
