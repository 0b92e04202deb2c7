/** The server of one bench: a store and the shipped boards, listening on the loopback address. */
import { randomUUID } from "node:crypto";
import { existsSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { getRequestListener } from "@hono/node-server";
import { BenchMeter, type KeepsSetting } from "../hookup/bench-meter.ts";
import { acceptLog } from "../job/accept-log.ts";
import type { KeepsAlbums } from "../job/board-album.ts";
import type { KeepsBoards } from "../job/board-store.ts";
import type { JobStore } from "../job/job-store.ts";
import type { ShopStore } from "../job/shop.ts";
import type { StockStore } from "../parts/stock/stock-store.ts";
import type { BoardAnswer } from "../wire/job-api.ts";
import { makeApp } from "./app.ts";
import { demoJob } from "./demo-job.ts";
import { unkeptMeter } from "./kept-meter.ts";
import { openPage } from "./open-page.ts";

/** Loopback only: the bench's jobs are nobody else's business, and there is no password. */
const HOST = "127.0.0.1";
const USUAL_PORT = 4517;
const PORTS_TRIED = 20;

export interface ServerParts {
  readonly store: JobStore & KeepsBoards & KeepsAlbums & StockStore & ShopStore;
  /** boards that come with the program */
  readonly boards: readonly BoardAnswer[];
  /** where the meter's setting is kept; left out: nowhere */
  readonly meter?: KeepsSetting;
  /** the port to use, 0 for any free one; left out: 4517 or the next free one */
  readonly port?: number;
  /** open the page in the browser */
  readonly open?: boolean;
  /** folder of the built page; left out: the one that was built with this program */
  readonly webRoot?: string;
}

export interface ListeningServer {
  readonly url: string;
  /** stops listening; the store stays open */
  stop(): Promise<void>;
}

/** Rejects with `code: "EADDRINUSE"` where the port asked for is taken. An empty store gains the practice job. */
export async function startServer(parts: ServerParts): Promise<ListeningServer> {
  const { store, boards } = parts;
  if ((await store.listJobs()).length === 0) {
    const demo = demoJob(boards);
    if (demo !== null) await store.createJob(demo);
  }
  const meter = new BenchMeter(parts.meter ?? unkeptMeter());
  const app = makeApp({
    store,
    meter,
    acceptLog,
    newId: randomUUID,
    boards,
    webRoot: parts.webRoot ?? builtPage(),
    report: (error) => process.stderr.write(`${error instanceof Error ? error.stack : String(error)}\n`),
  });
  const server = await listen(getRequestListener(app.fetch), parts.port);
  const url = `http://${HOST}:${(server.address() as AddressInfo).port}/`;
  if (parts.open === true) openPage(url);
  const stop = () => {
    meter.stop();
    return close(server);
  };
  return { url, stop };
}

/** The page lies beside the bundled program; run from its sources, it lies in the folder that a build fills. */
function builtPage(): string {
  const here = dirname(fileURLToPath(import.meta.url));
  const bundled = join(here, "web");
  return existsSync(join(bundled, "index.html")) ? bundled : join(here, "..", "..", "dist", "web");
}

type Listener = ReturnType<typeof getRequestListener>;

async function listen(listener: Listener, asked: number | undefined): Promise<Server> {
  if (asked !== undefined) return listenOn(listener, asked);
  for (let port = USUAL_PORT; port < USUAL_PORT + PORTS_TRIED; port++) {
    try {
      return await listenOn(listener, port);
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== "EADDRINUSE") throw error;
    }
  }
  return listenOn(listener, 0);
}

function listenOn(listener: Listener, port: number): Promise<Server> {
  return new Promise((resolve, reject) => {
    const server = createServer((request, response) => {
      void listener(request, response);
    });
    server.once("error", reject);
    server.listen(port, HOST, () => {
      server.off("error", reject);
      resolve(server);
    });
  });
}

function close(server: Server): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve());
    // A browser keeps its connections open; they must not keep a server alive that was told to stop.
    server.closeIdleConnections();
    setTimeout(() => server.closeAllConnections(), 500).unref();
  });
}
