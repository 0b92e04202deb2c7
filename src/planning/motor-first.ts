/** No motor is connected before its three windings and its insulation to earth are in the log, or the technician has overruled. */
import type { TimelineEntry } from "../bench/timeline.ts";
import type { Part } from "../board/board.ts";
import { MOTOR_INSULATION } from "../priors/told.ts";
import {
  insulationWords,
  type MotorCheck,
  motorCheck,
  motorCleared,
  motorConnected,
  motorsOf,
  WINDINGS,
} from "../safety/motor-check.ts";
import type { DueStep } from "./make-safe.ts";
import { absentParts, type PlanningInput } from "./planning-input.ts";
import { triedRungs } from "./power-ladder.ts";
import type { Action } from "./proposal.ts";

/**
 * Before a rung that would turn a motor: it comes off the board. Null where none hangs on it, or where its readings let it run.
 */
export function unplugFirst(input: PlanningInput): DueStep | null {
  const { board, timeline } = input;
  const motor = motorsOf(board, absentParts(input)).find(
    (one) => motorConnected(timeline.now, one) && !motorCleared(motorCheck(board, timeline, one)),
  );
  if (motor === undefined) return null;
  return step(
    { do: "remove", part: motor.ref },
    `Power comes first without ${motor.ref}: pull its plug. It goes back once its windings and its insulation have been read.`,
  );
}

/**
 * After the board has run on the mains without its motor: the motor is read while it is apart, then it goes back. Null where there is
 * no motor to put back, or nothing that lets it be.
 */
export function motorStep(input: PlanningInput): DueStep | null {
  const { board, timeline } = input;
  const last = triedRungs(board, timeline).at(-1);
  if (timeline.now.powered || last?.id !== "F" || !last.seen.includes("runs")) return null;
  const motor = motorsOf(board, absentParts(input)).find((one) => !motorConnected(timeline.now, one));
  if (motor === undefined) return null;
  const check = motorCheck(board, timeline, motor);
  if (check.against !== null && !check.overruled)
    return notedAgainst(timeline.entries, motor) ? null : noteAgainst(motor, check.against);
  return readings(motor, check, input) ?? putBack(motor, timeline.now);
}

function readings(motor: Part, check: MotorCheck, { board }: PlanningInput): DueStep | null {
  if (motorCleared(check)) return null;
  const { ref } = motor;
  const [first, ...rest] = WINDINGS.filter((_, w) => check.windings[w] === null).map(
    ([a, b]): Action => ({ do: "measure", mode: "ohms", red: `${ref}.${a}`, black: `${ref}.${b}` }),
  );
  if (first !== undefined)
    return step(
      first,
      `The board runs without its motor. Before ${ref} goes on: its three windings, at its own plug, have to read alike; one that differs would take the new parts with it.`,
      rest,
    );
  const limit = `${insulationWords(board, motor)}; the maker's limit goes before it.`;
  if (motor.pins.has("pe"))
    return step(
      { do: "measure", mode: "ohms", red: `${ref}.u`, black: `${ref}.pe` },
      `Insulation of ${ref} to its earth, its plug pulled. ${limit}`,
    );
  return step(
    { do: "answer", question: MOTOR_INSULATION.question, answer: "" },
    `Insulation of ${ref} from a winding to its frame, its plug pulled, in megohms: with an insulation tester on the motor alone, never on the board; else on the highest ohms range. ${limit}`,
  );
}

/** The whole motor, or contact by contact where its plug was pulled so. */
function putBack({ ref }: Part, { off, lifted }: PlanningInput["bench"]): DueStep | null {
  const why = `${ref} reads well: it goes back on its plug, and the board runs it.`;
  if (off.has(ref)) return step({ do: "restore", part: ref }, why);
  const place = [...lifted].sort().find((one) => one.startsWith(`${ref}.`));
  return place === undefined ? null : step({ do: "refit", place }, why);
}

function noteAgainst({ ref }: Part, against: string): DueStep {
  return step(
    { do: "note", text: `${ref} not connected: ${against}` },
    `${against[0].toUpperCase()}${against.slice(1)}. It would kill this board again: it is not connected, and the customer is told before the board goes out.`,
  );
}

function notedAgainst(entries: readonly TimelineEntry[], { ref }: Part): boolean {
  return entries.some(({ event }) => event.do === "note" && event.text.startsWith(`${ref} not connected`));
}

function step(action: Action, why: string, row: readonly Action[] = []): DueStep {
  return { action, row, why, expect: [] };
}
