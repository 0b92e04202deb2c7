import type { BenchState } from "../bench/bench-state.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Job } from "../job/job.ts";
import type { Predictor } from "../meter/prediction.ts";
import { heading, list, paperOf, usualFacts } from "./head-facts.ts";
import type { Block, Paper, PaperHead } from "./paper.ts";
import type { PaperWords } from "./paper-words.ts";
import { readingsTable } from "./readings-table.ts";
import { testRuns, whatWasDone } from "./what-was-done.ts";

/** The bench's own sheet: every reading before and after, against what a good board shows. */
export function benchSheet(
  job: Job,
  timeline: Timeline,
  predictorFor: (bench: BenchState) => Predictor,
  head: PaperHead,
  words: PaperWords,
): Paper {
  const { say } = words.speak;
  const readings = readingsTable(timeline, predictorFor, words);
  const looks = timeline.entries.flatMap(({ event }) =>
    event.do === "look"
      ? [say("fact.line", { name: words.part(event.part), value: say(`finding.${event.finding}`) })]
      : [],
  );
  const done = whatWasDone(timeline, words);
  const runs = testRuns(timeline, words);
  const section = (title: string, items: readonly string[]): readonly Block[] =>
    items.length === 0 ? [] : [heading(title), list(items)];
  return paperOf(words.speak, head, {
    title: say("title.sheet"),
    facts: usualFacts(job, head, words.speak),
    blocks: [
      heading(say("sheet.readings")),
      ...(readings.rows.length === 0
        ? [{ block: "text" as const, text: say("sheet.none") }]
        : [
            readings,
            { block: "text" as const, text: say("sheet.firstAndLast") },
            { block: "text" as const, text: say("sheet.off") },
          ]),
      ...section(say("sheet.looks"), looks),
      ...section(say("report.done"), done),
      ...section(say("report.tests"), runs),
    ],
  });
}
