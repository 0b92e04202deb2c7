/**
 * What happens to a shop's stock, oldest first: the stock of now is these folded, so that whoever holds the same events has the same
 * drawer. Nothing of it is ever changed; a count that was wrong is counted again.
 */
import type { PartKind } from "../../board/board.ts";
import type { LineName, StockLine } from "../catalogue.ts";

/** Lines as somebody counted or entered them; a line of the same name is replaced, one that is `gone` is taken off the list. */
export interface CountEvent {
  readonly do: "count";
  readonly lines: readonly StockLine[];
  readonly gone: readonly LineName[];
}

/** Which entry of which job moved a part. */
export interface MovedBy {
  readonly job: string;
  readonly event: string;
  readonly part: string;
}

/** One taken out and fitted. */
export interface TakeEvent extends MovedBy {
  readonly do: "take";
  readonly line: LineName;
}

/** One that was fitted came off again and lies in stock, pulled. */
export interface PutEvent extends MovedBy {
  readonly do: "put";
  readonly line: LineName;
  /** for a type that the stock does not know yet */
  readonly kind: PartKind;
}

/** The entry was undone: what it moved goes back. */
export interface BackEvent extends MovedBy {
  readonly do: "back";
}

export type StockMove = TakeEvent | PutEvent | BackEvent;
export type StockEvent = CountEvent | StockMove;
