/** Says what stands on the page in the reader's language: the page's own sentences, and texts that the engine or the server said. */
import { createElement, Fragment, type ReactNode } from "react";
import { knownWords } from "../messages/known-words.ts";
import { type Language, languageOf, writingOf } from "../messages/language.ts";
import { pluralForm } from "../messages/plural-form.ts";
import { said } from "../messages/said.ts";
import { sayingsOf } from "../messages/sayings.ts";
import { type Speaker, speaker } from "../messages/speaker.ts";
import { finder, type Teller, tell } from "../messages/tell.ts";

interface Spoken {
  readonly language: Language;
  /** numbers, money, days and lists in the reader's form */
  readonly forms: Speaker<Record<never, string>>;
  readonly teller: Teller;
}

const KEPT_AS = "language";
const FIGURE = /^-?\d+(\.\d+)?$/;

function spokenIn(language: Language, find: Teller["find"]): Spoken {
  const forms = speaker<Record<never, string>>({ language, texts: {} });
  const plural = new Intl.PluralRules(writingOf(language).locale);
  return {
    language,
    forms,
    teller: {
      find,
      category: (count) => pluralForm(plural, count),
      // a figure keeps its digits: 140.00 of money is not 140
      value: (text) => (FIGURE.test(text) ? forms.digits(text) : forms.shown(text)),
    },
  };
}

let now: Spoken = spokenIn("en", () => undefined);

/** The language that the page speaks. */
export function language(): Language {
  return now.language;
}

/** Numbers, money, days and lists in the reader's form. */
export function forms(): Spoken["forms"] {
  return now.forms;
}

/**
 * In the reader's language: a sentence of the page, `say`Next``, or a text that was said elsewhere or stands in a board
 * file, `say(card.why)`. While a module is read no language is chosen yet: a constant is `said` there and told here, where it is shown.
 */
export function say(text: TemplateStringsArray | string, ...given: readonly (string | number)[]): string {
  const known = given.map((value) => (typeof value === "string" ? knownWords(value) : value));
  return tell(typeof text === "string" ? knownWords(text) : said(text, ...known), now.teller);
}

/** A name made of a sentence, for keeping: without the marks that hold a name apart in a line of the other direction. */
export function named(text: string): string {
  return text.replace(/[\u2068\u2069]/g, "");
}

/** A count, a reading or an amount that stands by itself. */
export function figure(value: string | number): string {
  return now.teller.value(String(value));
}

/** A sentence with parts of the page in it: `sayWith`Before it went in ${<b>{ref}</b>} read ${figure} here.``. */
export function sayWith(sentence: TemplateStringsArray, ...given: readonly ReactNode[]): ReactNode {
  const english = sentence.map((piece, at) => (at === 0 ? piece : `{${at - 1}}${piece}`)).join("");
  const saying = now.teller.find(english);
  const pieces = (typeof saying === "string" ? saying : english).split(/\{(\d)\}/);
  return pieces.map((piece, at) =>
    createElement(Fragment, { key: at }, at % 2 === 0 ? piece : given[Number(piece)]),
  );
}

function wanted(): Language {
  let kept: string | null = null;
  try {
    kept = localStorage.getItem(KEPT_AS);
  } catch {
    // a browser that keeps nothing goes by its own languages
  }
  const asked = [kept ?? "", ...navigator.languages].map((tag) => languageOf(tag.slice(0, 2)));
  return asked.find((one) => one !== null) ?? "en";
}

/** Fetches the language that was chosen here, or else the browser's, before anything is shown. */
export async function learnLanguage(): Promise<void> {
  await speakIn(wanted()).catch(() => undefined);
}

/** Speaks another language from now on, and keeps the choice in this browser. */
export async function chooseLanguage(language: Language): Promise<void> {
  await speakIn(language);
  try {
    localStorage.setItem(KEPT_AS, language);
  } catch {
    // see above: it then holds until the page is left
  }
}

async function speakIn(language: Language): Promise<void> {
  now = spokenIn(language, finder(await sayingsOf(language)));
  const { documentElement } = document;
  documentElement.lang = language;
  documentElement.dir = now.forms.direction;
  for (const listener of listeners) listener();
}

const listeners = new Set<() => void>();

export function onLanguage(changed: () => void): () => void {
  listeners.add(changed);
  return () => listeners.delete(changed);
}
