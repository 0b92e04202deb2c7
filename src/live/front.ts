/** Mains to bus as it settled: what gave way at switch-on, what the bus then is, and whether the feed can carry the small supply. */
import type { GivenWay } from "./gives-way.ts";
import type { PowerPath } from "./power-path.ts";
import type { Cycle, Rough, Totals } from "./settle.ts";

export interface FrontFound {
  readonly path: PowerPath;
  readonly settled: Rough;
  /** under a second after switch-on, inrush parts cold and nothing drawn */
  readonly first: Totals;
  readonly gave: readonly GivenWay[];
  /** the outlet's breaker opened: nothing is fed any more */
  readonly tripped: boolean;
  /** mean volts at each small supply's input, with their load on; 0 where it has none in the path */
  readonly supplyVolts: readonly number[];
  /** the same before they draw anything */
  readonly idleVolts: readonly number[];
}

export class Front {
  readonly #found: FrontFound;

  constructor(found: FrontFound) {
    this.#found = found;
  }

  get path(): PowerPath {
    return this.#found.path;
  }

  /** The settled cycle in fine steps, worked out when first asked for. */
  get cycle(): Cycle {
    return this.#found.settled.shown();
  }

  /** The same in coarse steps: volts within a few thousandths. */
  get rough(): Totals {
    return this.#found.settled.cycle;
  }

  get first(): Totals {
    return this.#found.first;
  }

  get gave(): readonly GivenWay[] {
    return this.#found.gave;
  }

  get tripped(): boolean {
    return this.#found.tripped;
  }

  get supplyVolts(): readonly number[] {
    return this.#found.supplyVolts;
  }

  get idleVolts(): readonly number[] {
    return this.#found.idleVolts;
  }

  /** Share of the time that the first source is at its limit. */
  get limited(): number {
    return this.rough.limited[0] ?? 0;
  }

  /** The same after these gave way. */
  after(gave: readonly GivenWay[]): Front {
    return new Front({ ...this.#found, gave });
  }
}

/** Mean volts between two nets over a cycle; null where one is not in the path. */
export function meanBetween(
  path: PowerPath,
  cycle: Totals,
  zero: string,
  one: string,
  far: string,
): number | null {
  const mean = (net: string): number | null => {
    const number = path.nets.get(net);
    return net === zero ? 0 : number === undefined ? null : cycle.meanVolts[number];
  };
  const [a, b] = [mean(one), mean(far)];
  return a === null || b === null ? null : a - b;
}
