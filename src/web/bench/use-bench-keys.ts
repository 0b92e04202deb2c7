/** The bench by keyboard: 1 to 4 press the large keys, digits go to the field, U undoes, ? explains; and what keys of one's own do. */
import { useEffect, useRef } from "react";
import { latinDigits } from "../../units/typed-digits.ts";
import { COMMANDS, typesSomething } from "../hands/commands.ts";
import { handsSettings } from "../hands/hands-settings.ts";

export interface BenchKeys {
  undo(): void;
  /** says the step once more */
  again(): void;
  help(): void;
}

function typing(target: EventTarget | null): boolean {
  return target instanceof HTMLElement && target.matches("input, textarea, select, [contenteditable]");
}

/** Elements that a key presses carry `data-key`; the field that digits go to carries `data-digits`. */
export function useBenchKeys(keys: BenchKeys): void {
  const now = useRef(keys);
  now.current = keys;
  useEffect(() => {
    const pressed = (event: KeyboardEvent) => {
      if (document.querySelector("dialog[open]") !== null) return;
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      const inField = typing(event.target);
      const own = inField && typesSomething(event.key) ? undefined : handsSettings().keys[event.key];
      if (own !== undefined) {
        // a pedal that is held down repeats: one press is one step
        if (!event.repeat) obey(own, now.current);
        return event.preventDefault();
      }
      if (inField) return;
      const key = latinKey(event);
      if (key === "?") now.current.help();
      else if (key === "u") now.current.undo();
      else if (key === "r") now.current.again();
      else if (!pressKey(key)) return;
      event.preventDefault();
    };
    addEventListener("keydown", pressed);
    return () => removeEventListener("keydown", pressed);
  }, []);
}

function obey(name: string, keys: BenchKeys): void {
  const selector = COMMANDS.find((command) => command.name === name)?.presses ?? null;
  if (name === "undo") keys.undo();
  else if (name === "again") keys.again();
  else if (selector !== null)
    document.querySelector<HTMLElement>(`${placeOf(name === "take" ? "t" : "")} ${selector}`)?.click();
}

/** A cell of the grid that is open gets the readings, taken or typed; all else is the card's. */
function placeOf(key: string): ".cell-entry" | ".card" {
  return /^[0-9.,tf-]$/.test(key) && document.querySelector(".cell-entry") !== null ? ".cell-entry" : ".card";
}

/** The key as the help names it, on a keyboard of another script too: there the letter is told by its place. */
function latinKey({ key, code }: KeyboardEvent): string {
  if (key === "\u061f") return "?";
  const typed = latinDigits(key).toLowerCase();
  return /^[^\0-\x7f]$/.test(typed) && /^Key[A-Z]$/.test(code) ? code.slice(3).toLowerCase() : typed;
}

function pressKey(typed: string): boolean {
  const key = document.querySelector<HTMLElement>(`${placeOf(typed)} [data-key="${CSS.escape(typed)}"]`);
  if (key !== null) {
    if (key instanceof HTMLInputElement) key.focus();
    else key.click();
    return true;
  }
  if (!/^[0-9.,-]$/.test(typed)) return false;
  const digits = document.querySelector<HTMLInputElement>(`${placeOf(typed)} [data-digits]`);
  if (digits === null) return false;
  // The digit itself is typed by the browser once the field has the focus.
  digits.focus();
  return false;
}
