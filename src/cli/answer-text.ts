import { plain } from "../messages/said.ts";

/** One JSON object for a script, on one line. A number that JSON cannot hold would come out as `null`: it throws instead. */
export function answerText(answer: object): string {
  const text = JSON.stringify(answer, (key, value: unknown) => {
    if (typeof value === "number" && !Number.isFinite(value)) {
      throw new Error(`the answer's field "${key}" is ${value}, which is no answer`);
    }
    return value;
  });
  return `${text}\n`;
}

export function percent(probability: number): string {
  if (probability > 0 && probability < 0.001) return "<0.1 %";
  return `${(100 * probability).toFixed(probability < 0.1 ? 1 : 0)} %`;
}

/** Rows as columns of equal width; the last column is left ragged. */
export function table(texts: readonly (readonly string[])[]): string {
  // the marks of what is said have no width
  const rows = texts.map((row) => row.map(plain));
  const widths: number[] = [];
  for (const row of rows) {
    for (const [column, cell] of row.entries()) widths[column] = Math.max(widths[column] ?? 0, cell.length);
  }
  const line = (row: readonly string[]) =>
    row
      .map((cell, column) => (column === row.length - 1 ? cell : cell.padEnd(widths[column] ?? 0)))
      .join("  ");
  return rows.map((row) => `${line(row).trimEnd()}\n`).join("");
}
