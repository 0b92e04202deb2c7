import { describe, expect, it } from "vitest";
import { chainsOf } from "./bench-lessons.ts";
import { comebackOf } from "./earlier-jobs.ts";

describe("jobs that hang together", () => {
  it("are the one that came back and the one that it came back from", () => {
    const chains = chainsOf([
      { id: "a", comebackOf: null },
      { id: "b", comebackOf: "a" },
      { id: "c", comebackOf: "a job of another bench" },
    ]);
    expect(Object.fromEntries(chains)).toEqual({
      a: { cameBack: true, again: false },
      b: { cameBack: false, again: true },
      c: { cameBack: false, again: false },
    });
  });

  it("are told by the header, but where the repair had no part in it", () => {
    expect(comebackOf({ comebackOf: { job: "old/j1.json", reason: "missed-fault" } })).toBe("j1");
    expect(comebackOf({ comebackOf: { job: "j1", reason: "other" } })).toBeNull();
    expect(comebackOf({})).toBeNull();
    expect(comebackOf({ comebackOf: "j1" })).toBeNull();
  });
});
