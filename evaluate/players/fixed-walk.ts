/** The customary fixed walk as a player: takes its checks in order, lifts what reads short, replaces, powers up. */
import type { Reading } from "../../src/bench/event.ts";
import type { Part } from "../../src/board/board.ts";
import { isObtainable } from "../../src/money/prices.ts";
import type { Action } from "../../src/planning/proposal.ts";
import type { Course } from "./course.ts";
import { lastSeen } from "./hidden-bench.ts";
import { lampThenMains } from "./lamp-then-mains.ts";
import { acrossNets, isBad, WALK_RULES, type WalkCheck, walkChecks } from "./walk-rules.ts";

/** What a player with more than the meter's word may add to the walk; the plain walk adds nothing. */
export interface WalkAdvice {
  /** asked after every reading: a verdict to stop with, or null */
  stop(course: Course): "not-economic" | "not-repairable" | null;
  /** asked before a short is chased by lifting: a part to replace at once, or null */
  culprit(course: Course): string | null;
}

export const NO_ADVICE: WalkAdvice = { stop: () => null, culprit: () => null };

/** Plays the job to its verdict. */
export async function fixedWalk(course: Course, advice: WalkAdvice = NO_ADVICE): Promise<void> {
  await course.makeSafe();
  for (let round = 0; round < WALK_RULES.mostRounds && course.verdict === null; round++) {
    const checks = walkChecks(course.job.board);
    await course.prepare(checks.map(measureOf));
    for (const check of checks) {
      if (course.verdict !== null) return;
      await tryCheck(course, check, advice);
    }
    if (course.verdict !== null) return;
    await powerUp(course);
    if (course.verdict !== null) return;
    await course.makeSafe();
  }
  if (course.verdict === null) await course.close("not-economic");
}

function measureOf({ mode, red, black }: WalkCheck): Action {
  return { do: "measure", mode, red, black };
}

/** Is the reading bad? A check that the bench has no answer to says nothing against the part. */
async function readsBad(course: Course, check: WalkCheck): Promise<boolean> {
  const event = await course.take(measureOf(check));
  const reading: Reading | null = event.do === "measure" ? event.reading : null;
  return reading !== null && isBad(check, reading);
}

async function tryCheck(course: Course, check: WalkCheck, advice: WalkAdvice): Promise<void> {
  const { off } = course.timeline.now;
  if (off.has(check.part)) return;
  const bad = await readsBad(course, check);
  if (await stopped(course, advice)) return;
  if (!bad) return;
  if (check.bad === "open") await replace(course, check.part);
  else await chaseShort(course, check, advice);
}

async function stopped(course: Course, advice: WalkAdvice): Promise<boolean> {
  const verdict =
    advice.stop(course) ?? (course.spent > course.job.terms.agreedPrice ? "not-economic" : null);
  if (verdict !== null && course.verdict === null) await course.close(verdict);
  return course.verdict !== null;
}

/** Fits a new part, or gives the board up where nobody sells it. */
async function replace(course: Course, ref: string): Promise<void> {
  const part = course.job.board.parts.get(ref);
  if (part === undefined) return;
  if (!isObtainable(part)) return course.close("not-repairable");
  await course.take({ do: "replace", part: ref });
}

/** Lifts one part after another until the short is gone: the last one lifted is it. */
async function chaseShort(course: Course, check: WalkCheck, advice: WalkAdvice): Promise<void> {
  const { board } = course.job;
  for (const part of acrossNets(board, check).slice(0, WALK_RULES.mostLifts)) {
    const named = advice.culprit(course);
    if (named !== null) {
      await replace(course, named);
      if (course.verdict !== null || !(await readsBad(course, check))) return;
      continue;
    }
    const undo = await free(course, part, check);
    if (undo === null) continue;
    const gone = !(await readsBad(course, check));
    if (await stopped(course, advice)) return;
    if (gone) return replace(course, part.ref);
    await course.take(undo);
  }
}

/** Takes the part out of the way, by one pin where that is enough; how it is put back, or null where it is out already or was never there. */
async function free(course: Course, part: Part, { red, black }: WalkCheck) {
  const { now } = course.timeline;
  if (now.off.has(part.ref)) return null;
  const pins = [...part.pins].filter(([, net]) => net === red || net === black).map(([pin]) => pin);
  const [pin] = pins;
  if (part.pins.size > 3 || pin === undefined || now.lifted.has(`${part.ref}.${pin}`)) {
    const taken = await course.take({ do: "remove", part: part.ref });
    if (taken.do === "mark") return null;
    return { do: "restore", part: part.ref } as const;
  }
  const lifted = await course.take({ do: "lift", place: `${part.ref}.${pin}` });
  if (lifted.do === "mark") return null;
  return { do: "refit", place: `${part.ref}.${pin}` } as const;
}

/** Power through the lamp where there is one, then on the mains; closes where it runs, or after too many tries. */
async function powerUp(course: Course): Promise<void> {
  for (let rung = 0; rung < 2; rung++) {
    const { timeline } = course;
    if (timeline.entries.filter(({ event }) => event.do === "power").length >= WALK_RULES.mostPowerUps)
      return course.close("not-economic");
    const action = lampThenMains(course);
    if (action === null) return;
    await course.take(action);
    if (lastSeen(course.timeline).includes("runs")) {
      const cured = course.log.some(({ do: what }) => what === "replace");
      return course.close(cured ? "repaired" : "no-fault");
    }
    await course.makeSafe();
  }
}
