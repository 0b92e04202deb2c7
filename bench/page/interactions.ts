/** From a tap to the next paint, by the EventTiming events of Chromium's trace, over a job begun and worked on. */
import type { Locator, Page } from "playwright-core";
import type { servePage } from "../../test/browser/served-page.ts";

/** The processor is slowed this many times. */
export const SLOWED = 4;
/** Answers of a job that are timed. */
const ANSWERS = 14;
const SLOWEST_TOLD = 6;

interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly ts: number;
  readonly id?: string;
  readonly id2?: { readonly local?: string };
  readonly args?: { readonly data?: { readonly interactionId?: number; readonly message?: string } };
}

export interface Interactions {
  readonly count: number;
  readonly median: number;
  readonly ninetyEighth: number;
  readonly slowest: readonly { readonly label: string; readonly ms: number }[];
}

type Served = Awaited<ReturnType<typeof servePage>>;

export async function interactions(served: Served): Promise<Interactions> {
  const page = await served.phone();
  const browser = page.context().browser();
  if (browser === null) throw new Error("the page has no browser");
  await (await page.context().newCDPSession(page)).send("Emulation.setCPUThrottlingRate", { rate: SLOWED });
  await browser.startTracing(page, { categories: ["devtools.timeline", "blink.user_timing"] });
  await workThePage(page, served.url);
  const trace = JSON.parse((await browser.stopTracing()).toString()) as { traceEvents: TraceEvent[] };
  await page.context().close();
  return figures(trace.traceEvents);
}

/** A mark in the trace, so that an interaction can be named after what was pressed. */
async function press(page: Page, label: string, target: Locator): Promise<void> {
  await target.waitFor({ timeout: 120_000 });
  await page.evaluate((text) => console.timeStamp(text), label);
  await target.click({ timeout: 120_000 });
}

async function workThePage(page: Page, url: string): Promise<void> {
  await page.goto(url);
  await press(page, "New job", page.getByRole("button", { name: "New job" }));
  await press(page, "practice", page.getByRole("checkbox", { name: /No board at hand/ }));
  await press(page, "choose the board", page.getByRole("radio", { name: /Greenhouse/ }));
  await press(page, "choose the cause", page.getByRole("radio", { name: "Surge" }));
  await press(page, "start the job", page.getByRole("button", { name: "Start the practice job" }));
  const answer = page.getByRole("button", { name: "Let the practice board answer" });
  const ready = page.locator('.card-place[aria-busy="false"] .card[data-waiting="false"]');
  for (let count = 0; count < ANSWERS; count++) {
    await ready.waitFor({ timeout: 120_000 });
    await press(page, "answer a check", answer);
  }
  await press(page, "undo", page.locator(".undo-strip button"));
  await ready.waitFor({ timeout: 120_000 });
  await press(page, "something else", page.getByRole("button", { name: "Something else" }));
  for (const tab of ["Suspects", "Grid", "Log", "Enter", "Close", "Check"])
    await press(page, `tab ${tab}`, page.getByRole("tab", { name: tab }));
  await press(page, "answer a check", answer);
  await ready.waitFor({ timeout: 120_000 });
  await press(page, "all jobs", page.getByRole("button", { name: "Jobs", exact: true }));
  await page.getByRole("heading", { name: "Jobs" }).waitFor();
  await page.waitForTimeout(500);
}

function figures(events: readonly TraceEvent[]): Interactions {
  const marks = events.flatMap(({ name, ts, args }) =>
    name === "TimeStamp" ? [{ ts, label: args?.data?.message ?? "" }] : [],
  );
  const begun = new Map<string, TraceEvent>();
  const longest = new Map<number, { readonly label: string; readonly ms: number }>();
  for (const event of events.filter(({ name }) => name === "EventTiming").sort((a, b) => a.ts - b.ts)) {
    const id = event.id ?? event.id2?.local ?? "";
    if (event.ph === "b") begun.set(id, event);
    const start = begun.get(id);
    if (event.ph !== "e" || start === undefined) continue;
    const interaction = start.args?.data?.interactionId ?? event.args?.data?.interactionId ?? 0;
    if (interaction === 0) continue;
    const ms = (event.ts - start.ts) / 1000;
    const label = marks.findLast((mark) => mark.ts <= start.ts)?.label ?? "";
    if (ms > (longest.get(interaction)?.ms ?? -1)) longest.set(interaction, { label, ms });
  }
  const all = [...longest.values()].sort((a, b) => b.ms - a.ms);
  const at = (share: number) => all[Math.floor((1 - share) * (all.length - 1))]?.ms ?? Number.NaN;
  return { count: all.length, median: at(0.5), ninetyEighth: at(0.98), slowest: all.slice(0, SLOWEST_TOLD) };
}
