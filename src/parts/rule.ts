/** The shape of one rule of substitution, and what it can say of a candidate. */
import { plain } from "../messages/said.ts";
import type { Mark } from "../units/mark.ts";
import type { CatalogueType } from "./catalogue.ts";
import type { PartRole } from "./part-role.ts";
import type { RatingName } from "./ratings.ts";
import type { Wanted } from "./wanted.ts";

/**
 * `meets`: held to, and kept. `notes`: allowed, but to be known. `asks`: a condition to fulfil. `open`: a rating is not known, so it
 * has to be looked up first. `bars`: not this part.
 */
export type Says = "meets" | "notes" | "asks" | "open" | "bars";

export interface Candidate {
  readonly type: CatalogueType;
  /** taken off another board */
  readonly used: boolean;
}

export interface Speech {
  readonly says: Says;
  readonly words: string;
  /** the rating it is about, where it is one */
  readonly about?: RatingName;
  /** whose rating has to be looked up */
  readonly unknown?: "original" | "candidate" | "both";
}

type Hear = (wanted: Wanted, candidate: Candidate) => Speech | null;

export interface Judge {
  /** what is asked in this place, in a few words; empty where nothing is */
  readonly wants: (wanted: Wanted) => string;
  /** null: the rule has nothing to say here */
  readonly hear: Hear;
}

/** A judge whose words do not come from a rating; as text they are the same wherever the part stands. */
export function judged(wants: string | Judge["wants"], hear: Hear): Judge {
  return { wants: typeof wants === "string" ? () => wants : wants, hear };
}

export interface Rule {
  readonly id: string;
  /** the same for a person */
  readonly name: string;
  readonly roles: readonly PartRole[];
  readonly judge: Judge;
  /** why it matters, for a person */
  readonly why: string;
  readonly mark: Mark;
  /** the published source, where there is one */
  readonly source: string | null;
  /** the custom of the trade that this rule stands against, in the words it is said with */
  readonly custom: string | null;
}

const COMMON: Pick<Rule, "mark" | "source" | "custom"> = {
  mark: "common practice",
  source: null,
  custom: null,
};

/** One row of the table, known by its name; without more said, common practice. */
export function rule(
  name: string,
  roles: readonly PartRole[],
  judge: Judge,
  why: string,
  more: Partial<Pick<Rule, "mark" | "source" | "custom">> = {},
): Rule {
  return { id: plain(name), name, roles, judge, why, ...COMMON, ...more };
}
