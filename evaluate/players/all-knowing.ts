/** A player who knows the truth: fits what is dead, or gives the board up at once. What no bench can beat. */
import { isObtainable, partPrice } from "../../src/money/prices.ts";
import { minutesOf } from "../../src/planning/action-minutes.ts";
import { cureAction } from "../../src/planning/repair-model.ts";
import type { Course } from "./course.ts";
import { lastSeen } from "./hidden-bench.ts";
import { lampThenMains } from "./lamp-then-mains.ts";

const MOST_TRIES = 4;

/** Plays the job to its verdict. */
export async function allKnowing(course: Course): Promise<void> {
  const { board, terms } = course.job;
  for (let round = 0; round < MOST_TRIES && course.verdict === null; round++) {
    const { now } = course.timeline;
    const dead = course.bench.faulty(course.timeline);
    let cost = course.spent;
    for (const name of dead) {
      const part = board.parts.get(name);
      const action = cureAction(board, name);
      if (action === null || (part !== undefined && !isObtainable(part)))
        return course.close("not-repairable");
      cost += part === undefined ? 0 : partPrice(part, terms.newBoardPrice);
      cost += (minutesOf(board, now, action) * terms.ratePerHour) / 60;
    }
    if (cost > terms.agreedPrice) return course.close("not-economic");
    await course.makeSafe();
    for (const name of dead) {
      const action = cureAction(board, name);
      if (action !== null) await course.take(action);
    }
    for (let rung = 0; rung < 2; rung++) {
      const action = lampThenMains(course);
      if (action === null) break;
      await course.take(action);
      const over = course.bench.faulty(course.timeline).length === 0;
      if (over && lastSeen(course.timeline).includes("runs"))
        return course.close(dead.length + round > 0 ? "repaired" : "no-fault");
      await course.take({ do: "unpower" });
      if (course.bench.faulty(course.timeline).length > 0) break;
      await course.makeSafe();
    }
  }
  if (course.verdict === null) await course.close("not-economic");
}
