import type { Sourced } from "../units/mark.ts";

/**
 * How many faults, trials or readings of the shop's own outweigh what stood before them. All from memory, held large enough that a shop which is
 * just as the tables have it is not talked out of them by chance: the levels see the same faults one after another. These are the least; how many times
 * them is learnt with the rest (`held-by.ts`).
 */
export interface PseudoCount extends Sourced {
  readonly worth: number;
}

const row = (id: string, worth: number, words: string): PseudoCount => ({
  id: `L-${id}`,
  mark: "from memory",
  words,
  worth,
});

export const PSEUDO_COUNTS = {
  bench: row("bench", 20, "faults of all sorts together against the number that the tables give a board"),
  sort: row("sort", 12, "faults of one sort of part against its table rate"),
  cause: row("cause", 30, "faults of one sort after one cause, against that sort's rate"),
  family: row("family", 30, "faults of one sort on one family of boards, against its rate everywhere"),
  board: row("board", 20, "faults of one part of this very board, against its sort in the family"),
  modes: row("modes", 20, "faults of one shape against its table of modes"),
  familyModes: row("family-modes", 40, "faults of one shape in one family, against its modes everywhere"),
  knockOn: row("knock-on", 20, "boards on which the first fault was there, against the rule's strength"),
  pace: row("pace", 6, "timed actions against the minutes of the job format"),
  price: row("price", 2, "purchases against the board file's price or the usual share of a new board"),
} as const;

/** Factors stay within these ends, whatever was counted: a rate of nothing could never be unlearnt. From memory. */
export const FACTOR_ENDS = { least: 0.02, most: 50 } as const;
