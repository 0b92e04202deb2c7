/** Which lamp, and how many amps: what limits the feed at a power-up, from what the board draws and what the bench has. */
import { said } from "../messages/said.ts";

/** Share of its watts that a series lamp passes at most to a board behind a rectifier; 0.36 to a load that takes a sine. Computed. */
export const LAMP_SHARE = 0.32;
/** What the board draws is guessed within half as much again: the lamp has to carry that too. From memory. */
const IDLE_MARGIN = 1.5;
/** Idle watts where no model tells: 10 to 20 W for such boards, common practice. */
export const IDLE_WATTS = 20;

/** A series lamp for this board. */
export interface LampChoice {
  readonly watts: number;
  /** does it carry the board's idle load with its margin */
  readonly carries: boolean;
}

/** Lamp watts named by the bench's equipment (`lamp-100`), smallest first. */
export function lampsOf(equipment: readonly string[]): readonly number[] {
  return equipment
    .map((item) => /^lamp-(\d+)$/.exec(item))
    .flatMap((match) => (match === null ? [] : [Number(match[1])]))
    .filter((watts) => watts > 0)
    .sort((a, b) => a - b);
}

/**
 * The smallest lamp at hand that carries the board's idle load with margin, else the largest there is; null where there is none.
 * @param above - only lamps of more watts than this: after one that pulsed
 */
export function lampFor(equipment: readonly string[], idleWatts: number, above = 0): LampChoice | null {
  const lamps = lampsOf(equipment).filter((watts) => watts > above);
  const enough = lamps.find((watts) => LAMP_SHARE * watts >= IDLE_MARGIN * idleWatts);
  if (enough !== undefined) return { watts: enough, carries: true };
  const largest = lamps.at(-1);
  return largest === undefined ? null : { watts: largest, carries: false };
}

/** What to know of the lamp before it is used. */
export function lampAdvice({ watts, carries }: LampChoice, idleWatts: number): string {
  const [lamp, passes] = [`${watts} W`, `${Math.round(watts * LAMP_SHARE)} W`];
  const sentences = [
    idleWatts < 1
      ? said`Series lamp ${lamp} (filament or halogen, never LED): it passes at most about ${passes}, and the board draws about under 1 W at idle.`
      : said`Series lamp ${lamp} (filament or halogen, never LED): it passes at most about ${passes}, and the board draws about ${`${idleWatts.toFixed(0)} W`} at idle.`,
  ];
  if (!carries) sentences.push(said`That is little: slow pulsing may only mean that the lamp is too small.`);
  return sentences.join(" ");
}

/** What to say where the bench has no lamp. */
export const NO_LAMP = said`This bench lists no series lamp: a 100 W filament lamp in series would save parts if a short is left. Without one, power up only through the right fuse and a breaker you can reach.`;

/** Limits that a bench supply is set to, amps (common practice: 0.1, then 0.3). */
const LIMITS = [0.1, 0.2, 0.3, 0.5, 1] as const;

/** The smallest of the usual limits that a good board stays under, with the same margin. */
export function limitFor(goodAmps: number): number {
  return LIMITS.find((amps) => amps >= IDLE_MARGIN * goodAmps) ?? LIMITS[LIMITS.length - 1];
}
