import { type Stock, StockFold } from "../../parts/stock/stock.ts";
import type { StockEvent } from "../../parts/stock/stock-event.ts";
import type { SqlConnection } from "./connection.ts";

/** The rows of `stock_event`, folded as far as they were read. */
export class StockRows {
  readonly #connection: SqlConnection;
  readonly #stock = new StockFold();
  #arrival = 0;

  constructor(connection: SqlConnection) {
    this.#connection = connection;
  }

  /** To be called before this transaction inserts: rows that may yet be rolled back must not be folded in. */
  read(): Stock {
    const rows = this.#connection.all(
      "SELECT arrival, body FROM stock_event WHERE arrival > ? ORDER BY arrival",
      [this.#arrival],
    );
    for (const { arrival, body } of rows) {
      this.#stock.add(JSON.parse(String(body)) as StockEvent);
      this.#arrival = Number(arrival);
    }
    return this.#stock;
  }

  insert(events: readonly StockEvent[], now: string): void {
    for (const event of events)
      this.#connection.run("INSERT INTO stock_event (body, received_at) VALUES (?, ?)", [
        JSON.stringify(event),
        now,
      ]);
  }
}
