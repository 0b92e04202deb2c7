/** The report to the customer, in plain words. */
import type { BenchState } from "../bench/bench-state.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Belief } from "../diagnosis/belief.ts";
import { closedAs } from "../job/closed-as.ts";
import type { FoundFault } from "../job/found-faults.ts";
import type { Job } from "../job/job.ts";
import type { Predictor } from "../meter/prediction.ts";
import { ADVICE_BY_CAUSE } from "./advice-by-cause.ts";
import { arrivalPictures } from "./arrival-pictures.ts";
import { certainty } from "./certainty.ts";
import { factsOf, heading, list, paperOf, usualFacts } from "./head-facts.ts";
import type { Block, Paper, PaperHead } from "./paper.ts";
import type { PaperWords } from "./paper-words.ts";
import { readingsTable } from "./readings-table.ts";
import { ranOnMains, testRuns, whatWasDone } from "./what-was-done.ts";

/** A part that is faulty at this chance or more is named as not ruled out, and at most so many. From memory. */
const NAMED_FROM = 0.1;
const MOST_NAMED = 6;

export interface ReportInput {
  readonly job: Job;
  readonly timeline: Timeline;
  readonly belief: Belief;
  readonly found: readonly FoundFault[];
  predictorFor(bench: BenchState): Predictor;
}

export function repairReport(input: ReportInput, head: PaperHead, words: PaperWords): Paper {
  const { job, timeline } = input;
  const { speak } = words;
  const { say } = speak;
  const done = whatWasDone(timeline, words);
  const runs = testRuns(timeline, words);
  const readings = readingsTable(timeline, (bench) => input.predictorFor(bench), words, true);
  const told = factsOf(speak, [
    ["fact.symptom", say(`symptom.${job.symptom}`)],
    ["fact.cause", say(`cause.${job.cause}`)],
  ]);
  return paperOf(speak, head, {
    title: say("title.report"),
    facts: [...usualFacts(job, head, speak), ...told],
    blocks: [
      heading(say("report.result")),
      text(say(`verdict.${closedAs(job.log) ?? "open"}`)),
      heading(say("report.found")),
      found(input, words),
      heading(say("report.done")),
      done.length === 0 ? text(say("report.nothingDone")) : list(done),
      heading(say("report.open")),
      notProven(input, words),
      ...(runs.length === 0 ? [] : [heading(say("report.tests")), list(runs)]),
      ...(readings.rows.length === 0
        ? []
        : [
            heading(say("sheet.readings")),
            readings,
            text(say("sheet.firstAndLast")),
            text(say("sheet.off")),
          ]),
      ...arrivalPictures(head, { title: say("pictures"), across: 2 }, speak),
      heading(say("report.cautions")),
      {
        block: "caution",
        items: [say("caution.charged"), say("caution.live"), say("caution.licensed"), say("caution.smell")],
      },
      heading(say("report.advice")),
      list(ADVICE_BY_CAUSE[job.cause].map((key) => say(key))),
      ...(head.warranty === null ? [] : [heading(say("report.warranty")), text(head.warranty)]),
    ],
  });
}

function text(words: string): Block {
  return { block: "text", text: words };
}

function found({ found: faults }: ReportInput, words: PaperWords): Block {
  const { say, percent } = words.speak;
  if (faults.length === 0) return text(say("report.nothingFound"));
  return list(
    faults.map(({ fault, chance }) =>
      say("report.sure", { fault: words.fault(fault), percent: percent(certainty(chance)) }),
    ),
  );
}

function notProven({ job, timeline, belief }: ReportInput, words: PaperWords): Block {
  const { say, percent } = words.speak;
  const verdict = closedAs(job.log);
  const suspects = belief.suspects
    .filter(({ probability }) => probability >= NAMED_FROM)
    .slice(0, MOST_NAMED)
    .flatMap(({ probability, modes: [mode] }) =>
      mode === undefined
        ? []
        : [say("open.suspect", { fault: words.fault(mode.fault), percent: percent(certainty(probability)) })],
    );
  const absent = job.absent.map((ref) => say("open.absent", { part: words.part(ref) }));
  const ran = ranOnMains(timeline);
  const unrun =
    verdict !== "repaired" && verdict !== "no-fault"
      ? []
      : !ran.mains
        ? [say("open.notPowered")]
        : ran.loaded
          ? []
          : [say("open.noLoad")];
  const odd = belief.unexplained.length;
  const items = [
    ...suspects,
    ...absent,
    ...unrun,
    ...(odd === 0 ? [] : [say("open.unexplained", { count: odd })]),
  ];
  return items.length === 0 ? text(say("open.nothing")) : list(items);
}
