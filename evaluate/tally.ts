/** Counts of a comparison by board and column, kept while it runs so that no sample has to be. */
import type { Compared } from "./agreement.ts";
import { COLUMNS, type Column, columnOf } from "./samples.ts";

interface Count {
  samples: number;
  notOpen: number;
  outside: number;
  missing: number;
  /** largest miss of those that are there, as a part of the bound */
  worst: number;
}

const HEAD = ["samples", "not OL", "outside", "missing", "worst/bound"];
/** At least this share of the diode readings has to be a reading. */
const LEAST_READ = 0.5;

export class Tally {
  readonly #counts = new Map<Column, Count>(
    COLUMNS.map((column) => [column, { samples: 0, notOpen: 0, outside: 0, missing: 0, worst: 0 }]),
  );

  add(one: Compared): void {
    const count = this.#counts.get(columnOf(one));
    if (count === undefined) throw new Error(`there is no column for ${one.check.mode}`);
    count.samples++;
    if (!one.open) count.notOpen++;
    if (!Number.isFinite(one.miss)) count.missing++;
    else {
      if (one.miss > 1) count.outside++;
      count.worst = Math.max(count.worst, one.miss);
    }
  }

  /** Samples outside the bounds or missing. */
  get failures(): number {
    return [...this.#counts.values()].reduce((sum, { outside, missing }) => sum + outside + missing, 0);
  }

  get samples(): number {
    return [...this.#counts.values()].reduce((sum, { samples }) => sum + samples, 0);
  }

  /** What is wrong with the sample itself, or null: too many diode readings are OL, or a column is empty. */
  complaint(): string | null {
    const empty = COLUMNS.filter((column) => this.#counts.get(column)?.samples === 0);
    if (empty.length > 0) return `no sample of ${empty.join(", ")}`;
    const diode = this.#counts.get("diode");
    if (diode === undefined || diode.notOpen < LEAST_READ * diode.samples)
      return "more than half of the diode readings are OL";
    return null;
  }

  /** One line a column under a head. */
  lines(): readonly string[] {
    const line = (title: string, cells: readonly (string | number)[]) =>
      [title.padEnd(12), ...cells.map((cell) => String(cell).padStart(12))].join("");
    const rows = [...this.#counts].map(([column, count]) => {
      const share = `${((100 * count.notOpen) / Math.max(1, count.samples)).toFixed(0)} %`;
      return line(column, [count.samples, share, count.outside, count.missing, count.worst.toFixed(4)]);
    });
    return [line("", HEAD), ...rows];
  }
}
