/** Where what a shop has learnt enters the table: factors on the rates that the tables give. */
import type { Board } from "../board/board.ts";
import type { FaultMode } from "../board/fault.ts";
import { deriveRoles } from "../board/roles.ts";
import type { FaultPrior } from "./fault-prior.ts";
import { junctionsOf } from "./junctions.ts";
import { MODE_SHARES, type Shape } from "./mode-shares.ts";
import { partSort } from "./prior-rows.ts";

/** What one job is worked with instead of the tables' figures; what is not named stays as the tables have it. */
export interface LearntRates {
  /** sort of part (a key of the kind weights, or `NET_LEAK_SORT`) -> times its table rate, for this cause and board family */
  readonly sorts: Readonly<Record<string, number>>;
  /** part of this very board -> times the rate of its sort */
  readonly parts: Readonly<Record<string, number>>;
  /** shape -> its modes' shares, which take the place of the table's */
  readonly shares: Readonly<Record<string, Readonly<Partial<Record<FaultMode, number>>>>>;
  /** knock-on rule -> times its strength */
  readonly knockOns: Readonly<Record<string, number>>;
}

/** The sort under which leaks between nets are counted. */
export const NET_LEAK_SORT = "net-leak";

/** Under what a fault is counted: the sort of its part, and the shape whose mode it is (null: a leak between nets). */
export interface FaultSort {
  readonly sort: string;
  readonly shape: Shape | null;
}

/** The sort and shape of each fault of a table, in its order. */
export function faultSorts(board: Board, faults: readonly FaultPrior[]): readonly FaultSort[] {
  const roles = deriveRoles(board);
  const sorts = new Map<string, string>();
  const shapes = new Map<string, Shape>();
  for (const part of board.parts.values()) {
    sorts.set(part.ref, partSort(part, roles));
    for (const { junction, shape } of junctionsOf(part))
      shapes.set(junction === null ? part.ref : `${part.ref}.${junction}`, shape);
  }
  return faults.map(({ part, site }) => ({
    sort: sorts.get(part) ?? NET_LEAK_SORT,
    shape: shapes.get(site) ?? null,
  }));
}

/** By how much each fault of the table is likelier than the tables say. */
export function learntFactors(
  board: Board,
  faults: readonly FaultPrior[],
  learnt: LearntRates,
): Float64Array {
  const sorts = faultSorts(board, faults);
  return Float64Array.from(faults, ({ part, fault }, index) => {
    const { sort, shape } = sorts[index];
    const ofTable = shape === null ? undefined : MODE_SHARES[shape].shares[fault.mode];
    const share = shape === null ? undefined : learnt.shares[shape]?.[fault.mode];
    const mode = ofTable === undefined || share === undefined ? 1 : share / ofTable;
    return (learnt.sorts[sort] ?? 1) * (learnt.parts[part] ?? 1) * mode;
  });
}
