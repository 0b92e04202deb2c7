/** The shop's stock as its events leave it. Counts never go below nothing: what was fitted beyond them says that the count was wrong. */
import type { PartKind } from "../../board/board.ts";
import { type CatalogueType, keyOfName, type LineName, type StockLine } from "../catalogue.ts";
import { STANDARD_TYPES } from "../standard-types.ts";
import type { CountEvent, MovedBy, StockEvent } from "./stock-event.ts";

/** One line of stock now. */
export interface KeptLine extends StockLine {
  /** how many were fitted from here beyond what was counted: count this line again */
  readonly short: number;
}

/** What a caller may ask of a stock. */
export interface Stock {
  /** in the order in which they first came in */
  lines(): readonly KeptLine[];
  line(name: LineName): KeptLine | null;
}

type Lying = Omit<KeptLine, "type"> & { readonly name: string };

interface Moved {
  readonly line: LineName;
  /** what the count changed by: nothing where there was none to take */
  readonly by: -1 | 0 | 1;
}

const movedKey = ({ job, event, part }: MovedBy) => JSON.stringify([job, event, part]);

export class StockFold implements Stock {
  readonly #types = new Map<string, CatalogueType>();
  readonly #lines = new Map<string, Lying>();
  readonly #moved = new Map<string, Moved>();

  lines(): readonly KeptLine[] {
    return [...this.#lines.values()].map((lying) => this.#kept(lying));
  }

  line(name: LineName): KeptLine | null {
    const lying = this.#lines.get(keyOfName(name));
    return lying === undefined ? null : this.#kept(lying);
  }

  /** Takes in the next event. Every event is possible: what a bench did has happened, whatever the list says. */
  add(event: StockEvent): void {
    if (event.do === "count") {
      this.#count(event);
      return;
    }
    const key = movedKey(event);
    const before = this.#moved.get(key);
    if (event.do === "back") {
      this.#moved.delete(key);
      if (before !== undefined) this.#putBack(before);
      return;
    }
    if (before !== undefined) return;
    if (event.do === "put") this.#know(event.line.name, event.kind);
    const by = event.do === "put" ? this.#give(event.line) : this.#take(event.line);
    this.#moved.set(key, { line: event.line, by });
  }

  #count({ lines, gone }: CountEvent): void {
    for (const name of gone) this.#lines.delete(keyOfName(name));
    for (const { type, ...rest } of lines) {
      this.#types.set(type.name, type);
      const lying = { name: type.name, ...rest, short: 0 };
      this.#lines.set(keyOfName(lying), lying);
    }
  }

  #putBack({ line, by }: Moved): void {
    if (by === -1) this.#give(line);
    else if (by === 1) this.#take(line);
    else this.#change(line, (lying) => ({ ...lying, short: Math.max(0, lying.short - 1) }));
  }

  #take(name: LineName): -1 | 0 {
    const count = this.#lines.get(keyOfName(name))?.count ?? 0;
    this.#change(name, (lying) =>
      count > 0 ? { ...lying, count: count - 1 } : { ...lying, short: lying.short + 1 },
    );
    return count > 0 ? -1 : 0;
  }

  /** Into its line, which is made where it is missing. */
  #give(name: LineName): 1 {
    const key = keyOfName(name);
    const fresh: Lying = { ...name, count: 0, price: null, supplier: null, short: 0 };
    const lying = this.#lines.get(key) ?? fresh;
    this.#lines.set(key, { ...lying, count: (lying.count ?? 0) + 1 });
    return 1;
  }

  #change(name: LineName, change: (lying: Lying) => Lying): void {
    const key = keyOfName(name);
    const lying = this.#lines.get(key);
    if (lying !== undefined) this.#lines.set(key, change(lying));
  }

  #know(name: string, kind: PartKind): void {
    if (this.#types.has(name)) return;
    const standard = STANDARD_TYPES.find((type) => type.name === name);
    this.#types.set(name, standard ?? { name, kind, ratings: {}, source: null });
  }

  #kept({ name, ...rest }: Lying): KeptLine {
    const type = this.#types.get(name);
    if (type === undefined) throw new Error(`stock of ${name}, a type that nobody described`);
    return { type, ...rest };
  }
}

/** The stock that a list of events leaves. */
export function stockOf(events: Iterable<StockEvent>): StockFold {
  const stock = new StockFold();
  for (const event of events) stock.add(event);
  return stock;
}

/** As a catalogue has it. */
export function stockLine({ short: _, ...line }: KeptLine): StockLine {
  return line;
}
