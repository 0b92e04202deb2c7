/** A good board beside the one on the bench: after each reading the same is asked of the good one, until both have been read. */
import type { BesideEvent, JobEvent } from "../../bench/event.ts";
import type { Timeline } from "../../bench/timeline.ts";
import type { Board } from "../../board/board.ts";
import { askedBeside, comparable, comparedReadings } from "../../job/good-beside.ts";
import { actionWords } from "../../job/words.ts";
import { asReferencesWere } from "../../meter/good-readings.ts";
import type { Parsed } from "../../units/outcome.ts";
import { table } from "../answer-text.ts";
import { parseTypedReadings } from "./typed-reading.ts";

type Asked = Omit<BesideEvent, "reading">;

export class BesideTurns {
  #on = false;
  #asked: readonly Asked[] = [];

  get waiting(): boolean {
    return this.#asked.length > 0;
  }

  /** Gives the line to show. */
  turn(word: string): Parsed<string> {
    if (word !== "on" && word !== "off")
      return { ok: false, problem: "write beside on, beside off, or beside MODE RED BLACK READING" };
    this.#on = word === "on";
    this.#asked = [];
    return {
      ok: true,
      value: this.#on
        ? "A good board of this number lies beside: after each reading the same is asked of it. It has to be dead too, each store of its charge proven empty.\n"
        : "No good board beside it any more.\n",
    };
  }

  /** Takes in what was kept: readings of the board are to be taken on the good one too, and those of the good one are done. */
  kept(board: Board, timeline: Timeline, ids: ReadonlySet<string>): void {
    const done = timeline.entries.flatMap(({ event }) =>
      event.do === "beside" && event.id !== undefined && ids.has(event.id) ? [event] : [],
    );
    const isDone = (asked: Asked) =>
      done.some(({ mode, red, black }) => mode === asked.mode && red === asked.red && black === asked.black);
    this.#asked = this.#asked.filter((asked) => !isDone(asked));
    if (!this.#on) return;
    const read = timeline.entries.flatMap(({ event, before }) =>
      event.id !== undefined && ids.has(event.id) && comparable(event, asReferencesWere(board, before))
        ? [askedBeside(event)]
        : [],
    );
    this.#asked = [...this.#asked, ...read];
  }

  /** The next check for the good one, in words. */
  show(board: Board): string {
    const [next] = this.#asked;
    if (next === undefined) return "";
    const more = this.#asked.length === 1 ? "" : ` (${this.#asked.length - 1} more after it)`;
    return `${actionWords(board, { ...next, reading: "OL" })}${more}\n  what it reads, or: skip\n`;
  }

  skip(): void {
    this.#asked = this.#asked.slice(1);
  }

  /** What a line of bare readings says of the good one; null where it is none and something else is meant. */
  answer(words: readonly string[], stamp: () => { id: string; at: string }): Parsed<JobEvent[]> | null {
    const [next] = this.#asked;
    if (next === undefined) return null;
    const readings = parseTypedReadings(words, next.mode);
    if (!readings.ok) return null;
    const events: JobEvent[] = [];
    for (const [at, { reading, climbing }] of readings.value.entries()) {
      const asked = this.#asked[at];
      if (asked === undefined)
        return { ok: false, problem: `${words.length} readings for ${this.#asked.length} checks` };
      if (climbing || (typeof reading !== "number" && reading !== "OL"))
        return { ok: false, problem: `"${words[at]}": of the good one write the digits, settled, or OL` };
      events.push({ ...asked, reading, ...stamp() });
    }
    return { ok: true, value: events };
  }
}

/** `ohms: red on V15, black on GND   here 210 ohm   good 1.5 kohm   7.1 times lower`; `from` leaves out what stands earlier in the log. */
export function comparedText(board: Board, timeline: Timeline, from = 0): string {
  const shown = comparedReadings(board, timeline).filter(({ logIndex }) => logIndex >= from);
  if (shown.length === 0 && from === 0) return "Nothing was read on both boards yet.\n";
  return table(
    shown.map(({ check, here, good, words, differs }) => [
      `${differs ? "*" : " "} ${check}`,
      `here ${here}`,
      `good ${good}`,
      words,
    ]),
  );
}
