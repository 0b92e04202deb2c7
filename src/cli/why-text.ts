import type { Assessment } from "../job/assess.ts";
import { becauseView } from "../job/bench-view.ts";
import type { Parsed } from "../units/outcome.ts";
import type { BenchView } from "../wire/bench-view.ts";
import { percent } from "./answer-text.ts";
import { oneLine } from "./io.ts";

/** Without a part, why this step; with one, what speaks for and against it. */
export function whyText(assessment: Assessment, view: BenchView, part: string): Parsed<string> {
  if (part === "") return { ok: true, value: `${view.card?.why ?? "Nothing is proposed."}\n` };
  const suspect = view.suspects.find((one) => one.part === part);
  const found = becauseView(assessment, part);
  if (suspect === undefined || !found.ok) return { ok: false, problem: `why: there is no part "${part}"` };
  const because = found.value;
  const lines = [
    part.includes("~")
      ? `${suspect.what}: there with ${percent(suspect.probability)}`
      : `${part}, ${suspect.what}: faulty with ${percent(suspect.probability)}`,
    ...suspect.modes.map((mode) => `  ${mode.words} ${percent(mode.probability)}`),
    ...because.speaksFor.map((reason) => `  for: ${oneLine(reason)}`),
    ...because.speaksAgainst.map((reason) => `  against: ${oneLine(reason)}`),
    ...(because.maskedBy.length === 0 ? [] : [`  hidden by ${because.maskedBy.join(", ")}`]),
    ...(because.untested ? ["  no reading so far could have shown it"] : []),
  ];
  return { ok: true, value: `${lines.join("\n")}\n` };
}
