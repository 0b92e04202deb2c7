/** The keys that answer a card, by what the card asks for. */

import { useState } from "react";
import { said } from "../../messages/said.ts";
import { latinDigits } from "../../units/typed-digits.ts";
import type { ActionView } from "../../wire/bench-view.ts";
import { field } from "../job-event.ts";
import { forms, say } from "../say.ts";
import { FINDINGS, LOAD_ENDS, listed, OBSERVED, VERDICTS, verdictWords } from "../words.ts";
import type { AnswerProps } from "./bench-props.ts";
import { ReadingKeys } from "./reading-keys.tsx";
import { ReplaceForm } from "./replace-form.tsx";
import { Shelve } from "./shelve.tsx";
import { SignKeys } from "./sign-keys.tsx";

export function AnswerKeys(props: AnswerProps) {
  switch (props.card.action.do) {
    case "measure":
      return <ReadingKeys {...props} />;
    case "look":
      return <FindingKeys {...props} />;
    case "power":
      return <ObservedKeys {...props} />;
    case "unpower":
      return props.card.firstMinute?.underLoad === true ? <EndKeys {...props} /> : <DoneKey {...props} />;
    case "replace":
      return <ReplaceForm {...props} />;
    case "answer":
      return props.card.answers.length > 0 ? (
        <OneTapAnswers {...props} />
      ) : (
        <TextAnswer {...props} name="answer" label={say`What the customer says`} />
      );
    case "calibrate":
      return <TextAnswer {...props} name="reading" label={say`What the meter shows`} />;
    case "close":
      return <VerdictKeys {...props} />;
    default:
      return <DoneKey {...props} />;
  }
}

function DoneKey({ card, hands, disabled }: AnswerProps) {
  return (
    <button
      type="button"
      className="primary tall"
      data-key="d"
      disabled={disabled}
      onClick={() => hands.done(card.action)}
    >
      {say`Done`}
    </button>
  );
}

function FindingKeys({ card, hands, disabled }: AnswerProps) {
  return (
    <fieldset className="keys" aria-label={say`What you see`}>
      {FINDINGS.map(({ finding, words }, index) => (
        <button
          type="button"
          key={finding}
          data-key={index + 1}
          disabled={disabled}
          onClick={() => hands.done(card.action, { finding })}
        >
          {say(words)}
        </button>
      ))}
    </fieldset>
  );
}

/** Answers in steps, or the figure itself. */
function OneTapAnswers(props: AnswerProps) {
  const { card, hands, disabled } = props;
  return (
    <>
      <fieldset className="keys" aria-label={say`What it reads`}>
        {card.answers.map(({ answer, words }, index) => (
          <button
            type="button"
            key={answer}
            data-key={index + 1}
            disabled={disabled}
            onClick={() => hands.done(card.action, { answer })}
          >
            {say(words)}
          </button>
        ))}
      </fieldset>
      <TextAnswer {...props} name="answer" label={say`Or the figure, in Mohm`} />
    </>
  );
}

/** How a run under load ended. */
function EndKeys({ card, hands, disabled }: AnswerProps) {
  return (
    <fieldset className="keys" aria-label={say`What it did until it was switched off`}>
      {LOAD_ENDS.map(({ seen, words }, index) => (
        <button
          type="button"
          key={seen}
          data-key={index + 1}
          disabled={disabled}
          onClick={() => hands.done(card.action, { observed: seen })}
        >
          {say(words)}
        </button>
      ))}
    </fieldset>
  );
}

const FEED_WORDS: Readonly<Record<string, string>> = {
  mains: said`straight from the mains`,
  lamp: said`through the series lamp`,
  bench: said`from the bench supply`,
};

/** What power comes through, and its figures, in the words of the step. */
function feedWords(action: ActionView): string {
  const feed = field(action, "feed") ?? "mains";
  const watts = field(action, "watts");
  const volts = field(action, "volts");
  const limit = field(action, "limitAmps");
  const ohms = field(action, "ohms");
  const from = ohms === null ? (FEED_WORDS[feed] ?? feed) : said`from a rechargeable cell`;
  const figures = [
    ...(watts === null ? [] : [forms().shown(`${watts} W`)]),
    ...(volts === null ? [] : [forms().shown(`${volts} V`)]),
    ...(ohms === null ? [] : [say`through ${`${ohms} Ω`}`]),
    ...(ohms !== null || limit === null ? [] : [say`limit ${`${limit} A`}`]),
  ];
  return figures.length === 0
    ? say`Power ${from}. Mark all you see, then record.`
    : say`Power ${from}, ${listed(figures)}. Mark all you see, then record.`;
}

