/** What was learnt, line by line in words and figures, each default beside what took its place. */
import { MODE_WORDS } from "../bench/words.ts";
import { said, saidCount } from "../messages/said.ts";
import { formatQuantity } from "../units/quantity.ts";
import { gammaSpread, type Spread } from "./conjugate.ts";
import type { Learnt, LearntShares } from "./learnt.ts";
import { causeWords, shapeWords, sortWords, workWords } from "./learnt-words.ts";
import type { LearntFactor } from "./rate-chain.ts";

export interface LearntRow {
  readonly what: string;
  /** by the tables, or by the level above */
  readonly before: string;
  readonly now: string;
  /** within these ends nine times in ten; empty where that is not told */
  readonly between: string;
  /** what it was counted from */
  readonly seen: string;
}

export interface LearntSection {
  readonly title: string;
  /** what the columns are, in one sentence */
  readonly note: string;
  readonly rows: readonly LearntRow[];
  /** further rows that stay where they were, within five in a hundred */
  readonly unchanged: number;
}

export interface LearntView {
  readonly jobs: number;
  readonly boards: number;
  readonly sections: readonly LearntSection[];
}

const NEAR = 0.05;
const times = (factor: number): string => `x ${factor.toPrecision(2)}`;
const share = (probability: number): string => `${(100 * probability).toFixed(0)} %`;
const count = (value: number): string => value.toFixed(value < 10 ? 1 : 0);
const between = ({ low, high }: Spread): string => said`${low.toPrecision(2)} to ${high.toPrecision(2)}`;

interface Weighed {
  readonly row: LearntRow;
  /** 0: as before */
  readonly change: number;
}

function section(title: string, note: string, rows: readonly Weighed[]): LearntSection {
  const changed = rows.filter(({ change }) => change >= NEAR);
  return {
    title,
    note,
    rows: [...changed].sort((a, b) => b.change - a.change).map(({ row }) => row),
    unchanged: rows.length - changed.length,
  };
}

const UNITS = { diode: "V", ohms: "ohm", farads: "F" } as const;
/** A sort or shape by itself, or behind the family of boards that it was counted in, which people name. */
const keyWords =
  (wordsOf: (name: string) => string) =>
  (key: string): string => {
    const at = key.lastIndexOf("\n");
    const words = wordsOf(key.slice(at + 1));
    return at < 0 ? words : said`${key.slice(0, at)}: ${words}`;
  };

const causeKeyWords = (key: string): string => {
  const [cause = "", sort = ""] = key.split("\n");
  return said`${causeWords(cause)}: ${sortWords(sort)}`;
};

/** Parts stand under the name that their board has now. */
const partWords =
  ({ names }: Learnt) =>
  (key: string): string => {
    const [board = "", part = ""] = key.split("\n");
    return `${names.get(board) ?? board}: ${part}`;
  };

function rateRows(
  factors: ReadonlyMap<string, LearntFactor>,
  met?: ReadonlyMap<string, number>,
  wordsOf: (key: string) => string = keyWords(sortWords),
): Weighed[] {
  return [...factors].map(([key, factor]) => ({
    change: Math.abs(Math.log(factor.mean)),
    row: {
      what: wordsOf(key),
      before: said`${count(factor.expected)} expected`,
      now: times(factor.mean),
      between: between(gammaSpread(factor)),
      seen: foundWords(factor, met?.get(key)),
    },
  }));
}

function foundWords(factor: LearntFactor, onParts: number | undefined): string {
  return onParts === undefined
    ? said`${count(factor.count)} found`
    : said`${count(factor.count)} found on ${onParts} parts`;
}

const MODES: Readonly<Record<string, string>> = {
  short: said`short`,
  leaky: said`leaky`,
  open: said`open`,
  drift: said`drift`,
};

/** `short 60 %, open 40 %` */
function ofModes(modes: readonly string[], figure: (at: number) => string): string {
  return modes.map((mode, at) => said`${MODES[mode] ?? mode} ${figure(at)}`).join(", ");
}

function benchRows({ bench }: Learnt): Weighed[] {
  if (bench === null) return [];
  return rateRows(new Map([["", bench]])).map(({ change, row }) => ({
    change,
    row: { ...row, what: said`on a board that comes in` },
  }));
}

