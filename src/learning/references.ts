/** Readings of good boards, pooled: mean and spread on the scale of the mode, and how many they are. */
import type { ReferenceReading } from "../board/board.ts";

export type GoodReading = Pick<ReferenceReading, "mode" | "red" | "black" | "reading">;

const toScale = (mode: ReferenceReading["mode"], reading: number): number =>
  mode === "diode" ? reading : Math.log(reading);
const fromScale = (mode: ReferenceReading["mode"], value: number): number =>
  mode === "diode" ? value : Math.exp(value);

interface Sums {
  readonly face: Pick<ReferenceReading, "mode" | "red" | "black">;
  count: number;
  mean: number;
  /** of squared distances from the mean */
  squares: number;
}

/** What stood before and the new readings as one, in the order in which the checks were first met. Readings are above 0. */
export function pooledReferences(
  before: readonly ReferenceReading[],
  readings: readonly GoodReading[],
): readonly ReferenceReading[] {
  const sums = new Map<string, Sums>();
  const add = (face: Sums["face"], count: number, mean: number, squares: number) => {
    const key = `${face.mode} ${face.red} ${face.black}`;
    const there = sums.get(key);
    if (there === undefined) {
      sums.set(key, { face, count, mean, squares });
      return;
    }
    const whole = there.count + count;
    there.squares += squares + ((there.count * count) / whole) * (mean - there.mean) ** 2;
    there.mean += (count / whole) * (mean - there.mean);
    there.count = whole;
  };
  for (const { mode, red, black, reading, spread, count } of before)
    add({ mode, red, black }, count, toScale(mode, reading), (count - 1) * spread ** 2);
  for (const { mode, red, black, reading } of readings)
    add({ mode, red, black }, 1, toScale(mode, reading), 0);
  return [...sums.values()].map(({ face, count, mean, squares }) => ({
    ...face,
    reading: Number(fromScale(face.mode, mean).toPrecision(5)),
    spread: count > 1 ? Number(Math.sqrt(squares / (count - 1)).toPrecision(3)) : 0,
    count,
  }));
}

/** What good boards beside those of the jobs read, by what the board is known by. */
export function referencesOf(
  lessons: readonly { readonly identity: string; readonly good: readonly GoodReading[] }[],
): Map<string, readonly ReferenceReading[]> {
  const readings = new Map<string, GoodReading[]>();
  for (const { identity, good } of lessons)
    if (good.length > 0) readings.set(identity, [...(readings.get(identity) ?? []), ...good]);
  return new Map([...readings].map(([name, read]) => [name, pooledReferences([], read)]));
}
