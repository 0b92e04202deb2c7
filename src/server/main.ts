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
import { lanAddresses, localName } from "./lan/addresses.ts";
import { isPrivateAddress } from "./lan/certificate.ts";
import { keptIdentity } from "./lan/kept-identity.ts";
import { type ListeningServer, startServer } from "./start-server.ts";

export interface StartOptions {
  /** the port to use, 0 for any free one; left out: 4517 or the next free one */
  readonly port?: number;
  /** where jobs are kept; left out: see `data-dir.ts` */
  readonly dataDir?: string;
  /** open the page in the browser */
  readonly open?: boolean;
  /** let other machines of the shop's network in, by http and by https */
  readonly lan?: boolean;
}

export interface RunningServer {
  readonly url: string;
  readonly dataDir: string;
  /** what to say to whoever wants to come in from another machine; empty where the bench is not open to its network */
  readonly lanWords: string;
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
  const { dataDir = defaultDataDir(process.env), lan = false, ...how } = options;
  const store = openSqliteStore(dataDir, () => new Date().toISOString());
  try {
    const hosts = [...lanAddresses(), ...localName()];
    const identity = lan
      ? { ...keptIdentity(dataDir, ["localhost", "127.0.0.1", ...hosts], new Date()), hosts }
      : null;
    const server = await startServer({
      ...how,
      store,
      boards: SHIPPED,
      meter: keptMeter(dataDir),
      ...(identity === null ? {} : { lan: identity }),
    });
    return {
      url: server.url,
      lanWords: identity === null ? "" : wordsFor(hosts, server, identity.code),
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

/** The addresses for another machine, and what to do there. */
function wordsFor(hosts: readonly string[], server: ListeningServer, code: string): string {
  const [first] = hosts;
  if (first === undefined) return "This machine is on no network: nobody else can come in.\n";
  const at = (host: string, url: string, path: string) => {
    const { protocol, port } = new URL(url);
    return `  ${protocol}//${host}:${port}${path}`;
  };
  // the certificate vouches for no other
  const vouched = hosts.find((host) => isPrivateAddress(host) || host.endsWith(".local"));
  const secure =
    vouched === undefined || server.secureUrl === null
      ? ["This machine has no private address and no local name, so there is no https here."]
      : [
          "By https, where it can be installed and opens without this computer:",
          at(vouched, server.secureUrl, `/enter?code=${code}`),
          "once the phone trusts this bench: it is given the certificate here, and told to trust it in its settings",
          at(vouched, server.url, "/certificate"),
          "(it vouches for private networks alone, never for a site of the internet)",
        ];
  return [
    "Open to this network. By http; a page that is open goes on while this computer is away:",
    at(vouched ?? first, server.url, `/enter?code=${code}`),
    ...secure,
    "",
  ].join("\n");
}
