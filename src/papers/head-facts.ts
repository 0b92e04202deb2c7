import type { Job } from "../job/job.ts";
import type { PaperMessages } from "../messages/paper-catalogue.ts";
import type { PaperSpeaker } from "../messages/paper-speaker.ts";
import type { Block, Paper, PaperHead } from "./paper.ts";

type FactKey = Exclude<Extract<keyof PaperMessages, `fact.${string}`>, "fact.line">;

/** Facts at the head of a paper; what nobody gave is left out. */
export function factsOf(
  speak: PaperSpeaker,
  given: readonly (readonly [FactKey, string | null])[],
): Paper["facts"] {
  return given.flatMap(([key, value]) => {
    if (value === null || value === "") return [];
    const name = speak.say(key);
    return [{ name, value, line: speak.say("fact.line", { name, value }) }];
  });
}

/** From, to, number, board and day: what every paper begins with. */
export function usualFacts(job: Job, head: PaperHead, speak: PaperSpeaker): Paper["facts"] {
  return factsOf(speak, [
    ["fact.from", head.from],
    ["fact.to", head.to],
    ["fact.number", head.number],
    ["fact.job", head.jobTitle === job.board.name ? null : head.jobTitle],
    ["fact.board", job.board.name],
    ["fact.date", speak.day(head.day)],
  ]);
}

/** A paper of the language; of a practice board it says so before anything else. */
export function paperOf(
  speak: PaperSpeaker,
  head: PaperHead,
  rest: Pick<Paper, "title" | "facts" | "blocks">,
): Paper {
  const practice: readonly Block[] = head.practice ? [{ block: "text", text: speak.say("practice") }] : [];
  const { language, direction } = speak;
  return { language, direction, title: rest.title, facts: rest.facts, blocks: [...practice, ...rest.blocks] };
}

export function heading(text: string): Block {
  return { block: "heading", text };
}

export function list(items: readonly string[], numbered = false): Block {
  return { block: "list", items, numbered };
}
