import type { Context } from "hono";
import type { Refusal } from "../job/job-store.ts";
import { isSaid, plain } from "../messages/said.ts";
import type { ErrorAnswer } from "../wire/job-api.ts";

const STATUS_OF = { "no-such-job": 404, conflict: 409, "not-accepted": 422, "moved-on": 412 } as const;

export function refusal(context: Context, refused: Refusal): Response {
  return problem(context, refused.problem, STATUS_OF[refused.kind]);
}

/** One line, whatever the message held. */
export function problem(
  context: Context,
  text: string,
  status: 400 | 403 | 404 | 409 | 412 | 413 | 415 | 422 | 500,
): Response {
  const line = text.replace(/\s+/g, " ").trim();
  const answer: ErrorAnswer = { error: plain(line), ...(isSaid(line) ? { said: line } : {}) };
  return context.json(answer, status);
}
