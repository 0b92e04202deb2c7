/** What the bench has learnt, on the page: counted from a closed job, left out, taken in again, and at the next intake. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { KeptEvent } from "../../src/job/job-store.ts";
import { FUSE_LOG, RECTIFIER } from "../../src/job/rectifier-job.fixture.ts";
import { SHIPPED } from "../../src/shipped/shipped.ts";
import { inspect } from "./bench-page.ts";
import { servePage } from "./served-page.ts";

let served: Awaited<ReturnType<typeof servePage>>;
const [first] = SHIPPED;

const header = (board: unknown) => ({ format: "faultwright-job/1", board, cause: "surge", symptom: "dead" });

beforeAll(async () => {
  served = await servePage();
  // Events of a fixture that the job's own parser has accepted.
  const events = FUSE_LOG.map((event, at) => ({ id: `e${at}`, ...event })) as unknown as KeptEvent[];
  for (const id of ["one", "two", "three"])
    await served.store.createJob({
      id,
      title: `Rectifier ${id}`,
      practice: null,
      header: header(RECTIFIER),
      events,
    });
  await served.store.createJob({
    id: "played",
    title: "Played",
    practice: { seed: 4 },
    header: header(RECTIFIER),
    events,
  });
  const close = { do: "close", verdict: "repaired", id: "c" } as const;
  const work = [{ do: "replace", part: "F1", id: "r" }, close] as const;
  await served.store.createJob({
    id: "before",
    title: "For a customer",
    practice: null,
    header: header(first?.board),
    events: work,
  });
});

afterAll(async () => {
  await served?.close();
});

describe("what this bench has learnt", () => {
  it("is shown beside the defaults, without practice, and a job can be left out and taken in again", async () => {
    const page = await served.phone();
    await page.goto(served.url);
    await page.getByRole("button", { name: "What was learnt" }).click();
    await page.getByText("All closed jobs are read.").waitFor({ timeout: 60_000 });
    await page.getByText("From 4 closed jobs on 4 boards.").waitFor();
    const fuse = page
      .getByRole("region", { name: "Sorts of parts" })
      .getByRole("listitem")
      .filter({ hasText: /^fuse/ });
    expect(await fuse.textContent()).toMatch(/expected → x .*found on \d+ parts/s);
    expect(await page.getByText("Played").count()).toBe(0);
    await inspect(page, "learnt");
    const job = page.getByRole("listitem").filter({ hasText: "Rectifier two" });
    await job.getByRole("button", { name: "Leave out" }).click();
    await page.getByText("From 3 closed jobs on 3 boards.").waitFor({ timeout: 60_000 });
    await job.getByRole("button", { name: "Take in again" }).click();
    await page.getByText("From 4 closed jobs on 4 boards.").waitFor({ timeout: 60_000 });
    await page.context().close();
  });

  it("goes into the next job on a real board, and the board's number tells what it had before", async () => {
    const page = await served.phone();
    await page.goto(`${served.url}#/new`);
    await page.getByRole("radio", { name: first?.title ?? "" }).check();
    const before = page.getByRole("region", { name: "What it had before" });
    await before.getByText("Replace F1").waitFor();
    expect(await before.textContent()).not.toContain("customer");
    await page.getByText("Likelihoods start from what 4 closed jobs taught.").waitFor({ timeout: 60_000 });
    await page.getByRole("radio", { name: /^Surge/ }).check();
    await inspect(page, "learnt-intake");
    await page.getByRole("button", { name: "Start the job" }).click();
    await page.waitForURL(/#\/job\//);
    const id = new URL(page.url()).hash.replace("#/job/", "");
    await expect
      .poll(async () => (await served.store.readJob(id))?.header.learned)
      .toMatchObject({ jobs: 4 });
    await page.context().close();
  });
});
