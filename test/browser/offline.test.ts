/** The bench computer goes away in the middle of a job: nothing entered on the phone is lost. By keyboard alone. */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { cardReady, inspect, takeIn } from "./bench-page.ts";
import { servePage } from "./served-page.ts";

let served: Awaited<ReturnType<typeof servePage>>;

beforeAll(async () => {
  served = await servePage("lan");
});

afterAll(async () => {
  await served?.close();
});

async function keptReadings(id: string): Promise<unknown[]> {
  const job = await served.store.readJob(id);
  return (job?.events ?? []).map((event) => (event.do === "measure" ? event.reading : event.do));
}

/** Types a reading as at the bench: the first digit goes to the field by itself, Enter records it. */
async function typeReading(page: Page, digits: string): Promise<void> {
  await page.locator(".card [data-digits]").focus();
  await page.keyboard.type(digits);
  await page.keyboard.press("Enter");
}

describe("when the bench computer does not answer", () => {
  it("a reading typed on a page of plain http is shown, kept over a reload, sent later and once, and undone by U", async () => {
    const page = await served.phone();
    await page.goto(`${served.lanUrl}#/new`);
    expect(await page.evaluate(() => isSecureContext)).toBe(false);
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

  it("the page of https opens all the same, a job is worked from its beginning, and all of it arrives once and in order", async () => {
    const page = await served.phone();
    await page.goto(served.secureUrl);
    await page.evaluate(() => navigator.serviceWorker.ready);
    await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
    await expect.poll(() => page.evaluate(async () => (await caches.match("/")) !== undefined)).toBe(true);
    // every board that comes with the program is kept for a job that is begun without it
    await page.getByRole("button", { name: "New job" }).click();
    await page.getByRole("radio", { name: /hob/ }).check();
    await page.getByRole("radio", { name: /Greenhouse/ }).check();

    await served.away();
    await page.goto(`${served.secureUrl}#/`);
    await page.reload();
    await page.getByText("The bench computer does not answer.").waitFor();
    await inspect(page, "offline-jobs-390");
    await page.getByRole("button", { name: "New job" }).click();
    const id = await takeIn(page, { board: /Greenhouse/, cause: "Surge", practiceNumber: 5 });
    for (const digits of ["0.6", "0.5", "0.4"]) {
      await typeReading(page, digits);
      await cardReady(page);
    }
    // the field of the next reading has the focus: U would be typed into it
    await page.getByRole("button", { name: "Undo", exact: true }).click();
    await page.getByText("not yet on the bench computer (4)").waitFor();
    await page.reload();
    await cardReady(page);
    expect(await served.store.readJob(id)).toBeNull();

    await served.back();
    await page.getByText("Kept in this browser").waitFor({ state: "detached" });
    expect(await keptReadings(id)).toEqual([0.6, 0.5, 0.4, "undo"]);
    await page.context().close();
  });
});
