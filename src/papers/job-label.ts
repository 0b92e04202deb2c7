import type { Job } from "../job/job.ts";
import type { PaperSpeaker } from "../messages/paper-speaker.ts";
import { factsOf, paperOf } from "./head-facts.ts";
import type { Block, Paper, PaperHead } from "./paper.ts";

/** The label that goes with the board: what it is, whose it is, and a code that opens the job. */
export function jobLabel(job: Job, head: PaperHead, speak: PaperSpeaker): Paper {
  const { say } = speak;
  const code: readonly Block[] =
    head.opens === null ? [] : [{ block: "code", content: head.opens, text: say("label.scan") }];
  return paperOf(speak, head, {
    title: head.number ?? head.jobTitle ?? say("title.label"),
    facts: factsOf(speak, [
      ["fact.from", head.from],
      ["fact.to", head.to],
      ["fact.job", head.number === null ? null : head.jobTitle],
      ["fact.board", job.board.name],
      ["fact.symptom", say(`symptom.${job.symptom}`)],
      ["fact.cause", say(`cause.${job.cause}`)],
      ["fact.date", speak.day(head.day)],
    ]),
    blocks: [...code, { block: "caution", items: [say("label.charged")] }],
  });
}
