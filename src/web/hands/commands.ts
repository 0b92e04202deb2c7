/** What a key, a foot pedal or a clicker may do on the bench. */
import { said } from "../../messages/said.ts";

export interface Command {
  readonly name: string;
  readonly words: string;
  /** selects what it presses on the card; null: it is no key of the card */
  readonly presses: string | null;
}

export const COMMANDS: readonly Command[] = [
  {
    name: "take",
    words: said`Take what the meter on the wire shows`,
    presses: '.on-the-wire [data-key="t"]',
  },
  { name: "first", words: said`First large key: zero`, presses: '[data-key="1"]' },
  { name: "second", words: said`Second large key: a junction`, presses: '[data-key="2"]' },
  { name: "third", words: said`Third large key: open`, presses: '[data-key="3"]' },
  { name: "fourth", words: said`Fourth large key: still climbing`, presses: '[data-key="4"]' },
  { name: "done", words: said`Done, for a step of the hand`, presses: '[data-key="d"]' },
  { name: "undo", words: said`Undo the last entry`, presses: null },
  { name: "again", words: said`Say the step again`, presses: null },
];

/** Keys that mean something to the browser or to a screen reader wherever they are pressed. */
const TAKEN: ReadonlySet<string> = new Set([
  "Tab",
  "Shift",
  "Control",
  "Alt",
  "Meta",
  "Escape",
  "Enter",
  " ",
  "AltGraph",
  "CapsLock",
]);

/** Whether a key can be given a command of its own. */
export function mayBeMapped(key: string): boolean {
  return key !== "" && key !== "Unidentified" && key !== "Dead" && !TAKEN.has(key);
}

/** A key that types nothing may act while a field has the cursor; one that types a letter belongs to the field there. */
export function typesSomething(key: string): boolean {
  return [...key].length === 1;
}
