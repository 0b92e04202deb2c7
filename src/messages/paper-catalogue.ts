/** All that papers say, one language loaded at a time. */
import { ADVICE } from "./advice/en.ts";
import { type Catalogue, englishCatalogue, type Foreign, foreignCatalogue } from "./catalogue.ts";
import type { Language } from "./language.ts";
import { PAPERS } from "./papers/en.ts";
import { WORDS } from "./words/en.ts";

const ENGLISH = { ...WORDS, ...PAPERS, ...ADVICE };
export type PaperMessages = typeof ENGLISH;
export type PaperCatalogue = Catalogue<keyof PaperMessages>;

const FOREIGN: Readonly<Record<Foreign, () => Promise<PaperCatalogue>>> = {
  es: async () => {
    const [words, papers, advice] = await Promise.all([
      import("./words/es.ts"),
      import("./papers/es.ts"),
      import("./advice/es.ts"),
    ]);
    return foreignCatalogue("es", { ...words.WORDS_ES, ...papers.PAPERS_ES, ...advice.ADVICE_ES });
  },
  hi: async () => {
    const [words, papers, advice] = await Promise.all([
      import("./words/hi.ts"),
      import("./papers/hi.ts"),
      import("./advice/hi.ts"),
    ]);
    return foreignCatalogue("hi", { ...words.WORDS_HI, ...papers.PAPERS_HI, ...advice.ADVICE_HI });
  },
  ar: async () => {
    const [words, papers, advice] = await Promise.all([
      import("./words/ar.ts"),
      import("./papers/ar.ts"),
      import("./advice/ar.ts"),
    ]);
    return foreignCatalogue("ar", { ...words.WORDS_AR, ...papers.PAPERS_AR, ...advice.ADVICE_AR });
  },
};

/** The catalogue of a language; English is there already, the others are fetched when they are asked for. */
export async function paperCatalogue(language: Language): Promise<PaperCatalogue> {
  return language === "en" ? englishCatalogue(ENGLISH) : FOREIGN[language]();
}
