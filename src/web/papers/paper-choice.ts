/** In which language and on which sheet this browser prints, and for whom the papers of a job are. */
import { get, set, update } from "idb-keyval";

import type { Language } from "../../messages/language.ts";
import type { PdfRequest } from "../../wire/paper-api.ts";
import { language } from "../say.ts";

export interface PaperChoice {
  readonly language: Language;
  readonly size: PdfRequest["size"];
}

const KEY = "paper-choice";

/** As it was chosen; a language that nobody chose is the page's. */
export async function paperChoice(): Promise<PaperChoice> {
  const usual: PaperChoice = { language: language(), size: "a4" };
  return { ...usual, ...((await get<Partial<PaperChoice>>(KEY)) ?? {}) };
}

export function keepPaperChoice(change: Partial<PaperChoice>): Promise<void> {
  return update<Partial<PaperChoice>>(KEY, (kept) => ({ ...kept, ...change }));
}

/** For whom the papers of one job are, and under which number. */
export interface PaperNames {
  readonly to: string;
  readonly number: string;
}

const namesKey = (job: string) => `paper-names-${job}`;

export async function paperNames(job: string): Promise<PaperNames> {
  return (await get<PaperNames>(namesKey(job))) ?? { to: "", number: "" };
}

export function keepPaperNames(job: string, names: PaperNames): Promise<void> {
  return set(namesKey(job), names);
}
