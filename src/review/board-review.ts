/** What can be said of a board file before any reading: what is odd in it, and what no cold check will tell. */
import type { BenchState } from "../bench/bench-state.ts";
import type { Board } from "../board/board.ts";
import { faultName } from "../board/fault.ts";
import { deriveRoles } from "../board/roles.ts";
import { rolesInWords } from "../board/roles-in-words.ts";
import type { MakePredictor } from "../meter/prediction.ts";
import type { MeterSettings } from "../meter/settings.ts";
import { partPrice } from "../money/prices.ts";
import { ambiguityOf, partsOf } from "./ambiguity.ts";
import { bestSplit, type Split } from "./best-split.ts";
import { type OffSeries, offSeries } from "./e-series.ts";
import { tellingChecks } from "./telling-checks.ts";

export interface AmbiguousParts {
  readonly parts: readonly string[];
  /** as the file format spells them */
  readonly faults: readonly string[];
  /** the pin whose lifting tells most of them apart; null where none does */
  readonly split: Split | null;
}

/** What the file itself tells, worked out at once. */
export interface BoardOddities {
  readonly roles: readonly string[];
  /** nets with one pin, or none, that no plug and no supply explains */
  readonly floatingNets: readonly string[];
  readonly railsWithoutSource: readonly string[];
  readonly offSeries: readonly OffSeries[];
  /** parts whose price can decide whether a repair pays, without one; what is taken, as a share of a new board */
  readonly unpriced: readonly { readonly part: string; readonly share: number }[];
  readonly assumed: readonly string[];
}

export interface BoardReview extends BoardOddities {
  readonly ambiguous: readonly AmbiguousParts[];
  /** faults that no cold check shows */
  readonly unseen: readonly string[];
}

/** A part that costs this share of a new board or more can decide. From memory. */
const DECISIVE_SHARE = 0.02;

function floatingNets(board: Board): readonly string[] {
  const pins = new Map([...board.nets.keys()].map((net) => [net, 0]));
  const explained = new Set<string>(board.supply.at);
  for (const part of board.parts.values())
    for (const net of part.pins.values()) {
      pins.set(net, (pins.get(net) ?? 0) + 1);
      if (part.plugged) explained.add(net);
    }
  return [...pins].filter(([net, count]) => count < 2 && !explained.has(net)).map(([net]) => net);
}

function railsWithoutSource(board: Board): readonly string[] {
  return deriveRoles(board)
    .rails.filter(({ net, from }) => ![...(board.parts.get(from ?? "")?.pins.values() ?? [])].includes(net))
    .map(({ name }) => name);
}

function unpriced(board: Board): BoardReview["unpriced"] {
  return [...board.parts.values()]
    .filter((part) => part.price === null)
    .map((part) => ({ part: part.ref, share: partPrice(part, 100) / 100 }))
    .filter(({ share }) => share >= DECISIVE_SHARE);
}

export function boardOddities(board: Board): BoardOddities {
  return {
    roles: rolesInWords(board),
    floatingNets: floatingNets(board),
    railsWithoutSource: railsWithoutSource(board),
    offSeries: [...board.parts.values()].flatMap((part) => offSeries(part) ?? []),
    unpriced: unpriced(board),
    assumed: [...board.parts.values()].filter((part) => part.assumed).map((part) => part.ref),
  };
}

/** `bench` is the board as it lies there with nothing done; a hundred parts take some seconds. */
export function reviewBoard(
  board: Board,
  bench: BenchState,
  meter: MeterSettings,
  make: MakePredictor,
): BoardReview {
  const { groups, unseen } = ambiguityOf(make(board, bench, meter), tellingChecks(board));
  return {
    ...boardOddities(board),
    ambiguous: groups.map((group) => ({
      parts: partsOf(group),
      faults: group.map(faultName),
      split: bestSplit(board, bench, meter, make, group),
    })),
    unseen: unseen.map(faultName),
  };
}
