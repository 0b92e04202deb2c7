/** A board that nobody has described: four answers make one that can be worked on, the rest makes it exact. */
import { useEffect, useState } from "react";
import { said, saidCount } from "../../messages/said.ts";
import type { ComposerView, QuestionView } from "../../wire/composer-view.ts";
import { keepOwnBoard, newBoardId } from "../board-keeper.ts";
import { chosenBoard, type Described, type IntakeProps } from "../intake/intake.ts";
import { go } from "../route.ts";
import { say } from "../say.ts";
import { QuestionField, UNSURE } from "./question-field.tsx";
import { useDescription } from "./use-description.ts";

const NOTHING_SAID: Described = { id: "", answers: {}, name: "" };

export function DescribeScreen({ intake, change }: IntakeProps) {
  const described = intake.described ?? NOTHING_SAID;
  const { view, problem, stale } = useDescription(described);
  const [lacking, setLacking] = useState<string | null>(null);
  const [wanted, setWanted] = useState(false);
  const tell = (part: Partial<Described>) => {
    setLacking(null);
    change({ described: { ...described, ...part } });
  };
  const answer = (id: string, value: string) => tell({ answers: { ...described.answers, [id]: value } });
  const use = async () => {
    if (view === null || problem !== null) return;
    if (view.needed.length > 0) return setLacking(said`Still to be answered: ${view.needed.join(", ")}.`);
    const id = described.id === "" ? newBoardId() : described.id;
    // Of the name that is given to a board for want of one there are many: it is known by more than that.
    const board = described.name.trim() === "" ? { ...view.board, identity: id } : view.board;
    try {
      await keepOwnBoard({ id, title: view.name, board });
    } catch {
      return setLacking(said`This browser could not keep the board: free some space in it, then tap again.`);
    }
    change({ ...chosenBoard(id, board), described: { ...described, id } });
    go("#/new");
  };
  // a tap before the last answer is worked in waits for it
  useEffect(() => {
    if (!wanted || stale) return;
    setWanted(false);
    void use();
  });
  const questions = view?.questions ?? [];
  const fieldOf = (question: QuestionView) => (
    <QuestionField
      key={question.id}
      question={question}
      answer={answerTo(question, described)}
      onAnswer={(value) => answer(question.id, value)}
    />
  );
  return (
    <div className="intake">
      <header className="bench-bar">
        <button type="button" className="quiet" onClick={() => go("#/new")}>
          {say`Back`}
        </button>
        <h1>{say`Describe the board`}</h1>
      </header>
      <main>
        {questions.filter(({ first }) => first).map(fieldOf)}
        <div className="folded">
          <Details questions={questions.filter(({ first }) => !first)} fieldOf={fieldOf} />
        </div>
        <label className="entry">
          {say`What to call it (optional)`}
          <input
            autoComplete="off"
            maxLength={120}
            placeholder={say(view?.name ?? "")}
            value={described.name}
            onChange={(event) => tell({ name: event.target.value })}
          />
        </label>
        <UseBar view={view} problem={problem ?? lacking} busy={stale} onUse={() => setWanted(true)} />
      </main>
    </div>
  );
}

interface UseBarProps {
  readonly view: ComposerView | null;
  readonly problem: string | null;
  readonly busy: boolean;
  onUse(): void;
}

function UseBar({ view, problem, busy, onUse }: UseBarProps) {
  return (
    <div className="start-bar">
      {problem !== null && (
        <p role="alert" className="entry-problem">
          {say(problem)}
        </p>
      )}
      <button type="button" className="primary tall" aria-busy={busy} onClick={onUse}>
        {say`Use this board`}
        {view !== null && (
          <small className="button-note">
            {say(
              saidCount(
                view.parts,
                "{0} part, {1} of them not seen",
                "{0} parts, {1} of them not seen",
                view.assumed,
              ),
            )}
          </small>
        )}
      </button>
    </div>
  );
}

/** An answer that no longer fits is shown as not given: the view has dropped it. */
function answerTo(question: QuestionView, { answers }: Described): string {
  const given = answers[question.id] ?? "";
  const dropped = question.unit === null && !question.choices.some(({ value }) => value === given);
  if (given !== "" && !dropped) return given;
  return question.first ? "" : UNSURE;
}

interface DetailsProps {
  readonly questions: readonly QuestionView[];
  fieldOf(question: QuestionView): React.JSX.Element;
}

function Details({ questions, fieldOf }: DetailsProps) {
  const open = questions.filter(({ answer }) => answer === null).length;
  return (
    <details>
      <summary>
        <span>
          {say`What else is known`}{" "}
          <small>{say`${open} of ${questions.length} taken as usual and held to be uncertain`}</small>
        </span>
      </summary>
      <div className="described">{questions.map(fieldOf)}</div>
    </details>
  );
}
