/** What was read from a motor to its frame, in words: the log keeps it as it was answered (`over 50`, `12`, `not read`), in megohms. */
import { said } from "../messages/said.ts";
import { MOTOR_INSULATION } from "../priors/told.ts";

export const ASKS_INSULATION = said`Motor insulation to earth, megohms`;

/** The answers that are one tap, each as it is kept and as it is said. */
export function insulationAnswers(): readonly { readonly answer: string; readonly words: string }[] {
  return [...MOTOR_INSULATION.answers, MOTOR_INSULATION.notRead].map((answer) => ({
    answer,
    words: insulationAnswerWords(answer),
  }));
}

/** The question with its answer. */
export function insulationRead(answer: string): string {
  return said`Motor insulation to earth: ${insulationAnswerWords(answer)}`;
}

/** `over 50` -> `over 50 Mohm`; a bare figure in megohms too; what somebody wrote otherwise as it is. */
export function insulationAnswerWords(answer: string): string {
  if (answer === MOTOR_INSULATION.notRead) return said`not read`;
  if (!/\d$/.test(answer)) return answer;
  const [, below, least = "", , most] = /^(over |under )?(\S+)( to (\S+))?$/.exec(answer) ?? [];
  if (below === "over ") return said`over ${`${least} Mohm`}`;
  if (below === "under ") return said`under ${`${least} Mohm`}`;
  return most === undefined ? `${answer} Mohm` : said`${least} to ${`${most} Mohm`}`;
}
