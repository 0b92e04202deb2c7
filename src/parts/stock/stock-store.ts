/**
 * The port through which the shop's stock is kept, beside its jobs: `store/` fills it, and one suite, `store/stock-store.contract.ts`, holds
 * every filling to what is written here. Appending a job's events moves its parts in the same write.
 */
import type { Parsed } from "../../units/outcome.ts";
import type { Stock } from "./stock.ts";
import type { CountEvent } from "./stock-event.ts";

/** Told of the stock as it is, says what is to be counted; null where nothing changes. Runs inside the write, so that nothing moves between. */
export type Count = (stock: Stock) => Parsed<CountEvent | null>;

export interface StockStore {
  readStock(): Promise<Stock>;
  /** All of the count is kept, or none. Once this resolves it survives a crash. */
  countStock(count: Count): Promise<Parsed<CountEvent | null>>;
}
