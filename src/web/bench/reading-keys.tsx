/** Four large keys for a gloved thumb, and one field for digits that narrow the answer. */
import { useEffect, useId, useRef, useState } from "react";
import { said } from "../../messages/said.ts";
import type { QuantityWord } from "../../units/quantity.ts";
import { parseReadingText, type ReadingMode } from "../../units/reading-text.ts";
import { latinDigits } from "../../units/typed-digits.ts";
import type { ActionView } from "../../wire/bench-view.ts";
import { noteTyped, wasTyped } from "../hands/typed-last.ts";
import { field, type Outcome } from "../job-event.ts";
import { say } from "../say.ts";
import type { AnswerProps } from "./bench-props.ts";
import { OnTheWire } from "./on-the-wire.tsx";

interface CoarseKey {
  readonly words: string;
  readonly hint: string;
  readonly outcome: Outcome;
}

/** A climbing reading is the one two seconds after touching: still rising then, it is high in volts, middling in ohms. */
function climbing(reading: string): Outcome {
  return { reading, settling: "climbing" };
}

const OF_MODE: Readonly<Record<string, readonly CoarseKey[]>> = {
  diode: [
    { words: said`Zero`, hint: said`under 0.1, a short`, outcome: { reading: "zero" } },
    { words: said`A junction`, hint: said`0.1 to 1 V, settled`, outcome: { reading: "junction" } },
    { words: said`Open`, hint: said`OL, or over 1 V`, outcome: { reading: "high" } },
    { words: said`Still climbing`, hint: said`after two seconds`, outcome: climbing("high") },
  ],
  ohms: [
    { words: said`Zero`, hint: said`under 10 Ω`, outcome: { reading: "zero" } },
    { words: said`In between`, hint: said`10 Ω to 20 kΩ`, outcome: { reading: "junction" } },
    { words: said`Open`, hint: said`OL, or over 20 kΩ`, outcome: { reading: "high" } },
    { words: said`Still climbing`, hint: said`after two seconds`, outcome: climbing("junction") },
  ],
  continuity: [
    { words: said`Beeps`, hint: said`a short`, outcome: { reading: "beep" } },
    { words: said`Silent`, hint: said`no beep`, outcome: { reading: "silent" } },
  ],
  farads: [
    { words: said`Zero`, hint: said`under 1 nF: open`, outcome: { reading: "zero" } },
    { words: said`A value`, hint: said`type it if you can`, outcome: { reading: "junction" } },
    { words: "OL", hint: said`shorted or too large`, outcome: { reading: "OL" } },
  ],
};

const UNITS: Readonly<Record<string, string>> = {
  diode: "V",
  ohms: "Ω",
  continuity: "Ω",
  farads: "F",
  dcv: "V DC",
  acv: "V AC",
  amps: "A",
  temperature: "°C",
};

const EXAMPLES: Readonly<Record<string, string>> = {
  diode: "0.47 470m OL",
  ohms: "330 4k7 OL",
  continuity: "beep 0.4",
  farads: "22u 100n",
  dcv: "0.4 325",
  temperature: "41",
};

export function modeOf(action: ActionView): ReadingMode {
  return (field(action, "mode") ?? "ohms") as ReadingMode;
}

export function ReadingKeys({ card, view, hands, disabled }: AnswerProps) {
  const mode = modeOf(card.action);
  // of milliohms only the digits tell anything
  const coarse = field(card.action, "wires") === "4" ? undefined : OF_MODE[mode];
  return (
    <div className="reading-dock">
      {coarse !== undefined && (
        <fieldset className="keys reading-keys" aria-label={say`What the meter shows`}>
          {coarse.map(({ words, hint, outcome }, index) => (
            <button
              type="button"
              key={words}
              data-key={index + 1}
              disabled={disabled}
              onClick={() => hands.done(card.action, outcome)}
            >
              <span className="key-words">{say(words)}</span>
              <span className="key-hint">{say(hint)}</span>
            </button>
          ))}
        </fieldset>
      )}
      <OnTheWire
        wanted={field(card.action, "wires") === "4" ? { mode, wires: 4 } : { mode }}
        beepOhms={view.beepOhms}
        disabled={disabled}
        onTake={(outcome) => hands.done(card.action, outcome)}
      />
      <DigitField
        mode={mode}
        disabled={disabled}
        onReading={(reading, still) =>
          hands.done(card.action, still ? { reading, settling: "climbing" } : { reading })
        }
      />
    </div>
  );
}

interface DigitProps {
  readonly mode: ReadingMode;
  readonly disabled: boolean;
  /** only a settled reading is asked for */
  readonly settled?: boolean;
  onReading(reading: number | QuantityWord, climbing: boolean): void;
}

/** The field that takes digits. A wrong entry stays, with a line saying what to type instead. */
export function DigitField({ mode, disabled, settled = false, onReading }: DigitProps) {
  const [text, setText] = useState("");
  const [problem, setProblem] = useState<string | null>(null);
  const [still, setStill] = useState(false);
  const id = useId();
  const input = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (wasTyped()) input.current?.focus({ preventScroll: true });
  }, []);
  const cold = OF_MODE[mode] !== undefined && mode !== "farads" && mode !== "continuity";
  const submit = () => {
    const entered = parseReadingText(latinDigits(text), mode);
    if (!entered.ok) return setProblem(entered.problem);
    onReading(entered.value, still);
    noteTyped(true);
  };
  return (
    <form
      className="entry"
      onSubmit={(event) => {
        event.preventDefault();
        submit();
      }}
    >
      <label htmlFor={id}>{say`Digits, ${UNITS[mode] ?? ""}`}</label>
      <div className="entry-row">
        <input
          id={id}
          ref={input}
          data-digits=""
          data-key="f"
          className="digits"
          autoComplete="off"
          autoCapitalize="off"
          enterKeyHint="done"
          placeholder={say`${UNITS[mode] ?? ""}, as ${EXAMPLES[mode] ?? ""}`}
          value={text}
          aria-invalid={problem !== null}
          aria-describedby={problem === null ? undefined : `${id}-problem`}
          onChange={(event) => {
            setText(event.target.value);
            setProblem(null);
          }}
        />
        <button type="submit" className="primary" disabled={disabled || text.trim() === ""}>
          {say`Enter`}
        </button>
      </div>
      {cold && !settled && text !== "" && (
        <label className="tick">
          <input type="checkbox" checked={still} onChange={(event) => setStill(event.target.checked)} />
          {say`still climbing after two seconds`}
        </label>
      )}
      {problem !== null && (
        <p id={`${id}-problem`} className="entry-problem" role="alert">
          {say(problem)}
        </p>
      )}
    </form>
  );
}
