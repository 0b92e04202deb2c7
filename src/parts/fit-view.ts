/** What the page shows of "which part will do": the answer, and a table to type the original's and a candidate's ratings into. */

import type { ColdMode, Reading } from "../bench/event.ts";
import { incomingKey } from "../bench/incoming.ts";
import type { Board, Part } from "../board/board.ts";
import { deriveRoles } from "../board/roles.ts";
import { plain, said } from "../messages/said.ts";
import { formatQuantity } from "../units/quantity.ts";
import { parseReadingText } from "../units/reading-text.ts";
import { type CatalogueType, inHouse, notInHouse, type StockLine } from "./catalogue.ts";
import { type MainsVolts, type Mounting, mountingOf } from "./cooling/mounting.ts";
import { type FitAnswer, fitAnswer, incomingAnswers, type OfferAnswer } from "./fit-answer.ts";
import { type IncomingRead, incomingReads, readsGood } from "./incoming-reads.ts";
import { choicesOf, readRating } from "./rating-text.ts";
import { RATINGS, type RatingName, type Ratings } from "./ratings.ts";
import { type SideBySide, sideBySide } from "./side-by-side.ts";
import { STANDARD_LINES } from "./standard-types.ts";
import { judge } from "./verdict.ts";
import { type Wanted, wantedAt } from "./wanted.ts";

/** Ratings as they were typed, by name; an empty text is not known. */
export type TypedRatings = Readonly<Record<string, string>>;

export interface TypedFit {
  /** of the part that was there, what its data sheet says beyond the board file */
  readonly original: TypedRatings;
  readonly candidate: TypedRatings;
  /** what is fitted, as it is marked: a type that the stock or the program knows is checked and screwed down as that one */
  readonly fitted?: string;
  /** of the part in the hand, what the meter showed, by mode and pins as `IncomingReadView.key` has them */
  readonly incoming?: TypedRatings;
}

/** One reading of the incoming check, with what was typed of it so far. */
export interface IncomingReadView {
  readonly key: string;
  readonly mode: ColdMode;
  readonly red: string;
  readonly black: string;
  /** what a good part shows; null: only to be written down */
  readonly good: string | null;
  /** as the event has it; null where nothing was typed, or it could not be read */
  readonly reading: Reading | null;
  readonly problem: string | null;
  /** null where nothing was read, or there is nothing to hold it to */
  readonly fine: boolean | null;
}

/** One row of the comparison. */
export interface FitField {
  readonly name: RatingName;
  readonly words: string;
  /** the unit of a figure */
  readonly unit: string | null;
  /** the words that may be chosen; a flag has yes and no */
  readonly choices: readonly string[];
  /** the original's, where the board file has it */
  readonly original: string | null;
}

export interface FitView extends FitAnswer {
  /** what of the shop's stock will do, best first: its offers are what many makers sell */
  readonly atHand: readonly OfferAnswer[];
  /** what lies at hand and what many makers sell, beside the original; null where there is nothing */
  readonly sideBySide: SideBySide | null;
  /** how it goes back onto its heatsink; null where it has none */
  readonly mounting: Mounting | null;
  /** what is read of the part before it goes in, and is the baseline of the cold re-check */
  readonly reads: readonly IncomingReadView[];
  readonly fields: readonly FitField[];
  /** null until something of a candidate was typed */
  readonly candidate: OfferAnswer | null;
  /** what could not be read, by column and rating */
  readonly problems: readonly {
    readonly of: "original" | "candidate";
    readonly name: RatingName;
    readonly problem: string;
  }[];
}

/** Types shown to a person who has no catalogue at hand. */
const MOST_OFFERS = 4;
/** Lines of the shop's own on one card. */
const MOST_AT_HAND = 6;

interface ReadTyped {
  readonly ratings: Ratings;
  readonly problems: readonly { readonly name: RatingName; readonly problem: string }[];
}

function readTyped(typed: TypedRatings): ReadTyped {
  const ratings: Record<string, unknown> = {};
  const problems: { name: RatingName; problem: string }[] = [];
  for (const name of RATINGS.keys()) {
    const text = typed[name]?.trim() ?? "";
    if (text === "") continue;
    const read = readRating(text, name);
    if (read.ok) ratings[name] = read.value;
    else problems.push({ name, problem: read.problem });
  }
  return { ratings, problems };
}

