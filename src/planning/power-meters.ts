/** Meters clipped on before power: where, in words, and what is seen and read together. */
import { type Outcome, refine, shownAs } from "./check-outcomes.ts";
import { type Clips, staysOn } from "./live-clips.ts";
import { type FindingStep, partitionShares } from "./steps.ts";

/** Of a board that is seen to do what it did before: the meters alone. */
export function clipsAlone(clips: readonly Clips[]): Pick<FindingStep, "outcomes" | "shares"> {
  const [first, ...rest] = clips.map(({ partition }) => partition);
  if (first === undefined) return { outcomes: [], shares: [] };
  const joint = rest.reduce(refine, first);
  return { outcomes: joint.outcomes, shares: partitionShares(joint) };
}

export const STRAIGHT_ON = "Nobody reaches inside: the meter, if one is clipped on, stays where it is.";

/** Which lead goes where, and what the meter is set to. */
export function leadsWords({ places: [red, black], what, mode }: Omit<Clips, "partition">): string {
  return `red on ${red}, black on ${black}, ${mode === "acv" ? "AC" : "DC"} volts (${what})`;
}

/** Where the leads go before power; null where no place is better than another. */
export function clipWords(clips: readonly Clips[], behindLamp: boolean): string | null {
  if (clips.length === 0) return null;
  const where = clips.map(leadsWords);
  const why = behindLamp
    ? "A lamp gone dark proves nothing until this shows that the bus stands."
    : "What it shows tells most.";
  return `Clip the meter on first: ${where.join("; second meter ")}. ${why}`;
}

/** What is seen, and where the board stays on, what the meters then show: outcomes of both together. */
export function withReadings(
  seen: readonly string[],
  chances: readonly (readonly number[])[],
  clips: readonly Clips[],
): Pick<FindingStep, "outcomes" | "shares"> {
  const [first, ...rest] = clips.map(({ partition }) => partition);
  const joint = first === undefined ? null : rest.reduce(refine, first);
  const outcomes: Outcome[] = [];
  const shares: Float64Array[] = [];
  const add = (word: string, share: (h: number) => number): void => {
    const row = Float64Array.from(chances, (_, h) => share(h));
    if (row.every((one) => one === 0)) return;
    outcomes.push({ word, low: null, high: null });
    shares.push(row);
  };
  seen.forEach((word, o) => {
    if (joint === null || !staysOn(word)) add(word, (h) => chances[h][o]);
    else
      joint.outcomes.forEach((outcome, c) => {
        add(`${word}, then ${shownAs(outcome)} V`, (h) => (joint.classOf[h] === c ? chances[h][o] : 0));
      });
  });
  return { outcomes, shares };
}
