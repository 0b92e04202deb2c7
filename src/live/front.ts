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
  /** mean volts at the small supply's input, with its load on; null where it has no input in the path */
  readonly supplyVolts: number | null;
  /** the same before it draws anything */
  readonly idleVolts: number | null;
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

  get supplyVolts(): number | null {
    return this.#found.supplyVolts;
  }

  get idleVolts(): number | null {
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
