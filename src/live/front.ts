/** Mains to bus as it settled: what gave way at switch-on, what the bus then is, and whether the feed can carry the small supply. */
import type { GivenWay } from "./gives-way.ts";
import type { PowerPath } from "./power-path.ts";
import type { Cycle, Rough } from "./settle.ts";

export interface FrontFound {
  readonly path: PowerPath;
  readonly settled: Rough;
  /** under a second after switch-on, inrush parts cold and nothing drawn */
  readonly first: Cycle;
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

  get first(): Cycle {
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
    return this.#found.settled.cycle.limited[0] ?? 0;
  }

  /** The same after these gave way. */
  after(gave: readonly GivenWay[]): Front {
    return new Front({ ...this.#found, gave });
  }
}

/** Volts between two nets as they move through the settled cycle; null where one is not in the path. */
export function waveBetween(
  front: Pick<Front, "path" | "cycle">,
  zero: string,
  one: string,
  far: string,
): Float64Array | null {
  const wave = (net: string): Float64Array | null | undefined => {
    const number = front.path.nets.get(net);
    return net === zero ? null : number === undefined ? undefined : front.cycle.waves[number];
  };
  const [a, b] = [wave(one), wave(far)];
  if (a === undefined || b === undefined) return null;
  const length = a?.length ?? b?.length ?? 0;
  return Float64Array.from({ length }, (_, k) => (a?.[k] ?? 0) - (b?.[k] ?? 0));
}

export function meanOf(wave: Float64Array): number {
  return wave.reduce((sum, volts) => sum + volts, 0) / wave.length;
}
