/** The forms that rules of substitution take: a rating compared with the original's. */

import type { PartKind } from "../board/board.ts";
import { kindOf } from "../board/kinds.ts";
import { said } from "../messages/said.ts";
import { ratingText } from "./rating-text.ts";
import {
  type FigureName,
  RATINGS,
  type RatingName,
  type RatingRule,
  type Ratings,
  ratingWords,
} from "./ratings.ts";
import { type Judge, judged, type Says, type Speech } from "./rule.ts";

/** Two figures closer than this are the same: catalogue files round. */
const ROUNDING = 1e-9;

function ruleOf(name: RatingName): RatingRule {
  const rule = RATINGS.get(name);
  if (rule === undefined) throw new Error(`no such rating: ${name}`);
  return rule;
}

/** `160 nC`. */
export function figureText(name: FigureName, value: number): string {
  return ratingText(value, ruleOf(name));
}

/** `gate charge 160 nC`. */
export function rated(name: RatingName, value: NonNullable<Ratings[RatingName]>): string {
  const rule = ruleOf(name);
  if (rule.reads === "flag") return value === true ? rule.words : said`no ${rule.words}`;
  return said`${rule.words} ${ratingText(value, rule)}`;
}

/** `gate charge 160 nC, original 120 nC`. */
export function beside(name: FigureName, has: number, had: number): string {
  return said`${rated(name, has)}, original ${figureText(name, had)}`;
}

/** What has to be looked up before a rating can be compared; null where both are known. */
export function unknownOf(name: RatingName, original: Ratings, candidate: Ratings): Speech | null {
  const [had, has] = [original[name], candidate[name]];
  const words = ratingWords(name);
  const open = (unknown: NonNullable<Speech["unknown"]>, text: string): Speech => ({
    says: "open",
    about: name,
    unknown,
    words: text,
  });
  if (had !== undefined && has !== undefined) return null;
  if (had === undefined && has === undefined)
    return open("both", said`${words}: known of neither; read both data sheets`);
  if (has === undefined)
    return open(
      "candidate",
      said`the candidate's ${words} is not known; original: ${rated(name, had ?? "")}`,
    );
  return open("original", said`the original's ${words} is not known; candidate: ${rated(name, has)}`);
}

/** `voltage at least 600 V`; where the original's is not known, `voltage at least the original's`. */
function wantsFigure(name: FigureName, low: number, high: number): Judge["wants"] {
  return ({ ratings }) => {
    const had = ratings[name];
    const words = ratingWords(name);
    const bound = (times: number) => {
      if (had !== undefined) return figureText(name, had * times);
      return times === 1 ? said`the original's` : said`${times} times the original's`;
    };
    if (low === 1 && high === 1) return said`${words} ${bound(1)}`;
    if (!Number.isFinite(high)) return said`${words} at least ${bound(low)}`;
    if (low === 0) return said`${words} at most ${bound(high)}`;
    return said`${words} at least ${bound(low)}, at most ${bound(high)}`;
  };
}

/** A figure between `low` and `high` times the original's. Beyond either end the rule says what is given for it. */
export function within(
  name: FigureName,
  low: number,
  high: number,
  beyond: { readonly below?: Says; readonly above?: Says } = {},
): Judge {
  const hear: Judge["hear"] = ({ ratings }, { type }) => {
    const unknown = unknownOf(name, ratings, type.ratings);
    const [had, has] = [ratings[name], type.ratings[name]];
    if (unknown !== null || had === undefined || has === undefined) return unknown;
    const both = beside(name, has, had);
    const bound = (times: number) => figureText(name, had * times);
    if (has < had * low * (1 - ROUNDING))
      return {
        says: beyond.below ?? "bars",
        about: name,
        words: said`${both}: at least ${bound(low)} wanted`,
      };
    if (has > had * high * (1 + ROUNDING))
      return {
        says: beyond.above ?? "bars",
        about: name,
        words: said`${both}: at most ${bound(high)} wanted`,
      };
    return { says: "meets", about: name, words: both };
  };
  return { wants: wantsFigure(name, low, high), hear };
}

/** At least the original's. */
export function atLeast(name: FigureName, otherwise: Says = "bars"): Judge {
  return within(name, 1, Number.POSITIVE_INFINITY, { below: otherwise });
}

/** At most the original's, or so many times that. */
export function atMost(name: FigureName, times = 1, otherwise: Says = "bars"): Judge {
  return within(name, 0, times, { above: otherwise });
}

/** The same word, name or flag. */
export function same(name: Exclude<RatingName, FigureName>, otherwise: Says = "bars"): Judge {
  const hear: Judge["hear"] = ({ ratings }, { type }) => {
    const unknown = unknownOf(name, ratings, type.ratings);
    const [had, has] = [ratings[name], type.ratings[name]];
    if (unknown !== null || had === undefined || has === undefined) return unknown;
    const alike = String(had).toLowerCase() === String(has).toLowerCase();
    if (alike) return { says: "meets", about: name, words: rated(name, has) };
    return { says: otherwise, about: name, words: said`${rated(name, has)}, original: ${rated(name, had)}` };
  };
  const wants: Judge["wants"] = ({ ratings }) => {
    const had = ratings[name];
    return had === undefined ? said`the same ${ratingWords(name)}` : rated(name, had);
  };
  return { wants, hear };
}

/** A flag that the candidate must have where the original has it. */
export function whereFitted(name: "cutout" | "copack"): Judge {
  return judged(said`${ratingWords(name)} where the original has it`, ({ ratings }, { type }) => {
    const [had, has] = [ratings[name], type.ratings[name]];
    // what the original had not need not be there, and what is there is there whatever the original had
    if (had === false) return null;
    if (has !== true && (has === undefined || had === undefined))
      return unknownOf(name, ratings, type.ratings);
    if (has) return { says: "meets", about: name, words: rated(name, true) };
    return { says: "bars", about: name, words: said`${rated(name, false)}, the original has it` };
  });
}

/** Something the role needs, whatever the original had: a floor for a figure, a word, a flag. */
export function needs(
  name: RatingName,
  enough: (value: NonNullable<Ratings[RatingName]>) => boolean,
  wanted: string,
  otherwise: Says = "bars",
): Judge {
  const words = RATINGS.get(name)?.reads === "flag" ? wanted : said`${ratingWords(name)} ${wanted}`;
  return judged(words, (_, { type }) => {
    const has = type.ratings[name];
    if (has === undefined)
      return {
        says: "open",
        about: name,
        unknown: "candidate",
        words: said`the candidate's ${ratingWords(name)} is not known; wanted: ${wanted}`,
      };
    if (enough(has)) return { says: "meets", about: name, words: rated(name, has) };
    return { says: otherwise, about: name, words: said`${rated(name, has)}; wanted: ${wanted}` };
  });
}

/** The rule where the original is of one kind. */
export function onlyFor(kind: PartKind, judge: Judge): Judge {
  return {
    wants: (wanted) => (wanted.kind === kind ? judge.wants(wanted) : ""),
    hear: (wanted, candidate) => (wanted.kind === kind ? judge.hear(wanted, candidate) : null),
  };
}

/** The rule but where the original is of one kind. */
export function notFor(kind: PartKind, judge: Judge): Judge {
  return {
    wants: (wanted) => (wanted.kind === kind ? "" : judge.wants(wanted)),
    hear: (wanted, candidate) => (wanted.kind === kind ? null : judge.hear(wanted, candidate)),
  };
}

/** A kind as a person calls it. */
export function kindWords(kind: PartKind): string {
  return kindOf(kind).words;
}
