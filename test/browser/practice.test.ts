/** A newcomer works whole practice jobs in a real browser, by touch on a phone and by the keyboard alone on a laptop, against the real server. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { foldLog } from "../../src/bench/fold.ts";
import { faultName } from "../../src/board/fault.ts";
import { parseJob } from "../../src/job/parse-job.ts";
import { faultsAfter, faultsOnArrival } from "../../src/practice/hidden-course.ts";
import { priorTable } from "../../src/priors/prior-table.ts";
import { type ListeningServer, startServer } from "../../src/server/start-server.ts";
import { SHIPPED } from "../../src/shipped/shipped.ts";
import { openSqliteStore } from "../../src/store/sqlite/open-store.ts";
import type { JobAnswer } from "../../src/wire/job-api.ts";
import { answerCard, cardReady, inspect, takeIn } from "./bench-page.ts";
import { launchChromium } from "./chromium.ts";
import { byKeys, type Press, tapped } from "./press.ts";

const MOST_STEPS = 120;
const JOB_MS = 900_000;

/** The smallest picture there is: one white pixel. */
const ONE_PIXEL = Buffer.from(
  "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAQAAAC1HAwCAAAAC0lEQVR42mP8/x8AAwMCAO+ip1sAAAAASUVORK5CYII=",
  "base64",
);

const SCREENS = [
  { name: "phone", width: 390, height: 844, press: tapped, scheme: "light" },
  { name: "laptop", width: 1366, height: 768, press: byKeys, scheme: "dark" },
] as const;

const folder = mkdtempSync(join(tmpdir(), "faultwright-browser-"));
const store = openSqliteStore(join(folder, "jobs"), () => new Date().toISOString());
let server: ListeningServer;
let browser: Browser;

beforeAll(async () => {
  const vite = await import("vite");
  const webRoot = join(folder, "web");
  await vite.build({ configFile: "vite.config.ts", logLevel: "error", build: { outDir: webRoot } });
  server = await startServer({ store, boards: SHIPPED, port: 0, webRoot });
  browser = await launchChromium();
});

afterAll(async () => {
  await browser?.close();
  await server?.stop();
  await store.close();
  rmSync(folder, { recursive: true, force: true });
});

async function openPage(screen: (typeof SCREENS)[number], complaints: string[]): Promise<Page> {
  const context = await browser.newContext({
    viewport: { width: screen.width, height: screen.height },
    hasTouch: screen.press === tapped,
    colorScheme: screen.scheme,
  });
  const page = await context.newPage();
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on(
    "console",
    (message) =>
      message.type() === "error" && complaints.push(`${message.text()} (${message.location().url})`),
  );
  page.on("request", (request) => {
    const { origin, protocol } = new URL(request.url());
    if (protocol.startsWith("http") && `${origin}/` !== server.url) complaints.push(`asked ${request.url()}`);
  });
  return page;
}

/** What the job's log on the server says happened to the hidden faults, told by the practice board itself. */
function courseOf(kept: JobAnswer) {
  const job = parseJob({ ...kept.header, log: kept.events }, null);
  if (!job.ok) throw new Error(job.problem);
  const timeline = foldLog(job.value.board, job.value.absent, job.value.log);
  if (!timeline.ok) throw new Error(timeline.problem);
  const table = priorTable(job.value.board, job.value.cause, job.value.symptom);
  const practice = { job: job.value, table, seed: kept.practice?.seed ?? Number.NaN };
  const names = (faults: ReturnType<typeof faultsOnArrival>) => faults.map(({ fault }) => faultName(fault));
  const last = timeline.value.entries.at(-1)?.event;
  return {
    arrived: names(faultsOnArrival(practice)),
    left: names(faultsAfter(practice, timeline.value)),
    verdict: last?.do === "close" ? last.verdict : null,
  };
}

async function readJob(id: string): Promise<JobAnswer> {
  const answer = await fetch(`${server.url}api/jobs/${id}`);
  expect(answer.status).toBe(200);
  return (await answer.json()) as JobAnswer;
}

/** Before the switch what may break, with it on what to watch, the clock running and the keys to mark what is seen. */
async function switchOn(page: Page, name: string, press: Press): Promise<void> {
  expect(await page.getByRole("timer").count()).toBe(0);
  if (press === byKeys) await page.keyboard.press("t");
  else await press(page.getByRole("button", { name: /^It is on: show what to watch/ }));
  await page.getByRole("timer").getByText(/^0:0/).waitFor();
  await page.getByRole("button", { name: "Record what power showed" }).waitFor();
  // the bar above says so at once, before anything is recorded
  await page.getByRole("banner").getByText("POWERED").waitFor();
  await inspect(page, `${name}-power-on`);
}

