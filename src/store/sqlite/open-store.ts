import { chmodSync, mkdirSync } from "node:fs";
import { join } from "node:path";
import type { KeepsAlbums } from "../../job/board-album.ts";
import type { KeepsBoards } from "../../job/board-store.ts";
import type { Clock, JobStore } from "../../job/job-store.ts";
import type { ShopStore } from "../../job/shop.ts";
import type { StockStore } from "../../parts/stock/stock-store.ts";
import { openConnection } from "./open-connection.ts";
import { SqliteJobStore } from "./sqlite-job-store.ts";

/** Opens the store of a data folder, which is made, for its owner only, where it is missing. */
export function openSqliteStore(
  dataDir: string,
  clock: Clock,
): JobStore & KeepsBoards & KeepsAlbums & StockStore & ShopStore {
  mkdirSync(dataDir, { recursive: true, mode: 0o700 });
  const file = join(dataDir, "jobs.sqlite");
  const connection = openConnection(file);
  try {
    // Customers' jobs: nobody else on this machine needs to read them. SQLite gives -wal and -shm the same mode.
    chmodSync(file, 0o600);
    return new SqliteJobStore(connection, clock);
  } catch (error) {
    connection.close();
    throw error;
  }
}
