/** A closed job becomes practice on the page: shown, begun, worked blind, and laid beside the recorded way. A board is given and taken. */
import { readFileSync } from "node:fs";
import { afterAll, beforeAll, expect, it } from "vitest";
import { SMALL_BOARD } from "../../src/cli/small-job.fixture.ts";
import { answerCard, cardReady, inspect } from "./bench-page.ts";
import { servePage } from "./served-page.ts";

const JOB_MS = 300_000;
const MOST_STEPS = 60;

let served: Awaited<ReturnType<typeof servePage>>;

beforeAll(async () => {
  served = await servePage();
});

afterAll(async () => {
  await served?.close();
});

it(
  "a closed job is practice for an apprentice, without a word of the customer's, and the ways stand side by side",
  async () => {
    await served.store.createJob({
      id: "recorded",
      title: "canary7731's pump",
      practice: null,
      header: { format: "faultwright-job/1", board: SMALL_BOARD, cause: "surge", symptom: "dead" },
      events: [
        { do: "note", id: "n", text: "canary7731 rang" },
        { do: "measure", id: "e1", mode: "dcv", red: "C1.plus", black: "C1.minus", reading: 0.4 },
        { do: "measure", id: "e2", mode: "ohms", red: "L", black: "LF", reading: "OL", who: "canary7731" },
        { do: "replace", id: "e3", part: "F1", price: 2 },
        { do: "close", id: "e4", verdict: "repaired" },
      ],
    });
    const page = await served.phone();
    await page.goto(`${served.url}#/job/recorded`);
    await page.getByText("Make practice of it for somebody").click();
    await page.getByLabel("What the apprentice reads above it").fill("A rectifier after a surge");
    await page.getByRole("button", { name: "Show what would be in it" }).click();
    await page.getByText("found: F1 open").waitFor({ timeout: JOB_MS });
    await inspect(page, "teach-preview");
    await page.getByRole("button", { name: "Begin it here" }).click();
    await page.getByRole("heading", { name: "A rectifier after a surge" }).waitFor();
    let closed = false;
    for (let step = 0; step < MOST_STEPS && !closed; step++) {
      const card = await cardReady(page);
      closed = card.action === "close";
      await answerCard(page, card);
    }
    expect(closed).toBe(true);
    const id = new URL(page.url()).hash.replace("#/job/", "");
    const kept = await served.store.readJob(id);
    expect(JSON.stringify(kept)).not.toContain("canary7731");
    // what the recorded board read, the apprentice's board reads
    expect(kept?.events.find((event) => event.do === "measure" && event.mode === "dcv")).toMatchObject({
      reading: 0.4,
    });
    await page.getByRole("button", { name: "Lay the ways side by side" }).click();
    await page.getByRole("columnheader", { name: /^recorded 4 steps/ }).waitFor({ timeout: JOB_MS });
    await page.getByRole("columnheader", { name: /^yours/ }).waitFor();
    await inspect(page, "teach-ways");
    await page.context().close();
  },
  JOB_MS,
);

it("a board is saved as a file on one bench, shown with what it changes, and kept as a new version", async () => {
  await served.store.boards.keepVersion("own-1", {
    id: "v1",
    title: "small rectifier",
    content: SMALL_BOARD,
  });
  const page = await served.laptop();
  await page.goto(`${served.url}#/boards/own-1`);
  await page.getByText("Give the board away").click();
  const saved = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save the file" }).click();
  const text = readFileSync(await (await saved).path(), "utf8");
  expect(JSON.parse(text)).toEqual({ format: "faultwright-pack/1", board: SMALL_BOARD, outcomes: {} });

  await page.getByRole("button", { name: "Boards" }).click();
  const file = page.getByLabel(/^A file of a board/);
  const given = (changed: string) => ({
    name: "given.json",
    mimeType: "application/json",
    buffer: Buffer.from(changed),
  });
  await file.setInputFiles(given(text.slice(0, 200)));
  await page.getByRole("alert").waitFor();
  await file.setInputFiles(given(text.replace("220000", "330000")));
  await page.getByText('R1: value {"ohms":220000} -> {"ohms":330000}').waitFor();
  await inspect(page, "bring-board");
  await page.getByRole("button", { name: "Keep it as the new version" }).click();
  await page.getByText(/2 versions/).waitFor();
  const versions = (await served.store.boards.readBoard("own-1"))?.versions ?? [];
  expect(versions.map(({ content }) => (content as typeof SMALL_BOARD | null)?.parts.R1.value.ohms)).toEqual([
    220000, 330000,
  ]);
  await page.context().close();
});
