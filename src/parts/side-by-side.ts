/** Candidates beside the original, rating by rating, each figure with what the rules say of it. */
import type { KnownRating, OfferAnswer } from "./fit-answer.ts";
import { RATINGS, type RatingName } from "./ratings.ts";
import type { Says } from "./rule.ts";

/** More do not stand beside each other on a phone. */
const MOST_COLUMNS = 3;

/** What stands against one figure; null where nothing does. */
export type Against = "bars" | "asks" | "open" | null;

export interface SideBySide {
  readonly columns: readonly {
    readonly name: string;
    /** in words */
    readonly fits: string;
    /** in the drawer or on a donor board; else a type that many makers sell */
    readonly inHouse: boolean;
  }[];
  readonly rows: readonly {
    readonly rating: RatingName;
    readonly words: string;
    /** the original's; null where it is not known */
    readonly was: string | null;
    /** one a column; the text null where that one's is not known */
    readonly cells: readonly { readonly text: string | null; readonly against: Against }[];
  }[];
}

const WEIGHT: Readonly<Record<Says, number>> = { bars: 0, asks: 1, open: 2, notes: 3, meets: 4 };

/** What the weightiest finding about a rating says, where it objects; what only the original's lacks stands against no candidate. */
function againstOf({ findings }: OfferAnswer, rating: RatingName, text: string | null): Against {
  const about = findings.filter((finding) => finding.about === rating).map(({ says }) => says);
  const [first] = about.sort((one, other) => WEIGHT[one] - WEIGHT[other]);
  if (first === "open") return text === null ? "open" : null;
  return first === "bars" || first === "asks" ? first : null;
}

/**
 * The first of each name: one type in two drawers is one column. Ratings that neither the original nor any candidate tells stand in no row.
 * @param offers - best first
 * @returns null where there is none to compare
 */
export function sideBySide(
  original: readonly KnownRating[],
  offers: readonly OfferAnswer[],
): SideBySide | null {
  const columns = offers
    .filter(({ name }, at) => offers.findIndex((one) => one.name === name) === at)
    .slice(0, MOST_COLUMNS);
  if (columns.length === 0) return null;
  const textOf = (known: readonly KnownRating[], name: RatingName) =>
    known.find((one) => one.name === name)?.text ?? null;
  const rows = [...RATINGS].flatMap(([rating, { words }]): SideBySide["rows"] => {
    const was = textOf(original, rating);
    const cells = columns.map((offer) => {
      const text = textOf(offer.ratings, rating);
      return { text, against: againstOf(offer, rating, text) };
    });
    const told = was !== null || cells.some(({ text }) => text !== null);
    return told ? [{ rating, words, was, cells }] : [];
  });
  return { columns: columns.map(({ name, fits, inHouse }) => ({ name, fits, inHouse })), rows };
}
