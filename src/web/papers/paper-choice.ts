/** In which language and on which sheet this browser prints, and for whom the papers of a job are. */
import { get, set } from "idb-keyval";
import type { Language } from "../../messages/language.ts";
import type { PdfRequest } from "../../wire/paper-api.ts";

export interface PaperChoice {
  readonly language: Language;
  readonly size: PdfRequest["size"];
}

const KEY = "paper-choice";
const USUAL: PaperChoice = { language: "en", size: "a4" };

export async function paperChoice(): Promise<PaperChoice> {
  return { ...USUAL, ...((await get<Partial<PaperChoice>>(KEY)) ?? {}) };
}

export function keepPaperChoice(choice: PaperChoice): Promise<void> {
  return set(KEY, choice);
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
