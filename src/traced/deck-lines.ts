/** A SPICE deck as logical lines: continuations joined, comments apart. */
export interface DeckLine {
  /** from 1, of its first line in the file */
  readonly line: number;
  readonly text: string;
}

export interface DeckText {
  readonly title: string;
  readonly statements: readonly DeckLine[];
  /** comments that carry what SPICE has no word for */
  readonly notes: readonly DeckLine[];
}

/** Begins such a comment. */
export const NOTE = "*@ ";

/** Splits a deck. The first line is its title; what stands behind `;` or ` $` is a comment; `.end` ends it. */
export function deckLines(text: string): DeckText {
  const [title = "", ...rest] = text.split(/\r?\n/);
  const statements: { line: number; text: string }[] = [];
  const notes: DeckLine[] = [];
  for (const [index, raw] of rest.entries()) {
    const line = index + 2;
    if (raw.startsWith(NOTE)) notes.push({ line, text: raw.slice(NOTE.length) });
    if (raw.startsWith("*")) continue;
    const bare = raw.replace(/(;| \$).*$/, "").trim();
    if (/^\.end$/i.test(bare)) break;
    const last = statements.at(-1);
    if (bare.startsWith("+") && last !== undefined) last.text += ` ${bare.slice(1).trim()}`;
    else if (bare !== "") statements.push({ line, text: bare });
  }
  return { title: title.replace(/^\*\s*/, "").trim(), statements, notes };
}