function shareRows(shares: ReadonlyMap<string, LearntShares>): Weighed[] {
  return [...shares].map(([key, { modes, before, shares: now, counts }]) => ({
    change: Math.max(...now.map((one, at) => Math.abs(one - (before[at] ?? 0)))),
    row: {
      what: keyWords(shapeWords)(key),
      before: ofModes(modes, (at) => share(before[at] ?? 0)),
      now: ofModes(modes, (at) => share(now[at] ?? 0)),
      between: "",
      seen: ofModes(modes, (at) => count(counts[at] ?? 0)),
    },
  }));
}

/** The screen and the terminal show the same. `ruleWords`: a knock-on rule in words. */
export function learntView(learnt: Learnt, ruleWords: (id: string) => string): LearntView {
  const against = (what: string) =>
    said`Faults found, against those that ${what} in the same jobs; within these ends nine times in ten.`;
  return {
    jobs: learnt.jobs,
    boards: learnt.boards,
    sections: [
      section(said`All faults together`, against(said`the tables expect`), benchRows(learnt)),
      section(
        said`Sorts of parts`,
        against(said`the tables and all faults together lead to expect`),
        rateRows(learnt.sorts, learnt.seen),
      ),
      section(
        said`After one cause`,
        against(said`their sort leads to expect`),
        rateRows(learnt.causes, undefined, causeKeyWords),
      ),
      section(
        said`In one family of boards`,
        against(said`sort and cause lead to expect`),
        rateRows(learnt.families),
      ),
      section(
        said`Parts of one board`,
        against(said`their sort leads to expect in that family`),
        rateRows(learnt.parts, undefined, partWords(learnt)),
      ),
      section(said`How parts fail`, said`Shares of the modes, before and now.`, shareRows(learnt.shares)),
      section(
        said`How parts fail in one family`,
        said`Shares of the modes, everywhere and there.`,
        shareRows(learnt.familyShares),
      ),
      section(
        said`What one fault brings with it`,
        said`Chance that the second follows the first.`,
        knockOnRows(learnt, ruleWords),
      ),
      section(
        said`Minutes here`,
        said`Times the minutes of the job format; the next job is planned with them.`,
        paceRows(learnt),
      ),
      section(
        said`What good ones read`,
        said`On good boards beside those of the jobs; the next job on such a board counts with it.`,
        referenceRows(learnt),
      ),
      section(said`Prices paid`, said`New parts, in the job's currency.`, priceRows(learnt)),
    ],
  };
}

function knockOnRows(learnt: Learnt, ruleWords: (id: string) => string): Weighed[] {
  return [...learnt.knockOns].map(([rule, one]) => ({
    change: Math.abs(one.mean - one.before),
    row: {
      what: ruleWords(rule),
      before: share(one.before),
      now: share(one.mean),
      between: said`${share(one.low)} to ${share(one.high)}`,
      seen: said`${count(one.count)} of ${count(one.trials)}`,
    },
  }));
}

function paceRows(learnt: Learnt): Weighed[] {
  return [...learnt.paces].map(([action, pace]) => ({
    change: Math.abs(Math.log(pace.factor)),
    row: {
      what: workWords(action),
      before: "x 1",
      now: times(pace.factor),
      between: "",
      seen: said`${count(pace.count)} timed, ${count(pace.leftOut)} pauses left out`,
    },
  }));
}

function referenceRows({ references, names }: Learnt): Weighed[] {
  return [...references].flatMap(([board, readings]) =>
    readings.map(({ mode, red, black, reading, spread: one, count: many }) => ({
      change: 1,
      row: {
        what: said`${names.get(board) ?? board}: ${MODE_WORDS[mode]} red ${red}, black ${black}`,
        before: said`not read`,
        now: formatQuantity(reading, UNITS[mode]),
        between: many === 1 ? "" : `+- ${mode === "diode" ? `${one.toFixed(3)} V` : share(one)}`,
        seen: saidCount(many, "1 reading", "{0} readings"),
      },
    })),
  );
}

function priceRows(learnt: Learnt): Weighed[] {
  return [...learnt.prices.values()].map((price) => ({
    change: price.price === price.usual ? 0 : 1,
    row: {
      what: `${learnt.names.get(price.identity) ?? price.identity}: ${price.part}`,
      before: price.usual.toFixed(2),
      now: price.price.toFixed(2),
      between: "",
      seen: said`${price.count} bought`,
    },
  }));
}
