/** What was entered last, and its undo, where the thumb is: a slip is taken back before the engine has answered. */

import type { ActionView } from "../../wire/bench-view.ts";
import { lastEntry } from "../../wire/last-entry.ts";
import type { KeptEvent } from "../job-event.ts";
import { actionWords } from "../words.ts";

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
        <span className="undo-what">{outcomeWords(last)}</span> {actionWords(last as unknown as ActionView)}
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
    return `${READING_WORDS[String(event.reading)] ?? String(event.reading)}${climbing}:`;
  }
  if (event.do === "look") return `${event.finding}:`;
  return "Noted:";
}

const READING_WORDS: Readonly<Record<string, string>> = {
  zero: "Zero",
  junction: "A junction",
  high: "Open",
  beep: "Beeps",
  silent: "Silent",
};
