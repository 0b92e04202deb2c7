/** What was entered last, and its undo, where the thumb is: a slip is taken back before the engine has answered. */

import { lastEntry } from "../../wire/last-entry.ts";
import type { KeptEvent } from "../job-event.ts";
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
        {last.do === "note" ? last.text : actionWords({ ...last })}
      </p>
      <button type="button" className="small" onClick={() => onUndo(last.id)}>
        Undo
      </button>
    </div>
  );
}

/** What came of it, as it was tapped or typed; `Noted` where a step of the hand has nothing to say. */
function outcomeWords(event: KeptEvent): string {
  if (event.do === "measure") {
    const climbing = event.settling === "climbing" ? ", climbing" : "";
    const { reading, mode } = event;
    const shown =
      typeof reading === "number"
        ? quantity(reading, UNITS[mode] ?? "")
        : (READING_WORDS[reading] ?? reading);
    return `${shown}${climbing}:`;
  }
  if (event.do === "look") return `${event.finding}:`;
  return "Noted:";
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
  zero: "Zero",
  junction: "A junction",
  high: "Open",
  beep: "Beeps",
  silent: "Silent",
};
