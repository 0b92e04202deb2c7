/** In which language and on which sheet this shop prints, and what it says of its warranty: what was chosen is kept in this browser. */
import { get, set, update } from "idb-keyval";
import type { Language } from "../../messages/language.ts";
import type { PdfRequest } from "../../wire/paper-api.ts";
import { language } from "../say.ts";

export interface PaperChoice {
  readonly language: Language;
  readonly size: PdfRequest["size"];
  /** the shop's terms of warranty, in its own words */
  readonly warranty: string;
}

const KEY = "paper-choice";

/** As it was chosen; a language that nobody chose is the page's. */
export async function paperChoice(): Promise<PaperChoice> {
  const usual: PaperChoice = { language: language(), size: "a4", warranty: "" };
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
