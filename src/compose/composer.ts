/**
 * Collects the parts of a board stage by stage into a board file's content. References are numbered per kind, pins join nets
 * by name, and what is given twice is refused.
 */
import type { PartKind, PartMinutes, PartValue } from "../board/board.ts";

/** What a part may say beyond its pins and value. */
export interface Extra {
  readonly ref?: string;
  readonly price?: number;
  readonly role?: string;
  readonly plugged?: boolean;
  readonly obtainable?: boolean;
  readonly minutes?: PartMinutes;
}

export interface BoardHead {
  readonly name: string;
  readonly family: string;
  readonly supply: {
    readonly kind: "ac" | "dc";
    readonly volts: number;
    readonly hz: number;
    readonly at: readonly string[];
  };
  readonly zero: string;
}

export class Composer {
  readonly #head: BoardHead;
  readonly #parts = new Map<string, Record<string, unknown>>();
  readonly #nets = new Map<string, string>();
  readonly #rails = new Map<string, Record<string, unknown>>();
  readonly #points = new Map<string, Record<string, unknown>>();
  readonly #counts = new Map<string, number>();
  readonly #priced: boolean;
  #stage = "";
  #doubted: ReadonlySet<string> | "all" = new Set();

  /** `priced` false: the stages' prices are left out, and the program's own table counts. */
  constructor(head: BoardHead, { priced = true }: { readonly priced?: boolean } = {}) {
    this.#head = head;
    this.#priced = priced;
  }

  /** Parts added from here on belong to this stage. */
  stage(name: string): void {
    this.#stage = name;
  }

  /** Parts that `build` adds to these stages, or to any, carry `assumed`: nobody has seen them. */
  doubting(stages: readonly string[] | "all", build: () => void): void {
    const before = this.#doubted;
    this.#doubted = stages === "all" ? stages : new Set(stages);
    build();
    this.#doubted = before;
  }

  /** Adds a part and returns its reference. `prefix` numbers it unless a reference is given. */
  part(
    prefix: string,
    kind: PartKind,
    pins: Readonly<Record<string, string>>,
    value: PartValue,
    extra: Extra = {},
  ): string {
    const { ref: given, ...said } = extra;
    const { price: _, ...unpriced } = said;
    const doubted = this.#doubted === "all" || this.#doubted.has(this.#stage);
    const ref = given ?? `${prefix}${this.#next(prefix)}`;
    if (this.#parts.has(ref)) throw new Error(`part ${ref} stands on the board twice`);
    this.#parts.set(ref, {
      kind,
      pins,
      value,
      stage: this.#stage,
      ...(this.#priced ? said : unpriced),
      ...(doubted ? { assumed: true } : {}),
    });
    return ref;
  }

  #next(prefix: string): number {
    let count = this.#counts.get(prefix) ?? 0;
    do count++;
    while (this.#parts.has(`${prefix}${count}`));
    this.#counts.set(prefix, count);
    return count;
  }

  resistor(a: string, b: string, ohms: number, value: PartValue = {}, extra: Extra = {}): string {
    return this.part("R", "resistor", { "1": a, "2": b }, { ohms, tolerance: 0.05, ...value }, extra);
  }

  capacitor(
    plus: string,
    minus: string,
    farads: number,
    volts: number,
    type: string,
    extra: Extra = {},
  ): string {
    return this.part("C", "capacitor", { plus, minus }, { farads, volts, type }, extra);
  }

  /** 100 nF beside a chip, or as given. */
  ceramic(plus: string, minus: string, farads = 100e-9, volts = 50, extra: Extra = {}): string {
    return this.capacitor(plus, minus, farads, volts, "ceramic", extra);
  }

  diode(a: string, k: string, type: string, volts: number, amps: number, extra: Extra = {}): string {
    return this.part("D", "diode", { a, k }, { type, volts, amps }, extra);
  }

  zener(a: string, k: string, volts: number, extra: Extra = {}): string {
    return this.part("ZD", "zener", { a, k }, { volts, watts: 0.5 }, extra);
  }

  link(a: string, b: string, extra: Extra = {}): string {
    return this.part("J", "link", { "1": a, "2": b }, { ohms: 0.01 }, extra);
  }

  net(name: string, label: string): void {
    this.#nets.set(name, label);
  }

  /** A rail; `against` is its own 0 V where that is not the board's. */
  rail(name: string, net: string, volts: number, tolerance: number, from: string, against?: string): void {
    this.#rails.set(name, { net, volts, tolerance, from, ...(against === undefined ? {} : { against }) });
  }

  /** A place by what the eye finds, and where known by its place on the picture. */
  point(name: string, net: string, at: string, xy?: readonly [number, number]): void {
    this.#points.set(name, { net, at, ...(xy === undefined ? {} : { xy }) });
  }

  /** The content of the board file. Labels of nets that no pin names are refused. */
  file(): Record<string, unknown> {
    const named = new Set(
      [...this.#parts.values()].flatMap((part) => Object.values(part.pins as Record<string, string>)),
    );
    for (const net of this.#nets.keys())
      if (!named.has(net)) throw new Error(`net ${net} has a label and no pin`);
    return {
      format: "faultwright-board/1",
      ...this.#head,
      nets: Object.fromEntries([...this.#nets].map(([net, label]) => [net, { label }])),
      parts: Object.fromEntries(this.#parts),
      rails: Object.fromEntries(this.#rails),
      points: Object.fromEntries(this.#points),
    };
  }
}
