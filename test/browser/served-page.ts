/** The page as it is shipped, built and served from a store in memory, with a browser to look at it. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { startServer } from "../../src/server/start-server.ts";
import { SHIPPED } from "../../src/shipped/shipped.ts";
import { MemoryJobStore } from "../../src/store/memory/memory-job-store.ts";
import { launchChromium } from "./chromium.ts";

export async function servePage() {
  const folder = mkdtempSync(join(tmpdir(), "faultwright-page-"));
  const store = new MemoryJobStore(() => new Date().toISOString());
  const vite = await import("vite");
  await vite.build({ configFile: "vite.config.ts", logLevel: "error", build: { outDir: folder } });
  let server = await startServer({ store, boards: SHIPPED, port: 0, webRoot: folder });
  const { url } = server;
  const browser = await launchChromium();
  const sized = async (width: number, height: number): Promise<Page> =>
    (await browser.newContext({ viewport: { width, height } })).newPage();
  return {
    store,
    url,
    /** The bench computer goes away, and comes back with what it had. */
    away: (): Promise<void> => server.stop(),
    async back(): Promise<void> {
      server = await startServer({
        store,
        boards: SHIPPED,
        port: Number(new URL(url).port),
        webRoot: folder,
      });
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
