/** Edit distance (Levenshtein 1966), case ignored; both words are short. */
function distance(a: string, b: string): number {
  const from = a.toLowerCase();
  const to = b.toLowerCase();
  let row = Array.from({ length: to.length + 1 }, (_, column) => column);
  for (let i = 1; i <= from.length; i++) {
    const next = [i];
    for (let j = 1; j <= to.length; j++) {
      const change = (row[j - 1] ?? 0) + (from[i - 1] === to[j - 1] ? 0 : 1);
      next.push(Math.min(change, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[to.length] ?? 0;
}

/** The known word that a mistyped one was most likely meant to be, or null where none is close. */
export function nearest(word: string, known: Iterable<string>): string | null {
  if (word.length > 64) return null;
  let best: string | null = null;
  let bestDistance = Math.max(1, Math.floor(word.length / 3)) + 1;
  for (const candidate of known) {
    if (Math.abs(candidate.length - word.length) >= bestDistance) continue;
    const edits = distance(word, candidate);
    if (edits < bestDistance) {
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
  if (close !== null) return `; did you mean ${quoted(close)}?`;
  if (known.length === 0) return "";
  const shown = known.slice(0, limit).join(" ");
  return `; known: ${shown}${known.length > limit ? " ..." : ""}`;
}
