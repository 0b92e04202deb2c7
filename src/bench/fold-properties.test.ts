import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseBoard } from "../board/parse-board.ts";
import { smallDrive } from "../board/small-drive.fixture.ts";
import { benchKey } from "./bench-state.ts";
import type { JobEvent } from "./event.ts";
import { canAppend, foldLog, undoneEvents } from "./fold.ts";
import type { Timeline } from "./timeline.ts";

const parsedBoard = parseBoard(smallDrive());
if (!parsedBoard.ok) throw new Error(parsedBoard.problem);
const BOARD = parsedBoard.value;
const ABSENT = ["M1"];

const PLACES = ["Q1.c", "Q1.e", "C1.plus", "BR1.ac1", "M1.u"];
const PARTS = ["Q1", "C1", "BR1", "M1"];
const CLIP = { at: ["PBUS", "NBUS"] as const, ohms: 2200 };

/** What a hand might try next; whether it is possible is for the fold to say. `undo` picks an earlier event by its number. */
const ATTEMPT: fc.Arbitrary<JobEvent | { readonly do: "undo"; readonly back: number }> = fc.oneof(
  fc.record({ do: fc.constantFrom("lift" as const, "refit" as const), place: fc.constantFrom(...PLACES) }),
  fc.record({ do: fc.constantFrom("remove" as const, "restore" as const), part: fc.constantFrom(...PARTS) }),
  fc.record({ do: fc.constant("replace" as const), part: fc.constantFrom(...PARTS) }),
  fc.record({
    do: fc.constantFrom("clip" as const, "unclip" as const),
    at: fc.constant(CLIP.at),
    ohms: fc.constant(2200),
  }),
  fc.constant<JobEvent>({ do: "power", feed: "mains", observed: "quiet" }),
  fc.constant<JobEvent>({ do: "unpower" }),
  fc.constant<JobEvent>({ do: "measure", mode: "ohms", red: "PBUS", black: "Q1.c", reading: "OL" }),
  fc.record({ do: fc.constant("undo" as const), back: fc.nat({ max: 30 }) }),
);

/** A possible log: of many attempts, those the bench accepts. */
const POSSIBLE_LOG = fc.array(ATTEMPT, { minLength: 5, maxLength: 40 }).map((attempts) => {
  const log: JobEvent[] = [];
  for (const attempt of attempts) {
    const id = `e${log.length}`;
    const event: JobEvent =
      "back" in attempt
        ? { do: "undo", of: `e${Math.max(0, log.length - 1 - attempt.back)}`, id }
        : ({ ...attempt, id } as JobEvent);
    if (canAppend(BOARD, ABSENT, log, event) === null) log.push(event);
  }
  return log;
});

function fold(log: readonly JobEvent[]): Timeline {
  const folded = foldLog(BOARD, ABSENT, log);
  if (!folded.ok) throw new Error(folded.problem);
  return folded.value;
}

/** The entries without their place in the written log. */
function course(timeline: Timeline): unknown {
  return timeline.entries.map(({ event, before, after, span }) => [
    event,
    benchKey(before),
    benchKey(after),
    span,
  ]);
}

const RUNS = { seed: 2026, numRuns: 150 };

describe("any possible log", () => {
  it("folds to the same bench each time, as does every beginning of it", () => {
    const replays = fc.property(POSSIBLE_LOG, (log) => {
      expect(fold(log)).toEqual(fold(structuredClone(log)));
      for (let length = 0; length <= log.length; length++)
        expect(foldLog(BOARD, ABSENT, log.slice(0, length)).ok).toBe(true);
    });
    fc.assert(replays, RUNS);
  });

  it("shows the bench that only its undone-free events make", () => {
    const asIfNeverDone = fc.property(POSSIBLE_LOG, (log) => {
      const undone = undoneEvents(log);
      const kept = log.filter((event, index) => event.do !== "undo" && undone[index] === false);
      expect(course(fold(log))).toEqual(course(fold(kept)));
    });
    fc.assert(asIfNeverDone, RUNS);
  });

  it("comes back whole when an undo is undone", () => {
    let undoneOnes = 0;
    const restored = fc.property(POSSIBLE_LOG, fc.nat(), (log, pick) => {
      if (log.length === 0) return;
      const undo: JobEvent = { do: "undo", of: `e${pick % log.length}`, id: "u" };
      if (canAppend(BOARD, ABSENT, log, undo) !== null) return;
      undoneOnes++;
      const again = fold([...log, undo, { do: "undo", of: "u" }]);
      expect(course(again)).toEqual(course(fold(log)));
      expect(again.now).toEqual(fold(log).now);
    });
    fc.assert(restored, RUNS);
    expect(undoneOnes).toBeGreaterThan(50);
  });

  it("chains: each event begins where the one before it ended", () => {
    const chained = fc.property(POSSIBLE_LOG, (log) => {
      const { entries, now, spans } = fold(log);
      for (const [index, entry] of entries.entries()) {
        if (index > 0) expect(entry.before).toBe(entries[index - 1]?.after);
        expect(spans[entry.span]?.openedBy).toBeLessThanOrEqual(entry.logIndex);
      }
      if (entries.length > 0) expect(entries.at(-1)?.after).toBe(now);
    });
    fc.assert(chained, RUNS);
  });
});
