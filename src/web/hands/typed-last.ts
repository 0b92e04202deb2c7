/** Whether the last reading was typed: then the next check's field takes the cursor, and a row is typed one field after another. */
let typed = false;

export function wasTyped(): boolean {
  return typed;
}

export function noteTyped(last: boolean): void {
  typed = last;
}
