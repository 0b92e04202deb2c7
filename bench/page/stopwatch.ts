/** Twelve readings at one tap each, at a person's pace, on a board whose hidden faults say what the meter shows. */
import type { Page } from "playwright-core";
import type { MeasureMode } from "../../src/bench/event.ts";
import { foldLog } from "../../src/bench/fold.ts";
import { AssessmentSession } from "../../src/job/assess.ts";
import { parseJob } from "../../src/job/parse-job.ts";
import { answer } from "../../src/practice/answer.ts";
import { practiceJobOf } from "../../src/practice/hidden-course.ts";
import type { servePage } from "../../test/browser/served-page.ts";

export const READINGS = 12;
/** What paper asks for beside the hands, seconds a reading; from memory. */
export const PAPER_SECONDS = { write: 4, lookUp: 4 } as const;

export interface Stopwatch {
  readonly seconds: number;
  readonly taps: number;
  /** cards that asked for something else than a reading before the twelve were in */
  readonly between: number;
  /** seconds from the tap until the next check stands there */
  readonly waits: { readonly median: number; readonly slowest: number };
}

type Served = Awaited<ReturnType<typeof servePage>>;

const BOARD = /Greenhouse/;
const PRACTICE_NUMBER = "3";
const READY = '.card-place[aria-busy="false"] .card[data-waiting="false"]';
const READY_MS = 120_000;
/** Steps that prove the board dead before the first cold check: more than any shipped board has. */
const MOST_STEPS = 40;

/** @param handSeconds - for moving both probes and reading the display, slept at each reading */
export async function stopwatch(served: Served, handSeconds: number): Promise<Stopwatch> {
  const page = await served.phone();
  const id = await provenDead(page, served.url);
  const truth = hiddenBoard(served, id);
  const waits: number[] = [];
  let between = 0;
  const started = performance.now();
  while (waits.length < READINGS) {
    const check = await coldCheck(page);
    if (check === null) {
      between++;
      await answerByPractice(page);
      continue;
    }
    await page.waitForTimeout(handSeconds * 1000);
    const key = await truth(check);
    const tapped = performance.now();
    const before = await page.locator(".card").getAttribute("data-entry");
    await page.locator(`.card [data-key="${key}"]`).click();
    await nextCard(page, before);
    waits.push((performance.now() - tapped) / 1000);
  }
  const seconds = (performance.now() - started) / 1000;
  await page.context().close();
  const sorted = [...waits].sort((a, b) => a - b);
  const median = sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
  return { seconds, taps: waits.length, between, waits: { median, slowest: sorted.at(-1) ?? Number.NaN } };
}

/** A practice job, answered until its first cold check stands on the card; gives the job's id. */
async function provenDead(page: Page, url: string): Promise<string> {
  await page.goto(`${url}#/new`);
  await page.getByRole("checkbox", { name: /No board at hand/ }).check();
  await page.getByLabel(/Practice number/).fill(PRACTICE_NUMBER);
  await page.getByRole("radio", { name: BOARD }).check();
  await page.getByRole("radio", { name: "Surge" }).check();
  await page.getByRole("button", { name: "Start the practice job" }).click();
  await page.locator(READY).waitFor({ timeout: READY_MS });
  for (let step = 0; (await coldCheck(page)) === null; step++) {
    if (step > MOST_STEPS) throw new Error("no cold check came up");
    await answerByPractice(page);
  }
  return new URL(page.url()).hash.replace("#/job/", "");
}

async function answerByPractice(page: Page): Promise<void> {
  const before = await page.locator(".card").getAttribute("data-entry");
  await page.getByRole("button", { name: "Let the practice board answer" }).click();
  await nextCard(page, before);
}

async function nextCard(page: Page, before: string | null): Promise<void> {
  await page.locator(`${READY}:not([data-entry="${before}"])`).waitFor({ timeout: READY_MS });
}

interface Check {
  readonly mode: MeasureMode;
  readonly red: string;
  readonly black: string;
}

const COLD: Readonly<Record<string, MeasureMode>> = {
  "Diode mode": "diode",
  Ohms: "ohms",
  Continuity: "continuity",
  Capacitance: "farads",
};

/** The cold check that stands on the card, as a person reads it there; null where it asks for something else. */
async function coldCheck(page: Page): Promise<Check | null> {
  const mode = COLD[((await page.locator(".mode").first().allTextContents())[0] ?? "").trim()];
  if (mode === undefined) return null;
  const [red = "", black = ""] = await page.locator(".card .probe-place").allTextContents();
  return { mode, red, black };
}

/** Which large key says what the hidden board shows. */
function hiddenBoard(served: Served, id: string): (check: Check) => Promise<string> {
  const session = new AssessmentSession();
  return async (check) => {
    const kept = await served.store.readJob(id);
    const job = parseJob({ ...kept?.header, log: kept?.events }, null);
    if (!job.ok) throw new Error(job.problem);
    const timeline = foldLog(job.value.board, job.value.absent, job.value.log);
    if (!timeline.ok) throw new Error(timeline.problem);
    const practice = practiceJobOf(job.value, session.priors(job.value), Number(PRACTICE_NUMBER));
    const asked = { do: "measure", ...check } as const;
    const shown = answer(practice, timeline.value, asked, (_board, bench) =>
      session.predictor(job.value, bench),
    );
    if (!shown.ok || shown.event.do !== "measure") throw new Error("the hidden board has no such reading");
    return keyFor(check.mode, shown.event.reading);
  };
}

/** The bounds that stand on the keys themselves. */
const BOUNDS = { diode: [0.1, 1], ohms: [10, 20_000], farads: [1e-9, Number.POSITIVE_INFINITY] } as const;

function keyFor(mode: MeasureMode, reading: unknown): string {
  if (reading === "beep") return "1";
  if (reading === "silent") return "2";
  if (typeof reading !== "number") return "3";
  const [zero, open] = BOUNDS[mode as keyof typeof BOUNDS];
  return reading < zero ? "1" : reading < open ? "2" : "3";
}
