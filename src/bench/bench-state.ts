import type { Place } from "./event.ts";

/** A resistor clipped on between two places: part of the circuit until it is taken off. */
export interface Clip {
  readonly at: readonly [Place, Place];
  readonly ohms: number;
}

/** The board on the bench now (or at one event of the log): what is not as it was soldered. */
export interface BenchState {
  /** pins off their pads, as `REF.pin` */
  readonly lifted: ReadonlySet<Place>;
  /** parts off the board, or never come with it (`absent`) */
  readonly off: ReadonlySet<string>;
  readonly clips: readonly Clip[];
  readonly powered: boolean;
}

/** Two states with the same key show the same readings: the part of a cache key that the bench gives. */
export function benchKey(state: BenchState): string {
  const clips = state.clips.map((clip) => `${clip.at[0]}^${clip.at[1]}^${clip.ohms}`).sort();
  return [[...state.lifted].sort().join(","), [...state.off].sort().join(","), clips.join(",")].join("|");
}

/** Is the part on the board with every pin, or every contact of its plug, in its place? */
export function standsWhole({ off, lifted }: Pick<BenchState, "off" | "lifted">, ref: string): boolean {
  return !off.has(ref) && ![...lifted].some((place) => place.startsWith(`${ref}.`));
}