function ObservedKeys({ card, view, hands, disabled }: AnswerProps) {
  const [seen, setSeen] = useState<readonly string[]>([]);
  const [signs, setSigns] = useState<Readonly<Record<string, boolean>>>({});
  const feed = field(card.action, "feed") ?? "mains";
  const noted = Object.keys(signs).length === 0 ? {} : { signs };
  const toggle = (name: string) =>
    setSeen(seen.includes(name) ? seen.filter((other) => other !== name) : [...seen, name]);
  return (
    <div className="observed">
      <p className="feed">{feedWords(card.action)}</p>
      <fieldset className="keys" aria-label={say`What you see with power on`}>
        {OBSERVED.filter(({ feeds }) => feeds.includes(feed)).map((entry, index) => (
          <button
            type="button"
            key={entry.seen}
            data-key={index + 1}
            aria-pressed={seen.includes(entry.seen)}
            disabled={disabled}
            onClick={() => toggle(entry.seen)}
          >
            {say(entry.words)}
          </button>
        ))}
      </fieldset>
      <SignKeys
        toNote={feed === "bench" ? [] : view.signs}
        signs={signs}
        disabled={disabled}
        onSigns={setSigns}
      />
      <button
        type="button"
        className="primary tall"
        data-key="d"
        disabled={disabled || seen.length === 0}
        onClick={() => hands.done(card.action, { observed: seen.length === 1 ? seen[0] : seen, ...noted })}
      >
        {say`Record what power showed`}
      </button>
    </div>
  );
}

/** Verdicts that give a board up: what was fitted in it need not stay on it. */
const GIVEN_UP: ReadonlySet<string> = new Set(["not-economic", "not-repairable", "declined"]);

function VerdictKeys({ card, hands, disabled, fitted }: AnswerProps) {
  const proposed = field(card.action, "verdict") ?? "";
  const [shelved, setShelved] = useState<ReadonlySet<string>>(new Set());
  const back = (verdict: string) =>
    GIVEN_UP.has(verdict) && shelved.size > 0 ? { shelved: [...shelved] } : {};
  return (
    <div className="verdict-keys">
      {fitted.length > 0 && GIVEN_UP.has(proposed) && (
        <Shelve fitted={fitted} shelved={shelved} onShelved={setShelved} />
      )}
      <button
        type="button"
        className="primary tall"
        data-key="d"
        disabled={disabled}
        onClick={() => hands.done(card.action, back(proposed))}
      >
        {say`Close the job: ${verdictWords(proposed)}`}
      </button>
      <details>
        <summary>{say`Another verdict`}</summary>
        <div className="keys">
          {VERDICTS.filter(({ verdict }) => verdict !== proposed).map(({ verdict, words }) => (
            <button
              type="button"
              key={verdict}
              disabled={disabled}
              onClick={() => hands.done({ do: "close", verdict }, back(verdict))}
            >
              {say(words)}
            </button>
          ))}
        </div>
      </details>
    </div>
  );
}

function TextAnswer({ card, hands, disabled, name, label }: AnswerProps & { name: string; label: string }) {
  const [text, setText] = useState("");
  const typed = latinDigits(text);
  const value = name === "reading" ? Number(typed.replace(",", ".")) : typed.trim();
  const missing = text.trim() === "" || (typeof value === "number" && !Number.isFinite(value));
  return (
    <form
      className="entry"
      onSubmit={(event) => {
        event.preventDefault();
        if (!missing) hands.done(card.action, { [name]: value });
      }}
    >
      <label htmlFor="text-answer">{label}</label>
      <input id="text-answer" data-digits="" value={text} onChange={(event) => setText(event.target.value)} />
      <button type="submit" className="primary" disabled={disabled || missing}>
        {say`Record`}
      </button>
    </form>
  );
}
