/** A paper of a job: from its kind to its content. A function of board, log, terms and what the shop sets. */
import { foldLog } from "../bench/fold.ts";
import { type AssessmentSession, assess, beliefOf } from "../job/assess.ts";
import { foundFaults } from "../job/found-faults.ts";
import type { Job } from "../job/job.ts";
import { moneyView } from "../job/money-view.ts";
import type { PaperCatalogue } from "../messages/paper-catalogue.ts";
import { paperSpeaker } from "../messages/paper-speaker.ts";
import type { Parsed } from "../units/outcome.ts";
import { benchSheet } from "./bench-sheet.ts";
import { fittersSlip } from "./fitters-slip.ts";
import { jobLabel } from "./job-label.ts";
import { billPaper, quotePaper } from "./money-papers.ts";
import type { Paper, PaperHead, PaperKind } from "./paper.ts";
import { PaperWords } from "./paper-words.ts";
import { repairReport } from "./repair-report.ts";
import { shortMessage } from "./short-message.ts";
import { whatWasDone } from "./what-was-done.ts";

/** Refused, with one line, where the log is impossible. A report or a quote works the diagnosis out, which takes its time. */
export function makePaper(
  kind: PaperKind,
  job: Job,
  head: PaperHead,
  catalogue: PaperCatalogue,
  session: AssessmentSession,
): Parsed<Paper> {
  const timeline = foldLog(job.board, job.absent, job.log);
  if (!timeline.ok) return timeline;
  const speak = paperSpeaker(catalogue);
  const words = new PaperWords(job.board, speak);
  const predictorFor = (bench: Parameters<typeof session.predictor>[1]) => session.predictor(job, bench);
  switch (kind) {
    case "label":
      return { ok: true, value: jobLabel(job, head, speak) };
    case "sheet":
      return { ok: true, value: benchSheet(job, timeline.value, predictorFor, head, words) };
    case "slip":
      return { ok: true, value: fittersSlip(job, timeline.value, head, words) };
    case "bill":
      return { ok: true, value: billPaper(job, timeline.value, head, speak) };
    case "report": {
      const believed = beliefOf(job, session);
      if (!believed.ok) return believed;
      const found = foundFaults(job, session);
      if (!found.ok) return found;
      const { belief } = believed.value;
      const input = { job, timeline: timeline.value, belief, found: found.value, predictorFor };
      return { ok: true, value: repairReport(input, head, words) };
    }
    case "quote":
    case "message": {
      const assessed = assess(job, session);
      if (!assessed.ok) return assessed;
      const view = moneyView(assessed.value);
      if (kind === "quote") return { ok: true, value: quotePaper(job, view, head, speak) };
      const found = foundFaults(job, session);
      if (!found.ok) return found;
      const done = whatWasDone(timeline.value, words);
      return { ok: true, value: shortMessage({ job, found: found.value, done, view }, head, words) };
    }
  }
}
