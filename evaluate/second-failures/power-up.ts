/** One power-up of a board with hidden faults: what the engine foretold of it, and what broke. */
import type { PowerEvent } from "../../src/bench/event.ts";
import { type Believed, planningInput } from "../../src/job/assess.ts";
import { PowerRisk } from "../../src/planning/power-risk.ts";
import type { Course } from "../players/course.ts";

export interface PowerUp {
  readonly board: string;
  readonly seed: number;
  readonly feed: PowerEvent["feed"];
  /** cold readings before it */
  readonly readings: number;
  /** foretold chance that anything breaks, and of each part with any */
  readonly anyBreaks: number;
  readonly parts: readonly (readonly [string, number])[];
  /** parts with a fault after it that had none before */
  readonly broke: readonly string[];
  /** of these, what a fault that was there brought with it; the rest would have died at any switch-on */
  readonly brought: readonly string[];
}

/** Parts foretold with less than this are not written down. */
const LEAST_CHANCE = 0.001;

/**
 * Powers the board and compares. The log has to allow it.
 * @param believed - of the course as it stands
 */
export async function powerUp(
  board: string,
  seed: number,
  course: Course,
  power: PowerEvent,
  { timeline, belief, priors }: Pick<Believed, "timeline" | "belief" | "priors">,
): Promise<PowerUp> {
  const { job } = course;
  const risk = new PowerRisk(planningInput(job, timeline), belief, priors).under(power);
  const before = new Set(course.bench.dead(course.timeline));
  const readings = job.log.filter((event) => event.do === "measure").length;
  await course.take(power);
  const broke = course.bench.dead(course.timeline).filter((name) => !before.has(name));
  const fresh = course.bench.diedOfThemselves?.(course.timeline);
  return {
    board,
    seed,
    feed: power.feed,
    readings,
    anyBreaks: risk.anyBreaks,
    parts: risk.breaks
      .filter(({ probability }) => probability >= LEAST_CHANCE)
      .map(({ part, probability }) => [part, probability] as const),
    broke,
    brought: broke.filter((name) => fresh?.has(name) !== true),
  };
}
