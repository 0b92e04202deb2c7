/** Asks at the prompt for what is still open: a number picks an answer, an empty line means that nobody knows. */
import { createInterface } from "node:readline";
import { type Answers, choicesOf, settleAnswers, UNSURE, usualWords } from "../../compose/answers.ts";
import { QUESTIONS, type Question, type Settled } from "../../compose/questions.ts";
import type { Io } from "../io.ts";

/** The answers given and those asked for. The end of input, or `done`, leaves the rest open. Questions go to standard error. */
export async function askQuestions(given: Answers, io: Io): Promise<Answers> {
  const lines = createInterface({ input: io.input, terminal: false, crlfDelay: Number.POSITIVE_INFINITY });
  const typed = lines[Symbol.asyncIterator]();
  let answers = given;
  for (const question of QUESTIONS) {
    const before = valuesOf(answers);
    if (Object.hasOwn(given, question.id) || question.applies?.(before) === false) continue;
    const answer = await ask(question, before, answers, typed, io);
    if (answer === null) break;
    answers = { ...answers, [question.id]: answer };
  }
  lines.close();
  return answers;
}

function valuesOf(answers: Answers): Settled {
  const settled = settleAnswers(answers);
  if (!settled.ok) throw new Error(settled.problem);
  return settled.value.values;
}

/** One question until its answer fits; null where the person is done. */
async function ask(
  question: Question,
  before: Settled,
  answers: Answers,
  typed: AsyncIterator<string>,
  io: Io,
): Promise<string | null> {
  const choices = choicesOf(question, before);
  io.err(`\n${question.title}\n`);
  io.err(`  usually: ${usualWords(question, before)} (${question.mark}: ${question.source})\n`);
  choices.forEach(({ words, hint }, i) => {
    io.err(`  ${i + 1}  ${words}${hint === undefined ? "" : `: ${hint}`}\n`);
  });
  for (;;) {
    io.err(`${choices.length > 0 ? "number" : question.id}, empty if not known, done to stop> `);
    const line = await typed.next();
    if (line.done === true || line.value.trim() === "done") return null;
    const text = line.value.trim();
    if (text === "") return UNSURE;
    const answer = choices[Number(text) - 1]?.value ?? text;
    const settled = settleAnswers({ ...answers, [question.id]: answer });
    if (settled.ok) return answer;
    io.err(`${settled.problem}\n`);
  }
}
