/**
 * One catalogue for all text. English messages are the keys' meaning; a translation carries beside each text the English that it
 * translates, as a literal type. So a message that is missing, or whose English has changed since, does not compile.
 */
import type { Language } from "./language.ts";

/** A message that depends on a count, by the plural categories of its language (CLDR plural rules). */
export interface EnglishForms {
  readonly one: string;
  readonly other: string;
}

/** English by key. `{name}` is filled in when it is said; forms are chosen by `{count}`. */
export type EnglishMessages = Readonly<Record<string, string | EnglishForms>>;

/** The plural categories that a language has, from the CLDR plural rules for cardinal numbers. */
interface Categories {
  readonly es: "one" | "many" | "other";
  readonly hi: "one" | "other";
  readonly ar: "zero" | "one" | "two" | "few" | "many" | "other";
}
export type Foreign = keyof Categories;

/** A file of translations: every key, `[the English it translates, the text]`. */
export type Translated<English, L extends Foreign> = {
  readonly [K in keyof English]: English[K] extends EnglishForms
    ? readonly [English[K]["other"], Readonly<Record<Categories[L], string>>]
    : readonly [English[K], string];
};

/** What one language says, as plain data: it may be sent between page and worker. */
export interface Catalogue<Key extends string = string> {
  readonly language: Language;
  readonly texts: Readonly<Record<Key, string | Readonly<Record<string, string>>>>;
}

export function englishCatalogue<E extends EnglishMessages>(english: E): Catalogue<keyof E & string> {
  return { language: "en", texts: english as Catalogue<keyof E & string>["texts"] };
}

type Pairs = Readonly<Record<string, readonly [string, string | Readonly<Record<string, string>>]>>;

export function foreignCatalogue<T extends Pairs>(
  language: Foreign,
  translated: T,
): Catalogue<keyof T & string> {
  const texts = Object.fromEntries(Object.entries(translated).map(([key, [, text]]) => [key, text]));
  return { language, texts: texts as Catalogue<keyof T & string>["texts"] };
}
