/** One job on two screens: each sees the other's readings at once, and what was entered on both without knowing is shown, never merged in silence. */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { cardReady, inspect, takeIn } from "./bench-page.ts";
import { servePage } from "./served-page.ts";

let served: Awaited<ReturnType<typeof servePage>>;

beforeAll(async () => {
  served = await servePage();
});

afterAll(async () => {
  await served?.close();
});

async function logOf(id: string): Promise<string[]> {
  const job = await served.store.readJob(id);
  return (job?.events ?? []).map((event) => (event.do === "measure" ? String(event.reading) : event.do));
}

/** Types a reading for the check on the card. */
async function typeReading(page: Page, digits: string): Promise<void> {
  await page.locator(".card [data-digits]").focus();
  await page.keyboard.type(digits);
  await page.keyboard.press("Enter");
}

/** Puts a check of AC volts at the terminals on the card, the same on both screens. */
async function chooseCheck(page: Page): Promise<void> {
  await page.getByRole("tab", { name: "Enter" }).click();
  await page.getByLabel("Mode").selectOption("acv");
  await page.getByLabel("Red on").fill("L_IN");
  await page.getByLabel("Black on").fill("N_IN");
  await page.getByRole("button", { name: "Put it on the card" }).click();
}

/** When the page's log first counts so many entries, by its own clock. */
function watchLog(page: Page, entries: number): Promise<number> {
  return page.evaluate(
    (wanted) =>
      new Promise<number>((resolve) => {
        const look = () => {
          const card = document.querySelector(".card")?.getAttribute("data-entry");
          if (Number(card) >= wanted) resolve(Date.now());
          else requestAnimationFrame(look);
        };
        look();
      }),
    entries,
  );
}

describe("one job on two screens", () => {
  it("shows a reading of the one on the other at once, and what clashes until somebody says which holds", async () => {
    const phone = await served.phone();
    await phone.goto(`${served.url}#/new`);
    const id = await takeIn(phone, { board: /Greenhouse/, cause: "Surge", practiceNumber: 3 });
    const laptop = await served.laptop();
    await laptop.goto(`${served.url}#/job/${id}`);
    await cardReady(laptop);

    const delays: number[] = [];
    for (const [at, digits] of ["0.4", "0.3", "0.2"].entries()) {
      const seen = watchLog(laptop, at + 1);
      await phone.locator(".card [data-digits]").focus();
      await phone.keyboard.type(digits);
      const entered = await phone.evaluate(() => Date.now());
      await phone.keyboard.press("Enter");
      delays.push((await seen) - entered);
      await cardReady(phone);
    }
    await cardReady(laptop);
    mkdirSync("test-results", { recursive: true });
    writeFileSync(join("test-results", "two-screens.json"), `${JSON.stringify({ delaysMs: delays })}\n`);
    // A report, not a bound on time: the engine of the other screen has not begun to weigh it yet.
    expect(delays).toHaveLength(3);
    expect(await logOf(id)).toEqual(["0.4", "0.3", "0.2"]);

    // The laptop loses the bench computer; both read one check, each its own way.
    await laptop.route("**/api/**", (route) => route.abort());
    await chooseCheck(laptop);
    await typeReading(laptop, "118");
    await laptop.getByText("not yet on the bench computer (2)").waitFor();
    await laptop.getByRole("tab", { name: "Log" }).click();
    await laptop.getByText("waits for the bench computer").first().waitFor();
    await chooseCheck(phone);
    await typeReading(phone, "3.1");
    await expect.poll(() => logOf(id)).toEqual(["0.4", "0.3", "0.2", "overrule", "3.1"]);
    await laptop.unroute("**/api/**");
    const clash = laptop.getByRole("alert", { name: "Entered on two screens" });
    await clash.getByText("One check, two readings").waitFor();
    await expect
      .poll(() => logOf(id), { timeout: 10_000 })
      .toEqual(["0.4", "0.3", "0.2", "overrule", "3.1", "overrule", "118"]);
    await laptop.setViewportSize({ width: 390, height: 844 });
    await inspect(laptop, "two-screens-clash-390");
    await laptop.setViewportSize({ width: 1366, height: 768 });
    await laptop.reload();
    await cardReady(laptop);
    await clash.getByRole("button", { name: "The other holds, undo mine" }).click();
    await clash.waitFor({ state: "detached" });
    await expect.poll(async () => (await logOf(id)).at(-1)).toBe("undo");
    await phone.getByRole("tab", { name: "Log" }).click();
    await phone.locator('.log [data-undone="true"]').waitFor();

    // What cannot both have happened is refused with its name, and taken back by a tap.
    await laptop.route("**/api/**", (route) => route.abort());
    await cardReady(laptop);
    await typeReading(laptop, "0.1");
    await laptop.getByText("not yet on the bench computer").waitFor();
    const before = await logOf(id);
    await phone.evaluate(
      ([job, event]) =>
        fetch(`/api/jobs/${job}/events`, {
          method: "POST",
          headers: { "content-type": "application/json" },
          body: JSON.stringify({ events: [event] }),
        }),
      [id, { id: "closed-meanwhile", do: "close", verdict: "declined" }] as const,
    );
    await laptop.unroute("**/api/**");
    await laptop.getByText(/The bench computer does not accept .*0\.1/).waitFor();
    await laptop.getByRole("button", { name: "Take it back" }).click();
    await laptop.getByText(/does not accept/).waitFor({ state: "detached" });
    expect(await logOf(id)).toEqual([...before, "close"]);
    await phone.context().close();
    await laptop.context().close();
  });
});