/** Answers card after card until the job is closed; returns how many. */
async function workToVerdict(page: Page, name: string, press: Press): Promise<number> {
  const seen = new Set<string>();
  for (let count = 0; count < MOST_STEPS; count++) {
    const step = await cardReady(page);
    if (step.action === "closed") return count;
    if (!seen.has(step.action)) await inspect(page, `${name}-card-${step.action}`);
    if (!seen.has(step.action) && step.action === "power") await switchOn(page, name, press);
    seen.add(step.action);
    await answerCard(page, step, press);
  }
  throw new Error(`no verdict after ${MOST_STEPS} cards`);
}

async function inspectPanels(page: Page, name: string, press: Press): Promise<void> {
  for (const tab of await page.getByRole("tab").allTextContents()) {
    await press(page.getByRole("tab", { name: tab }));
    if (tab === "Suspects") await press(page.locator(".suspects summary").first());
    await inspect(page, `${name}-${tab.toLowerCase()}`);
  }
  await press(page.getByRole("tab").first());
}

describe.each(SCREENS)("a practice job on a $name", (screen) => {
  it(
    "goes from intake to a verdict that the hidden faults bear out, and the log on the server agrees",
    async () => {
      const complaints: string[] = [];
      const page = await openPage(screen, complaints);
      await page.goto(server.url);
      await page.getByRole("heading", { name: "Jobs" }).waitFor();
      await inspect(page, `${screen.name}-jobs`);
      await screen.press(page.getByRole("button", { name: "New job" }));
      await page.getByRole("radio", { name: /Greenhouse/ }).waitFor();
      await inspect(page, `${screen.name}-intake`);
      const id = await takeIn(page, { board: /Greenhouse/, cause: "Surge", practiceNumber: 3 }, screen.press);
      await inspectPanels(page, screen.name, screen.press);

      const cards = await workToVerdict(page, screen.name, screen.press);
      expect(cards).toBeGreaterThan(3);
      await page.locator(".hidden-faults").waitFor();
      await inspect(page, `${screen.name}-closed`);

      const kept = await readJob(id);
      const { arrived, left, verdict } = courseOf(kept);
      expect(kept.practice).toEqual({ seed: 3 });
      expect(arrived.length).toBeGreaterThan(0);
      expect(verdict).toBe("repaired");
      expect(left).toEqual([]);
      expect(await page.locator(".card h2").textContent()).toBe("Repaired");
      const told = await page
        .locator(".hidden-faults [data-fault]")
        .evaluateAll((items) => items.map((item) => item.getAttribute("data-fault")));
      expect(told).toEqual(arrived);
      expect(complaints).toEqual([]);
      await page.context().close();
    },
    JOB_MS,
  );
});

describe("on the bench of a phone", () => {
  it(
    "a part can be marked as missing, a suspect's reasons read, a picture added; the closed job stands apart",
    async () => {
      const complaints: string[] = [];
      const page = await openPage(SCREENS[0], complaints);
      await page.goto(`${server.url}#/new`);
      await page.getByRole("radio", { name: /Greenhouse/ }).waitFor();
      const id = await takeIn(page, { board: /Greenhouse/, cause: "Surge", practiceNumber: 3 });

      await page.getByRole("tab", { name: "Enter" }).click();
      await page.getByLabel("Part", { exact: true }).fill("RV1");
      await page.getByRole("button", { name: "Not there" }).click();
      await page.getByRole("tab", { name: "Log" }).click();
      await page.getByText("RV1: not on this board").waitFor();
      await page.getByLabel("Add a picture").setInputFiles({
        name: "front.png",
        mimeType: "image/png",
        buffer: ONE_PIXEL,
      });
      await page.locator(".picture-strip img").waitFor();
      await inspect(page, "phone-log-with-picture");

      await page.getByRole("tab", { name: "Suspects" }).click();
      await page.locator(".suspects summary").first().click();
      await page.getByText("No reading so far could have shown a fault here.").waitFor();

      await page.getByRole("tab", { name: "Close" }).click();
      await page.getByRole("button", { name: "Customer declined" }).click();
      const step = await cardReady(page);
      expect(step.action).toBe("close");
      await answerCard(page, step);
      await page.goto(server.url);
      const closed = page.getByRole("region", { name: "Closed" });
      await closed.getByText("Customer declined").waitFor();
      await inspect(page, "phone-jobs-closed");

      const kept = await readJob(id);
      expect(kept.pictures).toHaveLength(1);
      expect(kept.events.map((event) => event.do)).toContain("mark");
      expect(complaints).toEqual([]);
      await page.context().close();
    },
    JOB_MS,
  );
});
