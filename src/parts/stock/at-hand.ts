/** What lies at hand for each place of a board, as far as the rules can tell without anybody looking a type up. */
import type { StockPlace } from "../../bench/event.ts";
import type { Board, Part } from "../../board/board.ts";
import { present } from "../../units/fields.ts";
import { inHouse, type StockLine } from "../catalogue.ts";
import { type Offer, offersFor } from "../offers.ts";
import { wantedAt } from "../wanted.ts";

/** The field of a job file's `stock` for one place. */
interface PartAtHand extends LyingPart {
  /** what will do as well, once that is used up */
  readonly next?: LyingPart;
}

interface LyingPart {
  readonly with: string;
  readonly price?: number;
  readonly used?: true;
  readonly from?: StockPlace;
  readonly count?: number;
}

/** Rules that ask for the very type: what carries a program, or pins of its own, is known by its name alone. */
const VERY_TYPE: ReadonlySet<string> = new Set(["identical chip", "same chip", "program", "no table"]);

const alike = (one: string, other: string) => one.trim().toLowerCase() === other.trim().toLowerCase();

/** Does it come off a board of this very name or family? Then it is what was there, whatever its marking. */
function offSameBoard(board: Board, { donor }: StockLine): boolean {
  return donor !== null && [board.name, board.family].some((name) => alike(name, donor));
}

/**
 * A plan may count on it: nothing bars it, some figure that is known of the original is kept, and where only the very type will do it is known
 * to be that.
 */
function counts(board: Board, { line, verdict }: Offer): boolean {
  if (verdict.fits === "no") return false;
  if (offSameBoard(board, line)) return true;
  const unsure = verdict.findings.some(
    ({ rule, says }) => VERY_TYPE.has(rule) && (says === "open" || says === "asks"),
  );
  return !unsure && verdict.findings.some(({ says, about }) => says === "meets" && about !== undefined);
}

/** The lines in the house that will do for one place, best first, as far as can be told. */
function lyingFor(board: Board, part: Part, lines: readonly StockLine[]): readonly StockLine[] {
  const offers = offersFor(wantedAt(board, part, null), lines);
  return offers.filter((offer) => counts(board, offer)).map(({ line }) => line);
}

function lyingPart(line: StockLine): LyingPart {
  return {
    with: line.type.name,
    ...(line.price === null ? {} : { price: line.price }),
    ...(line.used ? { used: true } : {}),
    ...(line.count === null ? {} : { from: placeOf(line), count: line.count }),
  };
}

function placeOf({ place, donor }: StockLine): StockPlace {
  return present<StockPlace>({ place: place ?? undefined, donor: donor ?? undefined });
}

/**
 * The `stock` of a job file for this board out of a shop's stock. Places for which the same line is best all name it with its count: how
 * many of them it serves is for the plan to say, which knows what is fitted first.
 */
export function atHandFor(board: Board, stock: readonly StockLine[]): Readonly<Record<string, PartAtHand>> {
  const lines = stock.filter(inHouse);
  const found: Record<string, PartAtHand> = {};
  if (lines.length === 0) return found;
  for (const part of board.parts.values()) {
    const [best, next] = lyingFor(board, part, lines);
    if (best === undefined) continue;
    found[part.ref] = next === undefined ? lyingPart(best) : { ...lyingPart(best), next: lyingPart(next) };
  }
  return found;
}
