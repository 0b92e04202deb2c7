/** Finding things: a newcomer on an empty bench, a job put aside and found again by what it waits for, its number and its part. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { RECTIFIER } from "../../src/job/rectifier-job.fixture.ts";
import { jobNumber } from "../../src/wire/job-number.ts";
import { cardReady, inspect } from "./bench-page.ts";
import { servePage } from "./served-page.ts";

let served: Awaited<ReturnType<typeof servePage>>;

beforeAll(async () => {
  served = await servePage();
});

afterAll(async () => {
  await served?.close();
});

const ID = "3f9a1c7e-0b1d-4c55-9b5e-6a7d8e9f0a1b";
const TEST_MS = 300_000;

describe("finding things", () => {
  it(
    "an empty bench has the practice board one tap away; a job put aside waits under what it waits for and is found by number, part and scanned label",
    async () => {
      const page = await served.phone();
      await page.goto(served.url);
      await page.getByRole("heading", { name: "New here? One minute" }).waitFor();
      await inspect(page, "finding-empty-390");
      await page.getByRole("button", { name: /^Try it now/ }).click();
      await page.waitForURL(/#\/job\/demo$/);

      const header = {
        format: "faultwright-job/1",
        board: RECTIFIER,
        cause: "surge",
        symptom: "dead",
      } as const;
      const whose = { unit: "mist pump", customer: "the nursery" };
      const job = { title: "mist pump, the nursery", practice: null, header: { ...header, ...whose } };
      await served.store.createJob({ id: ID, ...job, events: [] });
      const fitted = { do: "replace", part: "F1", with: "5 A slow", id: "f" } as const;
      const closed = { do: "close", verdict: "repaired", id: "c" } as const;
      await served.store.createJob({ id: "closed-one", ...job, title: "fan 2", events: [fitted, closed] });

      await page.goto(`${served.url}#/job/${ID}`);
      await cardReady(page);
      await page.getByRole("tab", { name: "Close" }).click();
      await page.getByLabel(/Which part/).fill("BR1, ordered");
      await page.getByRole("button", { name: "A part comes" }).click();
      await page.getByRole("tab", { name: "Check" }).click();
      await page.getByRole("heading", { name: "Waiting for a part: BR1, ordered" }).waitFor();
      await inspect(page, "finding-aside-390");
      await page.getByRole("button", { name: "All jobs" }).click();

      await page
        .getByRole("region", { name: "Waiting for a part" })
        .getByText(/for 1 min/)
        .waitFor();
      for (const width of [390, 820, 1366]) {
        await page.setViewportSize({ width, height: 844 });
        await inspect(page, `finding-front-${width}`);
      }
      const found = async (typed: string) => {
        await page.getByLabel("Find a job").fill(typed);
        return page.locator(".job-title").allTextContents();
      };
      expect(await found(jobNumber(ID))).toEqual(["mist pump, the nursery"]);
      expect(await found("5 a slow")).toEqual(["fan 2"]);
      expect(await found("repaired fan")).toEqual(["fan 2"]);
      expect(await found("nursery br1")).toEqual(["mist pump, the nursery"]);
      expect(await found("nobody's board")).toEqual([]);
      await page.getByText("No job has all of these words.").waitFor();

      // what a scanner types for the code of a label
      await page.getByLabel("Find a job").fill(`http://bench.local/#/job/${ID}`);
      await page.getByLabel("Find a job").press("Enter");
      await page.getByRole("button", { name: "Take it up again" }).click();
      const step = await cardReady(page);
      expect(step.action).toBe("measure");
      expect(await page.locator(".spent").textContent()).toContain("0 min");
      const kept = await served.store.readJob(ID);
      expect(kept?.events.map((event) => event.do)).toEqual(["wait", "resume"]);
      await page.context().close();
    },
    TEST_MS,
  );
});
