/** The server of one bench: opens the store, listens on the loopback address. */
import { randomUUID } from "node:crypto";
import { existsSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { getRequestListener } from "@hono/node-server";
import { acceptLog } from "../job/accept-log.ts";
import { openSqliteStore } from "../store/sqlite/open-store.ts";
import type { BoardAnswer } from "../wire/job-api.ts";
import { makeApp } from "./app.ts";
import { defaultDataDir } from "./data-dir.ts";
import { demoJob } from "./demo-job.ts";
import { openPage } from "./open-page.ts";

/** Loopback only: the bench's jobs are nobody else's business, and there is no password. */
const HOST = "127.0.0.1";
const USUAL_PORT = 4517;
const PORTS_TRIED = 20;

export interface StartOptions {
  /** the port to use, 0 for any free one; left out: 4517 or the next free one */
  readonly port?: number;
  /** left out: see `data-dir.ts` */
  readonly dataDir?: string;
  /** open the page in the browser */
  readonly open?: boolean;
  /** folder of the built page; left out: the one that was built with this program */
  readonly webRoot?: string;
}

export interface RunningServer {
  readonly url: string;
  readonly dataDir: string;
  stop(): Promise<void>;
}

/** Rejects with `code: "EADDRINUSE"` where the port asked for is taken. `boards` are those that come with the program. */
export async function startServer(
  options: StartOptions,
  boards: readonly BoardAnswer[],
): Promise<RunningServer> {
  const dataDir = options.dataDir ?? defaultDataDir(process.env);
  const store = openSqliteStore(dataDir, () => new Date().toISOString());
  try {
    if ((await store.listJobs()).length === 0) {
      const demo = demoJob(boards);
      if (demo !== null) await store.createJob(demo);
    }
    const app = makeApp({
      store,
      acceptLog,
      newId: randomUUID,
      boards,
      webRoot: options.webRoot ?? builtPage(),
      report: (error) => process.stderr.write(`${error instanceof Error ? error.stack : String(error)}\n`),
    });
    const server = await listen(getRequestListener(app.fetch), options.port);
    const url = `http://${HOST}:${(server.address() as AddressInfo).port}/`;
    if (options.open === true) openPage(url);
    return {
      url,
      dataDir,
      stop: async () => {
        await close(server);
        await store.close();
      },
    };
  } catch (error) {
    await store.close();
    throw error;
  }
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
