/**
 * A stage that stands on a board more than once: the same builder lays it out again with nets of its own, but for those it
 * shares with the rest of the board.
 */
import type { PartKind, PartValue } from "../../src/board/board.ts";
import { type BoardHead, Composer, type Extra } from "../../src/compose/composer.ts";

/** A net of the builder under the name it has on this board. */
export type Shared = Readonly<Record<string, string>>;

const NO_HEAD: BoardHead = {
  name: "",
  family: "",
  supply: { kind: "ac", volts: 230, hz: 50, at: [] },
  zero: "",
};

/** Hands everything on to the board it stands on; nets that are not shared carry the section's name in front. */
export class Section extends Composer {
  readonly #host: Composer;
  readonly #name: string;
  readonly #shared: Shared;

  constructor(host: Composer, name: string, shared: Shared) {
    super(NO_HEAD);
    this.#host = host;
    this.#name = name;
    this.#shared = shared;
  }

  /** The name on the board of a net that the builder calls `net`. */
  on(net: string): string {
    return this.#shared[net] ?? `${this.#name}_${net}`;
  }

  override stage(name: string): void {
    this.#host.stage(name);
  }

  override part(
    prefix: string,
    kind: PartKind,
    pins: Readonly<Record<string, string>>,
    value: PartValue,
    extra: Extra = {},
  ): string {
    const here = Object.fromEntries(Object.entries(pins).map(([pin, net]) => [pin, this.on(net)]));
    return this.#host.part(prefix, kind, here, value, extra);
  }

  override net(name: string, label: string): void {
    // a shared net has its label from the board
    if (this.#shared[name] === undefined) this.#host.net(this.on(name), `${label}, section ${this.#name}`);
  }

  override rail(name: string, net: string, volts: number, tolerance: number, from: string): void {
    this.#host.rail(`${this.#name}_${name}`, this.on(net), volts, tolerance, from);
  }

  override point(name: string, net: string, at: string, xy: readonly [number, number]): void {
    this.#host.point(`${this.#name}_${name}`, this.on(net), `${at}, section ${this.#name}`, xy);
  }

  override file(): never {
    throw new Error("a section is no board: ask the board it stands on for its file");
  }
}
