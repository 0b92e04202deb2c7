/** The server of one bench: a store and the shipped boards, listening on the loopback address, or on the shop's network as well. */
import { randomUUID } from "node:crypto";
import { existsSync } from "node:fs";
import { createServer, type RequestListener, type Server } from "node:http";
import { createServer as createSecureServer } from "node:https";
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
import { pem } from "./lan/certificate.ts";
import type { Identity } from "./lan/kept-identity.ts";
import { openPage } from "./open-page.ts";

/** Unless it is opened: the bench's jobs are nobody else's business. */
const HOST = "127.0.0.1";
const EVERYWHERE = "0.0.0.0";
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
  /** open to the shop's network: what it is known by there */
  readonly lan?: LanIdentity;
  /** open the page in the browser */
  readonly open?: boolean;
  /** folder of the built page; left out: the one that was built with this program */
  readonly webRoot?: string;
}

/** How a bench that is open to its network is known there. */
export interface LanIdentity extends Identity {
  /** addresses and names of this machine, without a port */
  readonly hosts: readonly string[];
}

export interface ListeningServer {
  readonly url: string;
  /** of the https side, on this machine; null where the bench is not open to its network */
  readonly secureUrl: string | null;
  /** stops listening; the store stays open */
  stop(): Promise<void>;
}

/** Rejects with `code: "EADDRINUSE"` where the port asked for is taken. An empty store gains the practice job. */
export async function startServer(parts: ServerParts): Promise<ListeningServer> {
  const { store, boards, lan } = parts;
  if ((await store.listJobs()).length === 0) {
    const demo = demoJob(boards);
    if (demo !== null) await store.createJob(demo);
  }
  const meter = new BenchMeter(parts.meter ?? unkeptMeter());
  const app = makeApp({
    store,
    meter,
    ...(lan === undefined
      ? {}
      : { door: { hosts: new Set(lan.hosts), code: lan.code, authority: lan.authority } }),
    acceptLog,
    newId: randomUUID,
    boards,
    webRoot: parts.webRoot ?? builtPage(),
    report: (error) => process.stderr.write(`${error instanceof Error ? error.stack : String(error)}\n`),
  });
  const listener = getRequestListener(app.fetch);
  const host = lan === undefined ? HOST : EVERYWHERE;
  const server = await listen((port) => listenOn(createServer(answering(listener)), port, host), parts.port);
  const secure = lan === undefined ? null : await listenSecurely(listener, lan, portOf(server));
  const url = `http://${HOST}:${portOf(server)}/`;
  if (parts.open === true) openPage(url);
  const stop = async () => {
    meter.stop();
    await Promise.all([close(server), ...(secure === null ? [] : [close(secure)])]);
  };
  return { url, secureUrl: secure === null ? null : `https://${HOST}:${portOf(secure)}/`, stop };
}

function portOf(server: Server): number {
  return (server.address() as AddressInfo).port;
}

/** On the port behind that of plain http, or the next free one. */
async function listenSecurely(
  listener: Listener,
  { server }: LanIdentity,
  plainPort: number,
): Promise<Server> {
  const tls = { cert: pem(server.certificate), key: server.key };
  const attempt = (port: number) => listenOn(createSecureServer(tls, answering(listener)), port, EVERYWHERE);
  return firstFree(attempt, plainPort + 1);
}

/** The page lies beside the bundled program; run from its sources, it lies in the folder that a build fills. */
function builtPage(): string {
  const here = dirname(fileURLToPath(import.meta.url));
  const bundled = join(here, "web");
  return existsSync(join(bundled, "index.html")) ? bundled : join(here, "..", "..", "dist", "web");
}

type Listener = ReturnType<typeof getRequestListener>;

type Attempt = (port: number) => Promise<Server>;

function listen(attempt: Attempt, asked: number | undefined): Promise<Server> {
  return asked === undefined ? firstFree(attempt, USUAL_PORT) : attempt(asked);
}

async function firstFree(attempt: Attempt, from: number): Promise<Server> {
  for (let port = from; port < from + PORTS_TRIED; port++) {
    try {
      return await attempt(port);
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== "EADDRINUSE") throw error;
    }
  }
  return attempt(0);
}

function answering(listener: Listener): RequestListener {
  return (request, response) => void listener(request, response);
}

function listenOn(server: Server, port: number, host: string): Promise<Server> {
  return new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, host, () => {
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
