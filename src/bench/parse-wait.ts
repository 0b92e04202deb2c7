/** Reads a `wait` and a `resume`: the job put aside, and taken up again. */
import { said } from "../messages/said.ts";
import { type Fields, present } from "../units/fields.ts";
import type { ResumeEvent, WaitEvent } from "./event.ts";
import { WAITS_FOR } from "./words.ts";

type Stamped = Pick<WaitEvent, "id" | "at" | "who">;

export function readWait(event: Fields, stampFields: readonly string[], stamp: Stamped): WaitEvent {
  event.only([...stampFields, "for", "what"], "wait");
  event.require("for");
  if (event.has("what") && event.text("what") === "") event.complain("what", said`is empty`);
  return present<WaitEvent>({
    do: "wait",
    for: event.word("for", WAITS_FOR) ?? "part",
    what: event.text("what"),
    ...stamp,
  });
}

export function readResume(event: Fields, stampFields: readonly string[], stamp: Stamped): ResumeEvent {
  event.only(stampFields, "resume");
  return { do: "resume", ...stamp };
}
