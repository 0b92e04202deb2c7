/** Drives the page as a technician does: by what stands on it. */
import { mkdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { byKeys, clicked, type Press } from "./press.ts";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
const PICTURES = "test-results";
/** A step of a job waits for the engine; two slow processors shared with other tests are allowed for. */
const ENGINE_MS = 120_000;

export interface Step {
  readonly action: string;
  readonly headline: string;
}

/** Accessibility problems of the page as it stands, one line each. */
async function accessProblems(page: Page): Promise<string[]> {
  await page.evaluate(AXE);
  return page.evaluate(async (runOnly) => {
    // The page's own animations end first: axe would measure a half-faded colour.
    await Promise.all(document.getAnimations().map((animation) => animation.finished));
    interface Violation {
      readonly id: string;
      readonly nodes: readonly { readonly html: string }[];
    }
    const axe = (
      globalThis as unknown as {
        axe: { run(on: Document, how: object): Promise<{ violations: readonly Violation[] }> };
      }
    ).axe;
    const { violations } = await axe.run(document, { runOnly });
    return violations.map(
      ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(" | ")}`,
    );
  }, RULES);
}

/** Targets under 48 px high, and anything that makes the page scroll sideways. */
export async function touchProblems(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const targets = document.querySelectorAll<HTMLElement>(
      "button, a, select, summary, input:not([type=checkbox], [type=radio])",
    );
    const low = [...targets]
      .filter((target) => target.checkVisibility() && target.getBoundingClientRect().height < 47.5)
      .map((target) => `low: ${target.outerHTML.slice(0, 120)}`);
    const over = document.documentElement.scrollWidth - innerWidth;
    return over > 0 ? [...low, `scrolls sideways by ${over} px`] : low;
  });
}

async function picture(page: Page, name: string): Promise<void> {
  mkdirSync(PICTURES, { recursive: true });
  await page.screenshot({ path: join(PICTURES, `${name}.png`) });
}

/** Keeps a picture of the page and holds it to what a thumb and a screen reader need. */
export async function inspect(page: Page, name: string): Promise<void> {
  await picture(page, name);
  expect(await accessProblems(page), `${name}: accessibility`).toEqual([]);
  expect(await touchProblems(page), `${name}: targets`).toEqual([]);
}

export interface Intake {
  readonly board: RegExp;
  readonly cause: string;
  readonly practiceNumber: number;
  /** what came with the board beside what the intake takes for granted */
  readonly came?: RegExp;
}

/** Takes a practice job in; the page is on the bench afterwards. Returns the job's id. */
export async function takeIn(page: Page, intake: Intake, press: Press = clicked): Promise<string> {
  await press(page.getByRole("checkbox", { name: /No board at hand/ }));
  await press(page.getByLabel(/Practice number/));
  await page.keyboard.type(String(intake.practiceNumber));
  await press(page.getByRole("radio", { name: intake.board }));
  await press(page.getByRole("radio", { name: intake.cause }));
  await page.getByRole("group", { name: "What came with it" }).waitFor();
  if (intake.came !== undefined) await press(page.getByRole("checkbox", { name: intake.came }));
  await press(page.getByRole("button", { name: "Start the practice job" }));
  await cardReady(page);
  return new URL(page.url()).hash.replace("#/job/", "");
}

/** Waits until the card counts the last entry. */
export async function cardReady(page: Page): Promise<Step> {
  const card = page.locator('.card-place[aria-busy="false"] .card[data-waiting="false"]');
  await card.waitFor({ timeout: ENGINE_MS });
  return {
    action: (await card.getAttribute("data-do")) ?? "",
    headline: (await page.locator(".card-place > .for-readers").textContent()) ?? "",
  };
}

/** Answers the card by the practice board, or closes where closing is proposed. Returns once the entry is on the log. */
export async function answerCard(page: Page, step: Step, press: Press = clicked): Promise<void> {
  const before = await page.locator(".card").getAttribute("data-entry");
  // by keyboard the keys that the help lists, without going there
  if (press === byKeys) await page.keyboard.press(step.action === "close" ? "d" : "p");
  else if (step.action === "close") await press(page.getByRole("button", { name: /^Close the job/ }));
  else await press(page.getByRole("button", { name: "Let the practice board answer" }));
  await page.locator(`.card:not([data-entry="${before}"])`).waitFor({ timeout: ENGINE_MS });
}
