/** The power-up that is taken: where the meters are clipped, and what they or the bench supply's own display would show. */
import type { PowerEvent } from "../bench/event.ts";
import { MINUTES } from "../money/minutes.ts";
import { feedSetup } from "../priors/power-outcomes.ts";
import { type Outcome, type Partition, refine, shownAs } from "./check-outcomes.ts";
import type { Hypotheses } from "./hypotheses.ts";
import { BUS_WORDS, bestClips, type Clips, staysOn } from "./live-clips.ts";
import type { PlanningInput } from "./planning-input.ts";
import { seenChances } from "./power-step.ts";
import type { FindingStep } from "./steps.ts";
import { supplyPartition } from "./supply-amps.ts";

/**
 * The same power-up with the meters clipped where they will tell most, or with what the bench supply shows it gives, among the
 * outcomes. For the step that is taken: what a hundred sets of faults would show under power is not worked out for every step
 * that is only weighed.
 */
export function withMeters(
  step: FindingStep & { readonly action: PowerEvent },
  input: PlanningInput,
  hypotheses: Hypotheses,
): FindingStep {
  const { action } = step;
  const chances = seenChances(input, hypotheses, feedSetup(action, input.timeline.now.off));
  const seen = step.outcomes.flatMap(({ word }) => word ?? []);
  if (action.feed === "bench") {
    const amps = supplyPartition(input, hypotheses, action);
    if (amps === null) return step;
    const goesOn = (word: string): boolean => staysOn(word) && word !== "limiting";
    return {
      ...step,
      ...joined(seen, chances, amps, "A", goesOn),
      allMinutes: step.allMinutes + MINUTES.measure,
      lead: "The supply's own display shows what it gives: set volts and limit before it is clipped on, and look twice at which lead is plus.",
    };
  }
  const clips = bestClips(input, hypotheses, action);
  const [first, ...rest] = clips.map(({ partition }) => partition);
  if (first === undefined) return step;
  return {
    ...step,
    ...joined(seen, chances, rest.reduce(refine, first), "V", staysOn),
    action: { ...action, meters: clips.map(({ places }) => places) },
    allMinutes: step.allMinutes + MINUTES.measure * clips.length,
    lead: clipWords(clips, action),
  };
}

function clipWords(clips: readonly Clips[], { feed }: PowerEvent): string {
  const where = clips.map(({ places: [red, black], what }) => `red on ${red}, black on ${black} (${what})`);
  const why =
    feed === "lamp" && clips[0]?.what === BUS_WORDS
      ? "A lamp gone dark proves nothing until the bus has been read."
      : "What it shows tells most.";
  return `Clip the meter on first, DC volts: ${where.join("; second meter ")}. ${why}`;
}

/** What is seen, and where the board stays on, what the meters then show: outcomes of both together. */
function joined(
  seen: readonly string[],
  chances: readonly (readonly number[])[],
  partition: Partition,
  unit: string,
  read: (word: string) => boolean,
): Pick<FindingStep, "outcomes" | "shares"> {
  const outcomes: Outcome[] = [];
  const shares: Float64Array[] = [];
  const add = (word: string, share: (h: number) => number): void => {
    const row = Float64Array.from(chances, (_, h) => share(h));
    if (row.every((one) => one === 0)) return;
    outcomes.push({ word, low: null, high: null });
    shares.push(row);
  };
  seen.forEach((word, o) => {
    if (!read(word)) add(word, (h) => chances[h][o]);
    else
      partition.outcomes.forEach((outcome, c) => {
        add(`${word}, then ${shownAs(outcome)} ${unit}`, (h) =>
          partition.classOf[h] === c ? chances[h][o] : 0,
        );
      });
  });
  return { outcomes, shares };
}
