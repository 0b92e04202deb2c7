/** What was entered last, and its undo, where the thumb is: a slip is taken back before the engine has answered. */

import { said } from "../../messages/said.ts";
import { lastEntry } from "../../wire/last-entry.ts";
import type { KeptEvent } from "../job-event.ts";
import { say } from "../say.ts";
import { actionWords, quantity } from "../words.ts";

interface Props {
  readonly events: readonly KeptEvent[];
  onUndo(id: string): void;
}

export function UndoStrip({ events, onUndo }: Props) {
  const last = lastEntry(events);
  if (last === null) return null;
  return (
    <div className="undo-strip">
      <p>
        <span className="undo-what">{outcomeWords(last)}</span>{" "}
        {last.do === "note" ? last.text : say(actionWords({ ...last }))}
      </p>
      <button type="button" className="small" onClick={() => onUndo(last.id)}>
        {say`Undo`}
      </button>
    </div>
  );
}

/** In lower case, as the finding's own word is: it begins no sentence. */
function lookedWords(finding: string): string {
  return FOUND[finding] ?? finding;
}

const FOUND: Readonly<Record<string, string>> = {
  clean: said`clean`,
  burnt: said`burnt`,
  bulged: said`bulged`,
  cracked: said`cracked`,
  corroded: said`corroded`,
  wet: said`wet`,
  "lifted-pad": said`lifted pad`,
  other: said`something else`,
};

/** What came of it, as it was tapped or typed; `Noted` where a step of the hand has nothing to say. */
function outcomeWords(event: KeptEvent): string {
  if (event.do === "measure") {
    const { reading, mode } = event;
    const shown =
      typeof reading === "number"
        ? quantity(reading, UNITS[mode] ?? "")
        : (READING_WORDS[reading] ?? reading);
    return event.settling === "climbing" ? say`${shown}, climbing:` : say`${shown}:`;
  }
  if (event.do === "look") return say`${lookedWords(event.finding)}:`;
  return say`Noted:`;
}

const UNITS: Readonly<Record<string, string>> = {
  diode: "V",
  ohms: "Ω",
  farads: "F",
  dcv: "V",
  acv: "V",
  amps: "A",
  temperature: "°C",
};

const READING_WORDS: Readonly<Record<string, string>> = {
  zero: said`Zero`,
  junction: said`A junction`,
  high: said`Open`,
  beep: said`Beeps`,
  silent: said`Silent`,
};
