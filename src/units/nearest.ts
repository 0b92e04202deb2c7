import { said } from "../messages/said.ts";

/** Edits between two short words, case ignored, two swapped letters being one edit (Damerau 1964, optimal alignment). */
function distance(a: string, b: string): number {
  const from = a.toLowerCase();
  const to = b.toLowerCase();
  const width = to.length + 1;
  const table = new Uint16Array((from.length + 1) * width);
  const at = (i: number, j: number) => table[i * width + j] ?? 0;
  for (let i = 0; i <= from.length; i++) {
    for (let j = 0; j <= to.length; j++) {
      let edits = Math.max(i, j);
      if (i > 0 && j > 0) {
        const change = at(i - 1, j - 1) + (from[i - 1] === to[j - 1] ? 0 : 1);
        edits = Math.min(change, at(i - 1, j) + 1, at(i, j - 1) + 1);
        const swapped = i > 1 && j > 1 && from[i - 1] === to[j - 2] && from[i - 2] === to[j - 1];
        if (swapped) edits = Math.min(edits, at(i - 2, j - 2) + 1);
      }
      table[i * width + j] = edits;
    }
  }
  return at(from.length, to.length);
}

function sharedHead(a: string, b: string): number {
  let length = 0;
  while (length < a.length && a[length] === b[length]) length++;
  return length;
}

/** The known word that a mistyped one was most likely meant to be, or null where none is close. */
export function nearest(word: string, known: Iterable<string>): string | null {
  if (word.length > 64) return null;
  let best: string | null = null;
  let bestDistance = Math.max(1, Math.floor(word.length / 3)) + 1;
  for (const candidate of known) {
    if (Math.abs(candidate.length - word.length) > bestDistance) continue;
    const edits = distance(word, candidate);
    const asGood = edits === bestDistance && best !== null;
    if (edits < bestDistance || (asGood && sharedHead(word, candidate) > sharedHead(word, best ?? ""))) {
      best = candidate;
      bestDistance = edits;
    }
  }
  return best;
}

/** `"ampz"` as an error shows it: quoted, on one line, never longer than 60 characters. */
export function quoted(word: string): string {
  return JSON.stringify(word.length > 60 ? `${word.slice(0, 57)}...` : word);
}

/** "; did you mean "amps"?" where a known word is close, else "; known: ..." (at most `limit` of them). */
export function suggestion(word: string, known: readonly string[], limit = 30): string {
  const close = nearest(word, known);
  if (close !== null) return said`; did you mean ${quoted(close)}?`;
  if (known.length === 0) return "";
  const shown = known.slice(0, limit).join(" ");
  return said`; known: ${known.length > limit ? `${shown} ...` : shown}`;
}
