/** What the page shows of a board being described: the questions that apply with their answers, and the board so far. */
import { MARK_WORDS } from "../units/mark.ts";
import type { Parsed } from "../units/outcome.ts";
import { type Answers, choicesOf, keepFitting, settleAnswers, stillNeeded, usualWords } from "./answers.ts";
import { composeBoard, type Heading } from "./compose-board.ts";
import { type Choice, QUESTIONS, type QuestionId } from "./questions.ts";

export interface QuestionView {
  readonly id: QuestionId;
  readonly title: string;
  /** one of those that make a board which can be worked on */
  readonly first: boolean;
  /** null: nobody has answered it */
  readonly answer: string | null;
  /** empty for a number */
  readonly choices: readonly Choice[];
  /** of a number */
  readonly unit: string | null;
  /** what is taken until then, in words, with what that rests on */
  readonly usual: string;
  readonly mark: string;
  readonly source: string;
}

/** A board being described. Plain data, structured-clone safe. */
export interface ComposerView {
  readonly questions: readonly QuestionView[];
  /** titles of questions to answer before the board can be worked on */
  readonly needed: readonly string[];
  /** a board file's content */
  readonly board: Readonly<Record<string, unknown>>;
  readonly name: string;
  readonly parts: number;
  /** how many of them nobody has seen */
  readonly assumed: number;
}

/** The description so far. An answer that an earlier one has since made impossible is dropped; one that never fits is refused. */
export function composerView(given: Answers, heading: Heading = {}): Parsed<ComposerView> {
  const answers = keepFitting(given);
  const made = composeBoard(answers, heading);
  if (!made.ok) return made;
  const { board, settled } = made.value;
  const needed = stillNeeded(settled);
  const parts = Object.values(board.parts as Readonly<Record<string, { readonly assumed?: true }>>);
  return {
    ok: true,
    value: {
      questions: questionViews(answers),
      needed: QUESTIONS.filter(({ id }) => needed.includes(id)).map(({ title }) => title),
      board,
      name: String(board.name),
      parts: parts.length,
      assumed: parts.filter((part) => part.assumed === true).length,
    },
  };
}

function questionViews(answers: Answers): QuestionView[] {
  const settled = settleAnswers(answers);
  if (!settled.ok) throw new Error(settled.problem);
  const { values, open } = settled.value;
  return QUESTIONS.filter(({ id }) => values.has(id)).map((question) => {
    const choices = choicesOf(question, values);
    return {
      id: question.id,
      title: question.title,
      first: question.first,
      answer: open.has(question.id) ? null : (values.get(question.id) ?? null),
      choices,
      unit: question.kind === "number" ? question.unit : null,
      usual: usualWords(question, values),
      mark: MARK_WORDS[question.mark],
      source: question.source,
    };
  });
}
