/** The whole answer to "which part will do" for one place: what is asked, by which rules, and what there is. */
import type { Board, Part } from "../board/board.ts";
import { type Catalogue, inHouse, type StockLine } from "./catalogue.ts";
import { BASELINE, type IncomingStep, incomingCheck } from "./incoming-check.ts";
import { type Offer, offersFor } from "./offers.ts";
import type { PartRole } from "./part-role.ts";
import { ratingText } from "./rating-text.ts";
import { RATINGS, type RatingName, type Ratings } from "./ratings.ts";
import type { Rule } from "./rule.ts";
import { rulesFor } from "./rule-table.ts";
import type { Finding, Fits } from "./verdict.ts";
import { type Original, type Wanted, wantedAt } from "./wanted.ts";

/** One rating of the original, for a person; the value is in SI units. */
export interface KnownRating {
  readonly name: RatingName;
  readonly words: string;
  readonly value: number | string | boolean;
  readonly text: string;
}

export interface OfferAnswer extends Omit<StockLine, "type"> {
  readonly name: string;
  readonly kind: string;
  readonly fits: Fits;
  readonly inHouse: boolean;
  /** where its ratings were read */
  readonly source: string | null;
  readonly ratings: readonly KnownRating[];
  readonly findings: readonly Finding[];
  /** what to check of it before it goes in */
  readonly incoming: readonly IncomingStep[];
}

export interface RuleAnswer extends Pick<Rule, "id" | "why" | "mark" | "source" | "custom"> {
  /** what is asked in this place */
  readonly wants: string;
}

export interface FitAnswer {
  readonly part: string;
  readonly kind: string;
  readonly role: PartRole;
  readonly original: string | null;
  readonly ratings: readonly KnownRating[];
  readonly alike: readonly string[];
  readonly parallel: readonly string[];
  readonly rules: readonly RuleAnswer[];
  readonly incoming: readonly IncomingStep[];
  readonly baseline: string;
  readonly offers: readonly OfferAnswer[];
}

/** The ratings of a part that are known, in the table's order. */
export function knownRatings(ratings: Ratings): readonly KnownRating[] {
  return [...RATINGS].flatMap(([name, rule]) => {
    const value = ratings[name];
    return value === undefined ? [] : [{ name, words: rule.words, value, text: ratingText(value, rule) }];
  });
}

function offerAnswer({ line, verdict }: Offer, role: PartRole): OfferAnswer {
  const { type, ...stock } = line;
  return {
    name: type.name,
    kind: type.kind,
    fits: verdict.fits,
    inHouse: inHouse(line),
    ...stock,
    source: type.source === null ? null : `${type.source.mark}: ${type.source.words}`,
    ratings: knownRatings(type.ratings),
    findings: verdict.findings,
    incoming: incomingCheck(type.kind, role, type.ratings, line.used),
  };
}

function rulesAt(wanted: Wanted): readonly RuleAnswer[] {
  const asked = rulesFor(wanted.role).map(({ id, judge, why, mark, source, custom }) => {
    return { id, wants: judge.wants(wanted), why, mark, source, custom };
  });
  return asked.filter(({ wants }) => wants !== "");
}

/** `original` is the catalogue's entry of the part that was there, where its marking was read. Pure; offers come best first. */
export function fitAnswer(
  board: Board,
  part: Part,
  original: Original | null,
  catalogue: Catalogue,
): FitAnswer {
  const wanted = wantedAt(board, part, original);
  return {
    part: part.ref,
    kind: part.kind,
    role: wanted.role,
    original: wanted.name,
    ratings: knownRatings(wanted.ratings),
    alike: wanted.alike,
    parallel: wanted.parallel,
    rules: rulesAt(wanted),
    incoming: incomingCheck(part.kind, wanted.role, wanted.ratings, true),
    baseline: BASELINE,
    offers: offersFor(wanted, catalogue).map((offer) => offerAnswer(offer, wanted.role)),
  };
}
