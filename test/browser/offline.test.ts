/** The bench computer goes away in the middle of a job: nothing entered on the phone is lost. By keyboard alone. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type ListeningServer, startServer } from "../../src/server/start-server.ts";
import { SHIPPED } from "../../src/shipped/shipped.ts";
import { MemoryJobStore } from "../../src/store/memory/memory-job-store.ts";
import { cardReady, takeIn } from "./bench-page.ts";
import { launchChromium } from "./chromium.ts";

const folder = mkdtempSync(join(tmpdir(), "faultwright-offline-"));
const store = new MemoryJobStore(() => new Date().toISOString());
let server: ListeningServer;
let browser: Browser;

beforeAll(async () => {
  const vite = await import("vite");
  await vite.build({ configFile: "vite.config.ts", logLevel: "error", build: { outDir: folder } });
  server = await startServer({ store, boards: SHIPPED, port: 0, webRoot: folder });
  browser = await launchChromium();
});

afterAll(async () => {
  await browser?.close();
  await server?.stop();
  rmSync(folder, { recursive: true, force: true });
});

async function keptReadings(id: string): Promise<unknown[]> {
  const job = await store.readJob(id);
  return (job?.events ?? []).map((event) => (event.do === "measure" ? event.reading : event.do));
}

/** Types a reading as at the bench: the first digit goes to the field by itself, Enter records it. */
async function typeReading(page: Page, digits: string): Promise<void> {
  await page.locator("body").press("f");
  await page.keyboard.type(digits);
  await page.keyboard.press("Enter");
}

describe("when the bench computer does not answer", () => {
  it("a reading typed by keyboard is shown, kept over a reload, sent later and once, and undone by U", async () => {
    const page = await (await browser.newContext({ viewport: { width: 390, height: 844 } })).newPage();
    await page.goto(`${server.url}#/new`);
    const id = await takeIn(page, { board: /Greenhouse/, cause: "Surge", practiceNumber: 3 });
    const first = await cardReady(page);

    await page.route("**/api/**", (route) => route.abort());
    await typeReading(page, "0.4");
    await page.getByText("Kept in this browser, not yet on the bench computer (1)").waitFor();
    expect(await keptReadings(id)).toEqual([]);

    await page.reload();
    const second = await cardReady(page);
    expect(second.headline).not.toBe(first.headline);
    await page.getByRole("tab", { name: "Log" }).click();
    expect(await page.getByRole("list", { name: "Log" }).getByRole("listitem").count()).toBe(1);
    expect(await keptReadings(id)).toEqual([]);

    await page.unroute("**/api/**");
    await page.getByText("Kept in this browser").waitFor({ state: "detached" });
    expect(await keptReadings(id)).toEqual([0.4]);

    await page.locator("body").press("u");
    await page.locator('.log [data-undone="true"]').waitFor();
    await expect.poll(() => keptReadings(id)).toEqual([0.4, "undo"]);
    await page.context().close();
  });
});
