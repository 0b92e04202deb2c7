/** The server as the program ships it: jobs in SQLite, and the boards that come with it. */
import { existsSync } from "node:fs";
import type { KeepsBoards } from "../job/board-store.ts";
import type { JobStore } from "../job/job-store.ts";
import type { ShopStore } from "../job/shop.ts";
import type { StockStore } from "../parts/stock/stock-store.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { openSqliteStore } from "../store/sqlite/open-store.ts";
import { defaultDataDir } from "./data-dir.ts";
import { keptMeter } from "./kept-meter.ts";
import { startServer } from "./start-server.ts";

export interface StartOptions {
  /** the port to use, 0 for any free one; left out: 4517 or the next free one */
  readonly port?: number;
  /** where jobs are kept; left out: see `data-dir.ts` */
  readonly dataDir?: string;
  /** open the page in the browser */
  readonly open?: boolean;
}

export interface RunningServer {
  readonly url: string;
  readonly dataDir: string;
  stop(): Promise<void>;
}

type Kept = JobStore & KeepsBoards & StockStore & ShopStore;

/**
 * What is kept in a folder (left out: see `data-dir.ts`), for a command that reads it; null where there is no such folder.
 * @param make - make the folder where it is missing: something is to be kept there
 */
export function keptJobs(
  dataDir = defaultDataDir(process.env),
  make = false,
): { store: Kept | null; folder: string } {
  const there = make || existsSync(dataDir);
  return { store: there ? openSqliteStore(dataDir, () => new Date().toISOString()) : null, folder: dataDir };
}

/** Rejects with `code: "EADDRINUSE"` where the port asked for is taken. */
export async function start(options: StartOptions = {}): Promise<RunningServer> {
  const { dataDir = defaultDataDir(process.env), ...how } = options;
  const store = openSqliteStore(dataDir, () => new Date().toISOString());
  try {
    const server = await startServer({ ...how, store, boards: SHIPPED, meter: keptMeter(dataDir) });
    return {
      url: server.url,
      dataDir,
      stop: async () => {
        await server.stop();
        await store.close();
      },
    };
  } catch (error) {
    await store.close();
    throw error;
  }
}
