/** The page in each of its languages, narrow and wide: its direction, its width, what a screen reader needs, and nothing left in English. */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { KeptJob } from "../../src/job/job-store.ts";
import { answerCard, cardReady, inspect, takeIn } from "./bench-page.ts";
import { servePage } from "./served-page.ts";
import { seamsOn, untoldOn, wrongWritingOn } from "./told-page.ts";

const TEST_MS = 900_000;
const MOST_STEPS = 60;
const WIDTHS = [390, 1366] as const;
/** A title is whose job it is: it stays as it was given. */
const DEMO_TITLE = "Practice: greenhouse fan drive after a thunderstorm";

let served: Awaited<ReturnType<typeof servePage>>;
/** One practice job as it was worked in English, and how many entries led to each kind of card. */
let worked: { readonly job: KeptJob; readonly cards: ReadonlyMap<string, number> };

/** Works a practice job until its power card. */
async function workToPower(page: Page): Promise<typeof worked> {
  await page.goto(`${served.url}#/new`);
  await page.getByRole("radio", { name: /Greenhouse/ }).waitFor();
  const id = await takeIn(page, { board: /Greenhouse/, cause: "Surge", practiceNumber: 3 });
  const cards = new Map<string, number>();
  for (let count = 0; count < MOST_STEPS; count++) {
    const step = await cardReady(page);
    const entries = Number(await page.locator(".card").getAttribute("data-entry"));
    if (!cards.has(step.action)) cards.set(step.action, entries);
    if (step.action === "power") break;
    await answerCard(page, step);
  }
  const job = await served.store.readJob(id);
  if (job === null) throw new Error("the job is not on the bench computer");
  return { job, cards };
}

beforeAll(async () => {
  served = await servePage();
  const page = await served.phone();
  worked = await workToPower(page);
  await page.context().close();
}, TEST_MS);

afterAll(async () => {
  await served?.close();
});

/** The same job as far as its first card of this kind. */
async function jobAtCard(action: string, name: string): Promise<string> {
  const { job, cards } = worked;
  const id = `${name}-${action}`;
  const { title, practice, header } = job;
  await served.store.createJob({
    id,
    title,
    practice,
    header,
    events: job.events.slice(0, cards.get(action)),
  });
  return id;
}

const SCREENS: readonly { readonly name: string; readonly at: string; readonly ready: string }[] = [
  { name: "jobs", at: "#/", ready: ".front" },
  { name: "intake", at: "#/new", ready: ".choice" },
  { name: "describe", at: "#/new/board", ready: ".question .choice" },
  { name: "drawer", at: "#/drawer", ready: ".drawer-keys" },
  { name: "boards", at: "#/boards", ready: ".bring-board" },
  { name: "shop", at: "#/shop", ready: ".terms input" },
  { name: "learnt", at: "#/learnt", ready: "main .aside" },
  { name: "this-bench", at: "#/bench", ready: ".mapped-keys" },
  { name: "meter", at: "#/meter", ready: ".meter-setting .choice" },
];

describe.each(["es", "hi", "ar"] as const)("in %s", (language) => {
  async function opened(width: number): Promise<Page> {
    const page = await served.sized(width, 844);
    await page.addInitScript((chosen) => localStorage.setItem("language", chosen), language);
    return page;
  }

  /** Throws where the layout does not hold; gives back what is not told. */
  async function amissOn(page: Page, name: string): Promise<string[]> {
    expect(await wrongWritingOn(page, language), name).toEqual([]);
    await inspect(page, `language-${language}-${name}`);
    const seams = await seamsOn(page);
    const untold = await untoldOn(page, language, [worked.job.title, DEMO_TITLE]);
    return [...seams, ...untold].map((text) => `${name}: ${text}`);
  }

  it.each(WIDTHS)(
    "the screens before a job hold at %i px, in its own words",
    async (width) => {
      const page = await opened(width);
      const amiss: string[] = [];
      for (const { name, at, ready } of SCREENS) {
        await page.goto(`${served.url}${at}`);
        await page.locator(ready).first().waitFor();
        amiss.push(...(await amissOn(page, `${name}-${width}`)));
      }
      expect(amiss).toEqual([]);
      await page.context().close();
    },
    TEST_MS,
  );

  it.each(WIDTHS)(
    "the cards of a practice job and what stands beside them hold at %i px, in its own words",
    async (width) => {
      const page = await opened(width);
      const amiss: string[] = [];
      for (const action of worked.cards.keys()) {
        await page.goto(`${served.url}#/job/${await jobAtCard(action, `${language}-${width}`)}`);
        await cardReady(page);
        amiss.push(...(await amissOn(page, `card-${action}-${width}`)));
      }
      await page.keyboard.press("t");
      await page.getByRole("timer").waitFor();
      amiss.push(...(await amissOn(page, `power-on-${width}`)));
      for (const tab of await page.getByRole("tab").all()) {
        await tab.click();
        amiss.push(...(await amissOn(page, `${await tab.getAttribute("id")}-${width}`)));
      }
      expect(amiss).toEqual([]);
      await page.context().close();
    },
    TEST_MS,
  );
});
