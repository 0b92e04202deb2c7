/** The whole answer to "which part will do" for one place: what is asked, by which rules, and what there is. */
import type { Board, Part } from "../board/board.ts";
import { MARK_WORDS } from "../units/mark.ts";
import { type Catalogue, inHouse, type StockLine } from "./catalogue.ts";
import { BASELINE, type IncomingStep, incomingCheck } from "./incoming-check.ts";
import { type Offer, offersFor } from "./offers.ts";
import { type PartRole, ROLE_WORDS } from "./part-role.ts";
import { ratingText } from "./rating-text.ts";
import { RATINGS, type RatingName, type Ratings } from "./ratings.ts";
import type { Rule } from "./rule.ts";
import { rulesFor } from "./rule-table.ts";
import { FITS_WORDS, type Finding } from "./verdict.ts";
import { type Original, type Wanted, wantedAt } from "./wanted.ts";

/** One rating of the original, for a person; the value is in SI units. */
export interface KnownRating {
  readonly name: RatingName;
  readonly words: string;
  readonly value: number | string | boolean;
  readonly text: string;
}

/** What one rule said, with its name and mark in words. */
export interface FindingAnswer extends Omit<Finding, "name" | "mark"> {
  readonly mark: string;
}

/** One step of the check, its mark in words. */
export interface IncomingAnswer extends Omit<IncomingStep, "mark"> {
  readonly mark: string;
}

export interface OfferAnswer extends Omit<StockLine, "type"> {
  readonly name: string;
  readonly kind: string;
  /** in words */
  readonly fits: string;
  readonly inHouse: boolean;
  /** where its ratings were read */
  readonly source: string | null;
  readonly ratings: readonly KnownRating[];
  readonly findings: readonly FindingAnswer[];
  /** what to check of it before it goes in */
  readonly incoming: readonly IncomingAnswer[];
}

export interface RuleAnswer extends Pick<Rule, "id" | "why" | "source" | "custom"> {
  readonly mark: string;
  /** what is asked in this place */
  readonly wants: string;
}

export interface FitAnswer {
  readonly part: string;
  readonly kind: string;
  /** in words */
  readonly role: string;
  readonly original: string | null;
  readonly ratings: readonly KnownRating[];
  readonly alike: readonly string[];
  readonly parallel: readonly string[];
  readonly rules: readonly RuleAnswer[];
  readonly incoming: readonly IncomingAnswer[];
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
    fits: FITS_WORDS[verdict.fits],
    inHouse: inHouse(line),
    ...stock,
    source: type.source === null ? null : `${type.source.mark}: ${type.source.words}`,
    ratings: knownRatings(type.ratings),
    findings: verdict.findings.map(({ name, mark, ...said }) => ({
      ...said,
      rule: name,
      mark: MARK_WORDS[mark],
    })),
    incoming: incomingAnswers(type.kind, role, type.ratings, line.used),
  };
}

/** What to check of a part before it goes in; pulled ones have more. */
export function incomingAnswers(...part: Parameters<typeof incomingCheck>): readonly IncomingAnswer[] {
  return incomingCheck(...part).map((step) => ({ ...step, mark: MARK_WORDS[step.mark] }));
}

function rulesAt(wanted: Wanted): readonly RuleAnswer[] {
  const asked = rulesFor(wanted.role).map(({ id, judge, why, mark, source, custom }) => {
    return { id, wants: judge.wants(wanted), why, mark: MARK_WORDS[mark], source, custom };
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
    role: ROLE_WORDS[wanted.role],
    original: wanted.name,
    ratings: knownRatings(wanted.ratings),
    alike: wanted.alike,
    parallel: wanted.parallel,
    rules: rulesAt(wanted),
    incoming: incomingAnswers(part.kind, wanted.role, wanted.ratings, true),
    baseline: BASELINE,
    offers: offersFor(wanted, catalogue).map((offer) => offerAnswer(offer, wanted.role)),
  };
}
