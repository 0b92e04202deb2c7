/** From the answers given to a whole set, and to what stays open of each question. */
import { said } from "../messages/said.ts";
import { quoted, suggestion } from "../units/nearest.ts";
import type { Parsed } from "../units/outcome.ts";
import { type Choice, QUESTIONS, type Question, type QuestionId, type Settled } from "./questions.ts";

/** Answers by the question's name; a question left out, or answered with this word, is open. */
export type Answers = Readonly<Record<string, string>>;
export const UNSURE = "unsure";

export interface SettledAnswers {
  readonly values: Settled;
  /** questions nobody has answered: their default counts, and their parts are taken as not seen */
  readonly open: ReadonlySet<QuestionId>;
}

/** The choices that the answers before leave, in the table's order. */
export function choicesOf(question: Question, before: Settled): readonly Choice[] {
  if (question.kind === "number") return [];
  const { fits } = question;
  return fits === undefined ? question.choices : question.choices.filter(({ value }) => fits(value, before));
}

/** What is taken where nobody knows, in words. */
export function usualWords(question: Question, before: Settled): string {
  const usual = question.usual(before);
  if (question.kind === "number") return said`${usual} ${question.unit}`;
  return question.choices.find(({ value }) => value === usual)?.words ?? usual;
}

/** A number as a person writes it: no exponent, no hexadecimal. */
const PLAIN = /^\d+(\.\d+)?$/;

function problemOf(question: Question, answer: string, before: Settled): string | null {
  if (question.kind === "number") {
    const number = Number(answer);
    const fine = PLAIN.test(answer) && number >= question.least && number <= question.most;
    if (fine && (!question.whole || Number.isInteger(number))) return null;
    return said`${question.id}: expected a number of ${question.unit} from ${question.least} to ${question.most}, found ${quoted(answer)}`;
  }
  const values = choicesOf(question, before).map(({ value }) => value);
  if (values.includes(answer)) return null;
  const known = question.choices.some(({ value }) => value === answer);
  return known
    ? said`${question.id}: ${quoted(answer)} does not go with the answers before it; ${values.join(", ")} do`
    : said`${question.id}: ${quoted(answer)} is no answer${suggestion(answer, values)}; answers: ${values.join(", ")}`;
}

/** Every question that applies with its answer or default. A problem names the question, what is wrong and what would be right. */
export function settleAnswers(answers: Answers): Parsed<SettledAnswers> {
  const ids = QUESTIONS.map(({ id }) => id as string);
  const stranger = Object.keys(answers).find((id) => !ids.includes(id));
  if (stranger !== undefined)
    return { ok: false, problem: said`${quoted(stranger)} is no question${suggestion(stranger, ids)}` };
  const values = new Map<QuestionId, string>();
  const open = new Set<QuestionId>();
  for (const question of QUESTIONS) {
    if (question.applies?.(values) === false) continue;
    const { id } = question;
    const given = Object.hasOwn(answers, id) ? answers[id].trim() : UNSURE;
    if (given === UNSURE) {
      values.set(id, question.usual(values));
      open.add(id);
      continue;
    }
    const problem = problemOf(question, given, values);
    if (problem !== null) return { ok: false, problem };
    values.set(id, given);
  }
  return { ok: true, value: { values, open } };
}

/** The answers without those that an earlier one has made impossible (a boost, once the mains has three phases). */
export function keepFitting(answers: Answers): Answers {
  const values = new Map<QuestionId, string>();
  const kept: Record<string, string> = { ...answers };
  for (const question of QUESTIONS) {
    if (question.applies?.(values) === false) continue;
    const { id } = question;
    const given = Object.hasOwn(answers, id) ? answers[id] : UNSURE;
    const known = question.kind === "choice" && question.choices.some(({ value }) => value === given);
    if (known && !choicesOf(question, values).some(({ value }) => value === given)) delete kept[id];
    const stays = Object.hasOwn(kept, id) && given !== UNSURE;
    values.set(id, stays ? given : question.usual(values));
  }
  return kept;
}

/** What the first four leave open: what is still to be answered before the board can be worked on. */
export function stillNeeded({ open }: SettledAnswers): readonly QuestionId[] {
  return QUESTIONS.filter(({ id, first }) => first && open.has(id)).map(({ id }) => id);
}
