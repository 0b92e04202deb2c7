/** The languages that are shipped in full, and how each writes. */

export type Language = "en" | "es" | "hi" | "ar";
export type Direction = "ltr" | "rtl";

interface Writing {
  readonly language: Language;
  /** the language by its own name */
  readonly name: string;
  readonly direction: Direction;
  /** what `Intl` forms numbers and dates by, the digits named so that they are the same in every program */
  readonly locale: string;
}

export const LANGUAGES: readonly Writing[] = [
  { language: "en", name: "English", direction: "ltr", locale: "en-GB-u-nu-latn" },
  { language: "es", name: "Español", direction: "ltr", locale: "es-u-nu-latn" },
  { language: "hi", name: "हिन्दी", direction: "ltr", locale: "hi-IN-u-nu-latn" },
  { language: "ar", name: "العربية", direction: "rtl", locale: "ar-u-nu-arab" },
];

/** The row of a language. */
export function writingOf(language: Language): Writing {
  const writing = LANGUAGES.find((one) => one.language === language);
  if (writing === undefined) throw new Error(`no row for the language ${language}`);
  return writing;
}

/** The language of a two-letter tag; null where it is not shipped. */
export function languageOf(tag: string): Language | null {
  return LANGUAGES.find(({ language }) => language === tag.toLowerCase())?.language ?? null;
}
