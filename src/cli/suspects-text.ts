import { faultNameWithinPart, faultNameWords } from "../board/fault-words.ts";
import { explanationsNow, suspectsAnswer } from "../job/answers.ts";
import type { Believed } from "../job/assess.ts";
import { eventWords } from "../job/event-words.ts";
import { andList } from "../planning/faults-in-words.ts";
import { percent, table } from "./answer-text.ts";

const PARTS_SHOWN = 12;
const EXPLANATIONS_SHOWN = 8;

/** Who is suspected and what explains the readings, for a person. */
export function suspectsText(believed: Believed): string {
  const answer = suspectsAnswer(believed);
  const words = (fault: string) => faultNameWords(fault, believed.job.board);
  const parts = answer.suspects.slice(0, PARTS_SHOWN).map(({ part, probability, modes }) => [
    percent(probability).padStart(7),
    part,
    modes
      .filter((mode) => mode.probability >= 0.001)
      .slice(0, 3)
      .map((mode) => `${faultNameWithinPart(mode.fault, believed.job.board)} ${percent(mode.probability)}`)
      .join(", "),
  ]);
  const explanations = explanationsNow(believed.belief)
    .slice(0, EXPLANATIONS_SHOWN)
    .map(({ faults, probability }) => [
      percent(probability).padStart(7),
      faults.length === 0 ? "no fault: nothing read so far needs one" : andList(faults.map(words)),
    ]);
  const left = answer.suspects.length - parts.length;
  const unexplained =
    answer.unexplained.length === 0
      ? ""
      : `\nNo explanation accounts for these readings; take them again where the board has not been worked on since:\n${answer.unexplained
          .map((at) => `  ${eventWords(believed.job.board, believed.job.log[at])}\n`)
          .join("")}`;
  const { board, log } = believed.job;
  const assumptions = answer.assumptions
    .map(({ reading, parts: assumed }) => `  ${eventWords(board, log[reading])}: ${assumed.join(", ")}\n`)
    .join("");
  const rests = assumptions === "" ? "" : `\nReadings that rest on parts nobody has seen:\n${assumptions}`;
  return `Faulty now:\n${table(parts)}${left > 0 ? `         and ${left} less likely parts\n` : ""}
Explanations of the readings (what has been cured since is left out):
${table(explanations)}${percent(answer.remainder).padStart(7)}  all others together

Nothing at all is wrong, what has not been looked for included: ${percent(answer.healthyProbability)}\n${unexplained}${rests}`;
}
