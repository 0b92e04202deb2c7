import { describe, expect, it } from "vitest";
import { plain } from "../messages/said.ts";
import type { JobEvent } from "./event.ts";
import { parseEvent } from "./parse-event.ts";
import { waitingFor } from "./waiting.ts";

const at = "2026-03-02T17:30:00Z";
const DRYING: JobEvent = { do: "wait", for: "drying", id: "w", at };
const MODULE: JobEvent = { do: "wait", for: "part", what: "IPM1", id: "p", at };
const YES: JobEvent = { do: "wait", for: "answer", id: "y", at };
const LOOK: JobEvent = { do: "look", part: "C1", finding: "wet", id: "l" };

describe("a job that was put aside", () => {
  it("waits for what was said last, since then", () => {
    expect(waitingFor([LOOK, DRYING])).toEqual({ for: "drying", what: null, since: at });
    expect(waitingFor([LOOK, DRYING, MODULE])).toEqual({ for: "part", what: "IPM1", since: at });
  });

  it("waits on while people only talk about it", () => {
    const talk: JobEvent[] = [
      { do: "note", text: "rang the supplier" },
      { do: "answer", question: "powered-while-wet", answer: "no" },
      { do: "mark", part: "R1", as: "unsure" },
    ];
    expect(waitingFor([DRYING, ...talk])?.for).toBe("drying");
  });

  it("is on the bench again once it is taken up, or at the next step of the hand, or closed", () => {
    for (const end of [{ do: "resume" }, LOOK, { do: "close", verdict: "declined" }] as const)
      expect(waitingFor([MODULE, end])).toBeNull();
  });

  it("waits for a yes until there is a yes or a no, and for a part whatever the customer says", () => {
    const quote: JobEvent = { do: "quote", offer: "repair", answer: "accepted", price: 120 };
    expect(waitingFor([YES, quote])).toBeNull();
    expect(waitingFor([MODULE, quote])?.for).toBe("part");
  });

  it("never waited where the wait was undone, and waits on where its end was", () => {
    expect(waitingFor([LOOK, DRYING, { do: "undo", of: "w", id: "u" }])).toBeNull();
    const resumed: JobEvent[] = [DRYING, { do: "resume", id: "r" }, { do: "undo", of: "r", id: "u" }];
    expect(waitingFor(resumed)?.for).toBe("drying");
  });

  it("is refused with one line where nobody knows what it waits for", () => {
    const problem = (event: object) => {
      const read = parseEvent(event, "log[0]");
      return read.ok ? "none" : plain(read.problem);
    };
    expect(problem({ do: "wait", for: "rain" })).toMatch(/^log\[0\]\.for: .*drying.*part.*answer/);
    expect(problem({ do: "wait", for: "part", what: "" })).toBe("log[0].what: is empty");
  });
});
