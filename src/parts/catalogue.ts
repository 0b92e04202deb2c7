/** What a shop can fit: types of parts with their ratings, and where one of them lies. */
import type { PartKind } from "../board/board.ts";
import type { Sourced } from "../units/mark.ts";
import type { Ratings } from "./ratings.ts";

/** One type of part. Its `source` tells where its ratings were read; a shop's own entry may have none. */
export interface CatalogueType {
  readonly name: string;
  readonly kind: PartKind;
  readonly ratings: Ratings;
  readonly source: Sourced | null;
}

/** Some of one type: in a drawer, or still on a donor board. */
export interface StockLine {
  readonly type: CatalogueType;
  /** null: a type that is known, with none in the house */
  readonly count: number | null;
  readonly place: string | null;
  /** price of one in the shop's currency */
  readonly price: number | null;
  readonly supplier: string | null;
  /** taken off another board, whether it still sits there or lies in a drawer */
  readonly used: boolean;
  /** the board that it is on or came from */
  readonly donor: string | null;
}

/** What tells one line of stock from another: the type, the place, new or pulled, the donor. */
export interface LineName {
  readonly name: string;
  readonly place: string | null;
  readonly used: boolean;
  readonly donor: string | null;
}

export function lineName({ type, place, used, donor }: StockLine): LineName {
  return { name: type.name, place, used, donor };
}

/** The name of a line as one text, for lists without repeats. */
export function keyOfName({ name, place, used, donor }: LineName): string {
  return JSON.stringify([name, place, used, donor]);
}

/** One line of stock is one type, in one place, new or pulled, off one donor. */
export function stockKey(line: StockLine): string {
  return keyOfName(lineName(line));
}

export type Catalogue = readonly StockLine[];

/** Is there one to fit now? */
export function inHouse(line: StockLine): boolean {
  return (line.count ?? 0) > 0;
}

/** A type that nobody has in the house. */
export function notInHouse(type: CatalogueType): StockLine {
  return { type, count: null, place: null, price: null, supplier: null, used: false, donor: null };
}
