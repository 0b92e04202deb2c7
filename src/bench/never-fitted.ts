import type { Timeline } from "./timeline.ts";

/**
 * Parts that this very board was found not to have: drawn in its file, marked `absent` on the bench. It was built without them, so that it
 * does not miss them under power, as it would a part that somebody took out.
 */
export function neverFitted({ entries }: Timeline): ReadonlySet<string> {
  const found = new Set<string>();
  for (const { event } of entries) {
    if (event.do !== "mark") continue;
    if (event.as === "absent") found.add(event.part);
    else found.delete(event.part);
  }
  return found;
}
