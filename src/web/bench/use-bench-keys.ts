/** The bench by keyboard: 1 to 4 press the large keys, digits go to the field, U undoes, ? explains. */
import { useEffect, useRef } from "react";

export interface BenchKeys {
  undo(): void;
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
      const busy = typing(event.target) || document.querySelector("dialog[open]") !== null;
      if (busy || event.ctrlKey || event.metaKey || event.altKey) return;
      if (event.key === "?") now.current.help();
      else if (event.key === "u" || event.key === "U") now.current.undo();
      else if (!pressKey(event)) return;
      event.preventDefault();
    };
    addEventListener("keydown", pressed);
    return () => removeEventListener("keydown", pressed);
  }, []);
}

function pressKey(event: KeyboardEvent): boolean {
  const key = document.querySelector<HTMLElement>(
    `.card [data-key="${CSS.escape(event.key.toLowerCase())}"]`,
  );
  if (key !== null) {
    if (key instanceof HTMLInputElement) key.focus();
    else key.click();
    return true;
  }
  if (!/^[0-9.,-]$/.test(event.key)) return false;
  const digits = document.querySelector<HTMLInputElement>(".card [data-digits]");
  if (digits === null) return false;
  // The digit itself is typed by the browser once the field has the focus.
  digits.focus();
  return false;
}
