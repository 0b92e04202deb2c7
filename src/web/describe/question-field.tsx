/** One question about a board: a few large answers, or a number. Not sure is an answer. */

import { said } from "../../messages/said.ts";
import type { QuestionView } from "../../wire/composer-view.ts";
import { Choices } from "../intake/choices.tsx";
import { say } from "../say.ts";

interface Props {
  readonly question: QuestionView;
  /** the answer as typed or tapped, which the view may not have taken yet */
  readonly answer: string;
  onAnswer(answer: string): void;
}

/** The engine's word for a question that nobody can answer. */
export const UNSURE = "unsure";

export function QuestionField(props: Props) {
  const { question } = props;
  return (
    <div className="question">
      <Answer {...props} />
      {!question.first && question.answer === null && (
        <p className="aside">
          {say`Taken as usual: ${question.usual} (${question.mark}: ${question.source}).`}
        </p>
      )}
    </div>
  );
}

function Answer({ question, answer, onAnswer }: Props) {
  if (question.unit !== null)
    return (
      <label className="entry">
        {say`${question.title}, ${question.unit}`}
        <input
          inputMode="decimal"
          autoComplete="off"
          placeholder={say`not sure: ${question.usual}`}
          value={answer === UNSURE ? "" : answer}
          onChange={(event) => onAnswer(event.target.value.trim() === "" ? UNSURE : event.target.value)}
        />
      </label>
    );
  const unsure = { value: UNSURE, words: said`Not sure` };
  const choices: QuestionView["choices"] = question.first ? question.choices : [...question.choices, unsure];
  return (
    <Choices
      title={say(question.title)}
      choices={choices.map((choice) => ({
        ...choice,
        words: say(choice.words),
        ...(choice.hint === undefined ? {} : { hint: say(choice.hint) }),
      }))}
      value={answer}
      onValue={onAnswer}
    />
  );
}
