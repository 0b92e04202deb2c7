/** The page as it is shipped, built and served from a store in memory, with a browser to look at it. */
import { createHash, X509Certificate } from "node:crypto";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { keptIdentity } from "../../src/server/lan/kept-identity.ts";
import { startServer } from "../../src/server/start-server.ts";
import { SHIPPED } from "../../src/shipped/shipped.ts";
import { MemoryJobStore } from "../../src/store/memory/memory-job-store.ts";
import { launchChromium } from "./chromium.ts";

/** What other machines call it; the browser of a test finds it here. */
const LAN_NAME = "bench.local";

/** The key of its certificate, as the browser is told to trust it: a phone is told in its settings. */
function trusting(certificate: Uint8Array): string {
  const key = new X509Certificate(certificate).publicKey.export({ type: "spki", format: "der" });
  return `--ignore-certificate-errors-spki-list=${createHash("sha256").update(key).digest("base64")}`;
}

/** @param open - `lan`: as to the network of a shop, under a name of its own, by http and https */
export async function servePage(open: "here" | "lan" = "here") {
  const folder = mkdtempSync(join(tmpdir(), "faultwright-page-"));
  const store = new MemoryJobStore(() => new Date().toISOString());
  const vite = await import("vite");
  await vite.build({ configFile: "vite.config.ts", logLevel: "error", build: { outDir: folder } });
  const identity = { ...keptIdentity(folder, [LAN_NAME], new Date()), hosts: [LAN_NAME] };
  const how = { store, boards: SHIPPED, webRoot: folder, ...(open === "lan" ? { lan: identity } : {}) };
  let server = await startServer({ ...how, port: 0 });
  const { url, secureUrl } = server;
  const onLan = (address: string | null) => (address ?? "").replace("127.0.0.1", LAN_NAME);
  const browser = await launchChromium(
    open === "lan"
      ? [`--host-resolver-rules=MAP ${LAN_NAME} 127.0.0.1`, trusting(identity.server.certificate)]
      : [],
  );
  const sized = async (width: number, height: number): Promise<Page> =>
    (await browser.newContext({ viewport: { width, height } })).newPage();
  return {
    store,
    url,
    /** as another machine sees it: plain http gives a page less than https does */
    lanUrl: onLan(url),
    secureUrl: onLan(secureUrl),
    /** The bench computer goes away, and comes back with what it had. */
    away: (): Promise<void> => server.stop(),
    async back(): Promise<void> {
      server = await startServer({ ...how, port: Number(new URL(url).port) });
    },
    phone: (): Promise<Page> => sized(390, 844),
    laptop: (): Promise<Page> => sized(1366, 768),
    sized,
    async close(): Promise<void> {
      await browser.close();
      await server.stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
