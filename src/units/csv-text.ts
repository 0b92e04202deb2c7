import { said } from "../messages/said.ts";

/** Comma-separated text (RFC 4180), row by row: a row that is broken is told with its line, and those after it are read. */

export interface CsvRow {
  /** the line it begins at, from 1 */
  readonly line: number;
  readonly cells: readonly string[];
  /** what is wrong with its quotes; its cells are then as far as they were read */
  readonly problem: string | null;
}

/** A quoted cell that is longer was opened by mistake; it also bounds what a broken row may cost. */
const MOST_QUOTED = 10_000;

/** Semicolons where the first line has more of them, as spreadsheets of countries with decimal commas write. */
function delimiterOf(text: string): string {
  const head = text.slice(0, text.search(/[\r\n]|$/));
  return head.split(";").length > head.split(",").length ? ";" : ",";
}

class Reader {
  readonly #text: string;
  readonly #delimiter: string;
  #at = 0;
  #line = 1;

  constructor(text: string) {
    this.#text = text;
    this.#delimiter = delimiterOf(text);
  }

  get done(): boolean {
    return this.#at >= this.#text.length;
  }

  row(): CsvRow {
    const [start, line] = [this.#at, this.#line];
    const cells: string[] = [];
    for (;;) {
      const quoted = this.#text[this.#at] === '"';
      const cell = quoted ? this.#quoted() : this.#bare();
      if (cell.problem !== null) {
        // Whatever the open quote swallowed is given back: reading goes on at the next line.
        this.#at = start;
        this.#line = line;
        this.#bareLine();
        return { line, cells, problem: cell.problem };
      }
      cells.push(cell.text);
      if (this.#text[this.#at] !== this.#delimiter) break;
      this.#at++;
    }
    this.#lineEnd();
    return { line, cells, problem: null };
  }

  #bare(): { readonly text: string; readonly problem: null } {
    const start = this.#at;
    while (!this.done && !this.#ends()) this.#at++;
    return { text: this.#text.slice(start, this.#at), problem: null };
  }

  #quoted(): { readonly text: string; readonly problem: string | null } {
    let text = "";
    const start = ++this.#at;
    for (;;) {
      const close = this.#text.indexOf('"', this.#at);
      if (close === -1 || close - start > MOST_QUOTED)
        return { text, problem: said`a quote is opened and not closed` };
      text += this.#text.slice(this.#at, close);
      this.#at = close + 1;
      if (this.#text[this.#at] !== '"') break;
      text += '"';
      this.#at++;
    }
    if (!this.done && !this.#ends()) return { text, problem: said`a quote ends in the middle of a cell` };
    this.#line += text.split("\n").length - 1;
    return { text, problem: null };
  }

  #ends(): boolean {
    const next = this.#text[this.#at];
    return next === this.#delimiter || next === "\n" || next === "\r";
  }

  #bareLine(): void {
    while (!this.done && this.#text[this.#at] !== "\n" && this.#text[this.#at] !== "\r") this.#at++;
    this.#lineEnd();
  }

  #lineEnd(): void {
    if (this.#text[this.#at] === "\r") this.#at++;
    if (this.#text[this.#at] === "\n") this.#at++;
    this.#line++;
  }
}

/** Every row that is not empty, in order. */
export function csvRows(text: string): readonly CsvRow[] {
  const reader = new Reader(text.replace(/^\ufeff/, ""));
  const rows: CsvRow[] = [];
  while (!reader.done) {
    const row = reader.row();
    if (row.problem !== null || row.cells.some((cell) => cell.trim() !== "")) rows.push(row);
  }
  return rows;
}

/** Rows as text, with commas and one line feed a row. */
export function csvText(rows: readonly (readonly string[])[]): string {
  const quote = (cell: string) => (/[",;\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);
  return rows.map((row) => `${row.map(quote).join(",")}\n`).join("");
}
