import type { Context, MiddlewareHandler } from "hono";
import { bodyLimit } from "hono/body-limit";
import { said } from "../messages/said.ts";
import type { Parsed } from "../units/outcome.ts";
import { problem } from "./answers.ts";

/** Refuses a body over `maxSize` bytes before it is taken in. */
export function limitBody(maxSize: number): MiddlewareHandler {
  return bodyLimit({
    maxSize,
    onError: (context) =>
      problem(context, said`the body is larger than ${maxSize / 1_000_000} MB, the most accepted here`, 413),
  });
}

/** The body as JSON. Asking for the JSON content type also keeps out plain forms of foreign pages. */
export async function readJson(context: Context): Promise<Parsed<unknown>> {
  const type = context.req.header("content-type") ?? "";
  if (!/^application\/json\s*(;|$)/i.test(type)) {
    return { ok: false, problem: `content-type: "${type}" is not application/json` };
  }
  try {
    return { ok: true, value: JSON.parse(await context.req.text()) };
  } catch (error) {
    return {
      ok: false,
      problem: `body: not JSON (${error instanceof Error ? error.message : String(error)})`,
    };
  }
}
