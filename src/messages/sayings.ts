/** What screens and engine say in other languages, one language loaded at a time. */
import type { Language } from "./language.ts";
import type { Sayings } from "./said.ts";

const LOADS: Readonly<Record<Exclude<Language, "en">, () => Promise<Sayings>>> = {
  es: async () => (await import("./sayings/es.ts")).ES,
  hi: async () => (await import("./sayings/hi.ts")).HI,
  ar: async () => (await import("./sayings/ar.ts")).AR,
};

/** The sayings of a language; English needs none. */
export async function sayingsOf(language: Language): Promise<Sayings> {
  return language === "en" ? {} : LOADS[language]();
}
