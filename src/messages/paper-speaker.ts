/** Says what stands on papers. Apart from the catalogues, so that who is handed one fetches no other. */
import type { PaperCatalogue, PaperMessages } from "./paper-catalogue.ts";
import { type Speaker, speaker } from "./speaker.ts";

export type PaperSpeaker = Speaker<PaperMessages>;

export function paperSpeaker(catalogue: PaperCatalogue): PaperSpeaker {
  return speaker<PaperMessages>(catalogue);
}
