/**
 * No motor is driven before its three windings and its insulation to earth are in the log, or the technician has overruled: a bad one
 * kills the repaired board again. Asked cold, once for each motor, before the first power-up from the mains. The first power comes
 * without it, however well it reads; once the board has borne the mains its plug goes back on (common practice: the trade's rungs).
 */

import { standsWhole } from "../bench/bench-state.ts";
import type { Part } from "../board/board.ts";
import { said } from "../messages/said.ts";
import { benchMinutes } from "../money/minutes.ts";
import { MOTOR_INSULATION } from "../priors/told.ts";
import {
  insulationSentence,
  isCleared,
  isConnected,
  type MotorCheck,
  motorCheck,
  motorsOf,
  WINDINGS,
} from "../safety/motor-check.ts";
import { minutesOf } from "./action-minutes.ts";
import type { DueStep } from "./make-safe.ts";
import { absentParts, type PlanningInput } from "./planning-input.ts";
import { backOf, pullOf } from "./plug-pull.ts";
import { triedRungs } from "./power-ladder.ts";
import type { Action } from "./proposal.ts";

interface Motor {
  readonly part: Part;
  readonly check: MotorCheck;
  readonly connected: boolean;
}

function motorsNow(input: PlanningInput): readonly Motor[] {
  const { board, timeline } = input;
  return motorsOf(board, absentParts(input)).map((part) => ({
    part,
    check: motorCheck(board, timeline, part),
    connected: isConnected(timeline.now, part),
  }));
}

/** Has the board as it is now borne the mains? Before that it is fed without its motor. */
function boreMains({ board, timeline }: PlanningInput): boolean {
  return triedRungs(board, timeline).some(({ id, came }) => (id === "F" || id === "H") && came === "passed");
}

/**
 * What a motor wants before power from the mains: its plug pulled, its windings, its insulation, and its plug back once the board has borne
 * the mains without it. One with something against it stays apart. Null: power may come.
 */
export function motorGate(input: PlanningInput): DueStep | null {
  const { board, timeline } = input;
  const borne = boreMains(input);
  for (const { part, check, connected } of motorsNow(input)) {
    const cleared = isCleared(check);
    if (connected && (!cleared || (!borne && !check.overruled))) {
      const pull = pullOf(board, timeline.now, part);
      if (pull !== null)
        return gate(
          pull.action,
          cleared
            ? said`${part.ref} reads well, and its plug comes off all the same: the first power is without a motor. It goes back on once the board has borne the mains.`
            : said`Before ${part.ref} is driven: its plug off, its windings and its insulation to earth read by themselves. A bad one kills the board again.`,
        );
    }
    if (cleared && (borne || check.overruled) && !standsWhole(timeline.now, part.ref))
      return gate(backOf(timeline.now, part), said`${part.ref} goes back on its plug before power.`);
    if (!connected && !cleared && check.against === null) return reading(part, check, input);
  }
  return null;
}

/** Minutes of all that the gate will still ask for, plugging back included. */
export function minutesOfMotorGate(input: PlanningInput): number {
  const { board, timeline } = input;
  const borne = boreMains(input);
  return motorsNow(input).reduce((minutes, { part, check, connected }) => {
    if (isCleared(check) && (!connected || borne || check.overruled))
      return minutes + backMinutes(input, part);
    if (check.against !== null && !connected) return minutes;
    const pull = connected ? pullOf(board, timeline.now, part) : null;
    const apart = pull === null ? backMinutes(input, part) : pull.minutes + pull.backMinutes;
    const unread = check.windings.filter((ohms) => ohms === null).length;
    return minutes + apart + benchMinutes(board).measure * unread;
  }, 0);
}

/** What the power card says of each motor. */
export function motorWords(input: PlanningInput): readonly string[] {
  return motorsNow(input).map(({ part: { ref }, check, connected }) => {
    if (!connected)
      return check.against === null
        ? said`${ref} stays unplugged: the first power is without a motor.`
        : said`${ref} stays unplugged: ${check.against}.`;
    return check.overruled
      ? said`${ref} is connected unread, as overruled.`
      : said`${ref} reads well and is plugged in.`;
  });
}

function backMinutes({ board, timeline: { now } }: PlanningInput, part: Part): number {
  if (standsWhole(now, part.ref)) return 0;
  if (now.off.has(part.ref)) return minutesOf(board, now, { do: "restore", part: part.ref });
  const up = [...now.lifted].filter((place) => place.startsWith(`${part.ref}.`));
  return up.reduce((minutes, place) => minutes + minutesOf(board, now, { do: "refit", place }), 0);
}

function reading(motor: Part, check: MotorCheck, { board }: PlanningInput): DueStep {
  const { ref } = motor;
  const [first, ...rest] = WINDINGS.filter((_, w) => check.windings[w] === null).map(
    ([a, b]): Action => ({ do: "measure", mode: "ohms", red: `${ref}.${a}`, black: `${ref}.${b}` }),
  );
  if (first !== undefined)
    return {
      ...gate(
        first,
        said`The windings of ${ref}, at its own plug, have to read alike; one that differs would take the new parts with it.`,
        rest,
      ),
      inHand: ref,
    };
  const limit = insulationSentence(board, motor);
  if (motor.pins.has("pe"))
    return {
      ...gate(
        { do: "measure", mode: "ohms", red: `${ref}.u`, black: `${ref}.pe` },
        [said`Insulation of ${ref} to its earth, its plug off.`, limit].join(" "),
      ),
      inHand: ref,
    };
  return gate(
    { do: "answer", question: MOTOR_INSULATION.question, answer: MOTOR_INSULATION.notRead },
    [
      said`Insulation of ${ref} from a winding to its frame, its plug off, in megohms: an insulation tester on the motor alone, never on the board; else the highest ohms range.`,
      limit,
      said`Not read, it stays unplugged.`,
    ].join(" "),
  );
}

function gate(action: Action, why: string, row: readonly Action[] = []): DueStep {
  return { action, row, why, expect: [], gate: "motor" };
}
