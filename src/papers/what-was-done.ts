/** What the log says was changed on the board, and how the board ran, one line each. */
import type { JobEvent } from "../bench/event.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { PaperWords } from "./paper-words.ts";

export function whatWasDone({ entries }: Timeline, words: PaperWords): readonly string[] {
  return [...new Set(entries.flatMap(({ event }) => doneLine(event, words) ?? []))];
}

function doneLine(event: JobEvent, words: PaperWords): string | null {
  const { say } = words.speak;
  if (event.do === "replace") {
    const part = words.part(event.part);
    if (event.used === true) return say("done.replacedUsed", { part });
    return event.with === undefined
      ? say("done.replaced", { part })
      : say("done.replacedWith", { part, type: event.with });
  }
  if (event.do !== "clean" && event.do !== "resolder") return null;
  const place =
    event.part === undefined
      ? event.stage === undefined
        ? say("done.board")
        : words.stage(event.stage)
      : words.part(event.part);
  return say(event.do === "clean" ? "done.clean" : "done.resolder", { place });
}

/** Power-ups with what was seen, in their order; what was seen at switching off belongs to the power-up before it. */
export function testRuns({ entries }: Timeline, words: PaperWords): readonly string[] {
  return entries.flatMap(({ event }, index) => {
    if (event.do !== "power") return [];
    const rest = entries.slice(index + 1);
    const next = rest.findIndex((later) => later.event.do === "power");
    const off = (next < 0 ? rest : rest.slice(0, next)).find((later) => later.event.do === "unpower")?.event;
    const seen = [event.observed ?? [], off?.do === "unpower" ? (off.observed ?? []) : []].flat();
    return [
      words.run(
        event,
        [...new Set(seen)].map((one) => `observed.${one}` as const),
      ),
    ];
  });
}

/** Did it run on the mains, and under a load? */
export function ranOnMains({ entries }: Timeline): { readonly mains: boolean; readonly loaded: boolean } {
  let feed: { readonly mains: boolean; readonly load: boolean } = { mains: false, load: false };
  const ran = { mains: false, loaded: false };
  for (const { event } of entries) {
    if (event.do === "power") feed = { mains: event.feed === "mains", load: event.load !== undefined };
    if (event.do !== "power" && event.do !== "unpower") continue;
    if (!feed.mains || ![event.observed ?? []].flat().includes("runs")) continue;
    ran.mains = true;
    ran.loaded ||= feed.load;
  }
  return ran;
}