/** Every rating that some rule of the role asks for, and whatever is known of the original. */
function fieldsOf(board: Board, part: Part): readonly FitField[] {
  const wanted = wantedAt(board, part, null);
  const bare: CatalogueType = { name: "", kind: part.kind, ratings: {}, source: null };
  const asked = new Set(judge(wanted, { type: bare, used: false }).findings.map(({ about }) => about));
  const known = new Map(fitAnswer(board, part, null, []).ratings.map(({ name, text }) => [name, text]));
  return [...RATINGS].flatMap(([name, rule]) => {
    if (!asked.has(name) && !known.has(name)) return [];
    const unit = rule.reads === "figure" ? rule.unit : null;
    return [{ name, words: rule.words, unit, choices: choicesOf(rule), original: known.get(name) ?? null }];
  });
}

/** A bus that a boost holds up stands at about this. Common practice: 350 to 390 V. */
const BOOSTED_VOLTS = 390;

function mainsVolts({ supply }: Board, boosted: boolean): MainsVolts | null {
  if (supply.kind !== "ac") return null;
  const peak = supply.volts * Math.SQRT2;
  return { lineVolts: supply.volts, busVolts: boosted ? Math.max(BOOSTED_VOLTS, peak) : peak };
}

/** The ratings of what goes in, as far as its marking tells; what is not known of it is taken to be as it was. */
function ratingsFitted(wanted: Wanted, fitted: string | undefined, stock: readonly StockLine[]): Ratings {
  const marking = fitted?.trim().toLowerCase() ?? "";
  const line = [...stock, ...STANDARD_LINES].find(
    ({ type: { name, kind } }) => kind === wanted.kind && name.toLowerCase() === marking,
  );
  return { ...wanted.ratings, ...line?.type.ratings };
}

function goodText({ mode, good }: IncomingRead): string | null {
  if (good === null || good === "OL") return good;
  const unit = mode === "diode" ? "V" : mode === "farads" ? "F" : "ohm";
  const [low, high] = good;
  const text = (value: number) => formatQuantity(value, unit);
  if (high === Number.POSITIVE_INFINITY) return said`over ${text(low)}`;
  return low === 0 ? said`below ${text(high)}` : said`${text(low)} to ${text(high)}`;
}

function readsView(part: Part, ratings: Ratings, typed: TypedRatings): readonly IncomingReadView[] {
  return incomingReads(part.kind, ratings, part.pins.keys()).map((read) => {
    const { mode, red, black } = read;
    const key = incomingKey(read);
    const text = typed[key]?.trim() ?? "";
    const parsed = text === "" ? null : parseReadingText(text, mode);
    const reading = parsed?.ok === true ? parsed.value : null;
    return {
      key,
      mode,
      red,
      black,
      good: goodText(read),
      reading,
      problem: parsed?.ok === false ? parsed.problem : null,
      fine: reading === null ? null : readsGood(read, reading),
    };
  });
}

/** Pure; what cannot be read is told beside its field and does not count. `stock`: the shop's own lines. */
export function fitView(
  board: Board,
  part: Part,
  typed: TypedFit,
  stock: readonly StockLine[] = [],
): FitView {
  const original = readTyped(typed.original);
  const candidate = readTyped(typed.candidate);
  const { kind } = part;
  const known = Object.keys(original.ratings).length === 0 ? null : { name: null, ratings: original.ratings };
  const answer = fitAnswer(board, part, known, STANDARD_LINES);
  const wanted = wantedAt(board, part, known);
  const compared =
    Object.keys(candidate.ratings).length === 0
      ? null
      : fitAnswer(board, part, known, [
          notInHouse({ name: "the candidate", kind, ratings: candidate.ratings, source: null }),
        ]).offers[0];
  const lying = fitAnswer(board, part, known, stock.filter(inHouse)).offers;
  const willDo = ({ fits }: OfferAnswer) => plain(fits) !== "no";
  const sold = answer.offers.filter(willDo).slice(0, MOST_OFFERS);
  const goesIn = ratingsFitted(wanted, typed.fitted, stock);
  return {
    ...answer,
    incoming: incomingAnswers(kind, wanted.role, goesIn, true),
    atHand: lying.filter(willDo).slice(0, MOST_AT_HAND),
    offers: sold,
    // what lies in the drawer and will not do stands there too, with the figure that bars it
    sideBySide: sideBySide(answer.ratings, [...lying, ...sold]),
    fields: fieldsOf(board, part),
    reads: readsView(part, goesIn, typed.incoming ?? {}),
    mounting: mountingOf(
      wanted.role,
      goesIn.package,
      mainsVolts(board, deriveRoles(board).boosts.length > 0),
    ),
    candidate: compared ?? null,
    problems: [
      ...original.problems.map((one) => ({ of: "original" as const, ...one })),
      ...candidate.problems.map((one) => ({ of: "candidate" as const, ...one })),
    ],
  };
}
