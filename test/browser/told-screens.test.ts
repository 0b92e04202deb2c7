/** The screens around the bench in every language: nothing of them left in English, nothing out of its place from right to left. */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Sayings } from "../../src/messages/said.ts";
import { AR } from "../../src/messages/sayings/ar.ts";
import { ES } from "../../src/messages/sayings/es.ts";
import { HI } from "../../src/messages/sayings/hi.ts";
import { inspect } from "./bench-page.ts";
import { servePage } from "./served-page.ts";

let served: Awaited<ReturnType<typeof servePage>>;

beforeAll(async () => {
  served = await servePage();
}, 120_000);

afterAll(async () => {
  await served?.close();
});

/** Each screen with what stands on it once it is there. */
const SCREENS = [
  ["jobs", "", ".newcomer"],
  ["intake", "new", ".choice"],
  ["describe", "new/board", ".question .choice"],
  ["drawer", "drawer", ".drawer-keys"],
  ["boards", "boards", ".bring-board"],
  ["shop", "shop", ".terms input"],
  ["learnt", "learnt", "main .aside"],
] as const;

/** What a person sees or is read: texts, labels, examples in empty fields. */
function textsOf(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const texts: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) texts.push(walker.currentNode.textContent ?? "");
    for (const element of document.querySelectorAll("[aria-label], [placeholder], [title]"))
      for (const name of ["aria-label", "placeholder", "title"]) texts.push(element.getAttribute(name) ?? "");
    return texts.map((text) => text.trim()).filter((text) => text !== "");
  });
}

/** Texts that are still a sentence of ours as it is in English, where the language says it otherwise. */
const leftInEnglish = (texts: readonly string[], sayings: Sayings) =>
  texts.filter((text) => sayings[text] !== undefined && sayings[text] !== text);

describe.each([
  ["es", ES, "ltr"],
  ["hi", HI, "ltr"],
  ["ar", AR, "rtl"],
] as const)("the screens in %s", (language, sayings, direction) => {
  it("say nothing of theirs in English, at a phone's width and as a screen reader has them", async () => {
    const page = await served.phone();
    await page.addInitScript((chosen) => localStorage.setItem("language", chosen), language);
    await page.goto(served.url);
    for (const [screen, path, shown] of SCREENS) {
      await page.evaluate((hash) => {
        location.hash = hash;
      }, `#/${path}`);
      await page.locator(shown).first().waitFor();
      const name = `${language}-${screen}`;
      expect(await page.evaluate(() => document.documentElement.dir), name).toBe(direction);
      const texts = await textsOf(page);
      expect(texts.length, name).toBeGreaterThan(5);
      expect(leftInEnglish(texts, sayings), name).toEqual([]);
      // nor any of the marks that a text is told by
      expect(
        texts.filter((text) => /[\u2061-\u2064]/.test(text)),
        name,
      ).toEqual([]);
      await inspect(page, `language-${name}`);
    }
    await page.context().close();
  }, 300_000);
});
