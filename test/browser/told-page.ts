/** Finds what a page in another language has left untold: marks of the seams, English sentences, Latin words in another script. */
import type { Page } from "playwright-core";
import { LANGUAGES, type Language } from "../../src/messages/language.ts";
import { plain, type Sayings } from "../../src/messages/said.ts";
import { sayingsOf } from "../../src/messages/sayings.ts";
import { SHIPPED } from "../../src/shipped/shipped.ts";

/** Of these no language has words of its own: names of boards, the program's and the browsers' own names. */
const NAMES = [...SHIPPED.map(({ title }) => title), "sigrok", "conn=/dev/ttyUSB0"];
/** Two lower-case Latin words that follow each other; references, pins and units have a capital, a digit or a letter alone. */
const LATIN_RUN = /(?<![\w.])[a-z]{2,}(?:[\s,;:'’()-]+[a-z]{2,})+(?![\w])/;
/** See `src/messages/said.ts`. */
const MARKS = /[\u2061-\u2064]/;

/** Every text of the page, folded or not, and what its elements say of themselves to a reader of the screen; names of keys aside. */
function textsOf(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const spoken = ["aria-label", "title", "placeholder", "alt"];
    const texts: string[] = [];
    for (const element of document.body.querySelectorAll("*")) {
      if (element.matches("script, style, kbd")) continue;
      for (const name of spoken) texts.push(element.getAttribute(name) ?? "");
      for (const node of element.childNodes)
        if (node.nodeType === Node.TEXT_NODE) texts.push(node.textContent ?? "");
    }
    return texts.map((text) => text.trim()).filter((text) => text !== "");
  });
}

/** English sentences as they stand, whose saying in this language is another. */
function englishOf(sayings: Sayings): ReadonlySet<string> {
  // "Red" is a probe in English and the mains in Spanish
  const own = new Set(Object.values(sayings));
  return new Set(
    Object.entries(sayings).flatMap(([english, saying]) =>
      /\{\d\}/.test(english) || saying === english || own.has(english) ? [] : [english],
    ),
  );
}

/** Texts whose seams were left in them: they were said, and never told. */
export async function seamsOn(page: Page): Promise<string[]> {
  return (await textsOf(page)).filter((text) => MARKS.test(text)).map((text) => `seams: ${plain(text)}`);
}

/**
 * What of the page is not in its language, one line each; empty: nothing. In a script of its own two Latin words on end are such a text
 * as well.
 * @param names - words of this page that stay as they are, such as the title that a person gave
 */
export async function untoldOn(
  page: Page,
  language: Exclude<Language, "en">,
  names: readonly string[] = [],
): Promise<string[]> {
  const english = englishOf(await sayingsOf(language));
  const ownScript = language === "hi" || language === "ar";
  const untold = (await textsOf(page)).flatMap((text) => {
    if (english.has(text)) return [`English: ${text}`];
    const rest = [...NAMES, ...names].reduce((left, name) => left.replaceAll(name, ""), text);
    return ownScript && LATIN_RUN.test(rest) ? [`Latin: ${text}`] : [];
  });
  return [...new Set(untold)];
}

/** What the page says of its language and its direction, where that is not this language's. */
export async function wrongWritingOn(page: Page, language: Language): Promise<string[]> {
  const { lang, dir } = await page.evaluate(() => {
    const { lang, dir } = document.documentElement;
    return { lang, dir };
  });
  const wanted = LANGUAGES.find((one) => one.language === language)?.direction ?? "";
  return [...(lang === language ? [] : [`lang is ${lang}`]), ...(dir === wanted ? [] : [`dir is ${dir}`])];
}
