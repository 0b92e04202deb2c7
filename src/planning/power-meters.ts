/** Meters clipped on before power: where, in words, and what is seen and read together. */

import { staysOn } from "../bench/stays-on.ts";
import { said } from "../messages/said.ts";
import { type Outcome, type Partition, refine, shownAs } from "./check-outcomes.ts";
import type { Clips } from "./live-clips.ts";
import { type FindingStep, partitionShares } from "./steps.ts";

/** Of a board that is seen to do what it did before: the meters alone. */
export function clipsAlone(clips: readonly Clips[]): Pick<FindingStep, "outcomes" | "shares"> {
  const [first, ...rest] = clips.map(({ partition }) => partition);
  if (first === undefined) return { outcomes: [], shares: [] };
  const joint = rest.reduce(refine, first);
  return { outcomes: joint.outcomes, shares: partitionShares(joint) };
}

export const STRAIGHT_ON = said`Nobody reaches inside: the meter, if one is clipped on, stays where it is.`;

/** Which lead goes where, and what the meter is set to. */
function leadsWords({ places: [red, black], what, mode }: Omit<Clips, "partition">): string {
  return mode === "acv"
    ? said`red on ${red}, black on ${black}, AC volts (${what})`
    : said`red on ${red}, black on ${black}, DC volts (${what})`;
}

/** The leads of one meter, or of both. */
export function metersWords(clips: readonly Omit<Clips, "partition">[]): string {
  const [first = "", ...rest] = clips.map(leadsWords);
  return rest.reduce((words, next) => said`${words}; second meter ${next}`, first);
}

/** Where the leads go before power; null where no place is better than another. */
export function clipWords(clips: readonly Clips[], behindLamp: boolean): string | null {
  if (clips.length === 0) return null;
  return behindLamp
    ? said`Clip the meter on first: ${metersWords(clips)}. A lamp gone dark proves nothing until this shows that the bus stands.`
    : said`Clip the meter on first: ${metersWords(clips)}. What it shows tells most.`;
}

/** What a meter would show, with its unit. */
function inVolts({ partition }: Clips): Partition {
  return {
    ...partition,
    outcomes: partition.outcomes.map((outcome) => ({
      word: `${shownAs(outcome)} V`,
      low: null,
      high: null,
    })),
  };
}

/** What is seen, and where the board stays on, its signs of life and what the meters then show: outcomes of all together. */
export function withReadings(
  seen: readonly string[],
  chances: readonly (readonly number[])[],
  clips: readonly Clips[],
  signs: Partition | null = null,
): Pick<FindingStep, "outcomes" | "shares"> {
  const [first, ...rest] = [...(signs === null ? [] : [signs]), ...clips.map(inVolts)];
  const joint = first === undefined ? null : rest.reduce(refine, first);
  const outcomes: Outcome[] = [];
  const shares: Float64Array[] = [];
  const add = (outcome: Outcome, share: (h: number) => number): void => {
    const row = Float64Array.from(chances, (_, h) => share(h));
    if (row.every((one) => one === 0)) return;
    outcomes.push(outcome);
    shares.push(row);
  };
  seen.forEach((word, o) => {
    const sight = { word, low: null, high: null };
    if (joint === null || !staysOn(word)) add(sight, (h) => chances[h][o]);
    else
      joint.outcomes.forEach((outcome, c) => {
        const then = shownAs(outcome);
        add({ ...sight, then }, (h) => (joint.classOf[h] === c ? chances[h][o] : 0));
      });
  });
  return { outcomes, shares };
}
