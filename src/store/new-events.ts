import type { KeptEvent, Refusal } from "../job/job-store.ts";
import { canonicalJson } from "../job/same-content.ts";
import { said } from "../messages/said.ts";

/**
 * Of the events posted, those the log does not hold yet, in the order given. An id that is there (or twice in the post)
 * with the same content counts as done; with different content the whole post is refused.
 */
export function sortNewEvents(
  log: readonly KeptEvent[],
  posted: readonly KeptEvent[],
): { readonly ok: true; readonly added: readonly KeptEvent[] } | Refusal {
  const contentOf = new Map(log.map((event) => [event.id, canonicalJson(event)]));
  const added: KeptEvent[] = [];
  for (const event of posted) {
    const content = canonicalJson(event);
    const there = contentOf.get(event.id);
    if (there === undefined) {
      contentOf.set(event.id, content);
      added.push(event);
    } else if (there !== content) {
      return {
        ok: false,
        kind: "conflict",
        problem: said`event "${event.id}" is in the log already with other content; give the new one an id of its own`,
      };
    }
  }
  return { ok: true, added };
}
