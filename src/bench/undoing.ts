import { said } from "../messages/said.ts";
import { quoted } from "../units/nearest.ts";
import type { JobEvent } from "./event.ts";

/** Keeps which events of a growing log count as never done. Undoing an undo restores what it took away. */
export class Undoing {
  readonly #indexOf = new Map<string, number>();
  /** log index of an undo event -> log index of what it takes away */
  readonly #target = new Map<number, number>();
  readonly #undone = new Set<number>();

  /** Takes in the next event; gives `field: why` where its id or its undo is impossible. */
  note(event: JobEvent, index: number): string | null {
    if (event.do === "undo") {
      const target = this.#indexOf.get(event.of);
      if (target === undefined) return `of: ${said`no earlier event has the id ${quoted(event.of)}`}`;
      if (this.#undone.has(target)) return `of: ${said`the event ${quoted(event.of)} is undone already`}`;
      this.#target.set(index, target);
      this.#setUndone(target, true);
    }
    if (event.id === undefined) return null;
    const before = this.#indexOf.get(event.id);
    if (before !== undefined)
      return `id: ${said`${quoted(event.id)} is the id of log[${before}] too; ids are unique in a job`}`;
    this.#indexOf.set(event.id, index);
    return null;
  }

  isUndone(index: number): boolean {
    return this.#undone.has(index);
  }

  /** An undo that is itself undone gives its target back; one that is restored takes it away again. */
  #setUndone(index: number, undone: boolean): void {
    let at: number | undefined = index;
    for (let away = undone; at !== undefined; away = !away) {
      if (away) this.#undone.add(at);
      else this.#undone.delete(at);
      at = this.#target.get(at);
    }
  }
}
