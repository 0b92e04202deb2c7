/** The pictures of a job on a paper: how many, how large, and what is written under each. Whoever lays the paper out has the pictures. */
import type { PaperSpeaker } from "../messages/paper-speaker.ts";
import type { Block, PaperHead } from "./paper.ts";

/** More would make a file that no mailbox takes; which ones were left out is to be seen from the numbers. */
const MOST_PICTURES = 12;

interface How {
  readonly title: string;
  readonly across: 1 | 2;
  /** left out: as many as a paper takes */
  readonly most?: number;
}

/** Nothing where the job has none. */
export function arrivalPictures(
  { pictures: count }: PaperHead,
  { title, across, most = MOST_PICTURES }: How,
  { say }: PaperSpeaker,
): readonly Block[] {
  if (count === 0) return [];
  const captions = Array.from({ length: Math.min(count, most) }, (_, at) =>
    say("picture.caption", { number: at + 1, count }),
  );
  return [{ block: "pictures", text: title, captions, across, unreadable: say("picture.unreadable") }];
}
