import { faultNameWords } from "../board/fault-words.ts";
import type { SuspectsAnswer } from "../job/answers.ts";
import { percent, table } from "./answer-text.ts";

const PARTS_SHOWN = 12;
const EXPLANATIONS_SHOWN = 8;

/** Who is suspected and what explains the readings, for a person. */
export function suspectsText(answer: SuspectsAnswer): string {
  const parts = answer.suspects.slice(0, PARTS_SHOWN).map(({ part, probability, modes }) => [
    percent(probability).padStart(7),
    part,
    modes
      .filter((mode) => mode.probability >= 0.001)
      .slice(0, 3)
      .map((mode) => `${faultNameWords(mode.fault)} ${percent(mode.probability)}`)
      .join(", "),
  ]);
  const explanations = answer.explanations
    .slice(0, EXPLANATIONS_SHOWN)
    .map(({ faults, probability }) => [
      percent(probability).padStart(7),
      faults.length === 0 ? "no fault that the readings call for" : andList(faults.map(faultNameWords)),
    ]);
  const left = answer.suspects.length - parts.length;
  const unexplained =
    answer.unexplained.length === 0
      ? ""
      : `\nReadings that nothing explains (log lines from 0): ${answer.unexplained.join(", ")}. Repeat them.\n`;
  return `Faulty now:\n${table(parts)}${left > 0 ? `         and ${left} less likely parts\n` : ""}
Explanations of the readings (with what has been cured since):
${table(explanations)}${percent(answer.remainder).padStart(7)}  all others together

Nothing is faulty now: ${percent(answer.healthyProbability)}\n${unexplained}`;
}

/** `a`, `a and b`, `a, b and c`. */
function andList(words: readonly string[]): string {
  return words.length <= 1 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}
