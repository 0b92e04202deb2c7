import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { JobEvent } from "../../bench/event.ts";
import { type LineName, lineName, type StockLine } from "../catalogue.ts";
import { movesOfJob } from "./moves-of-job.ts";
import { stockOf } from "./stock.ts";
import type { StockEvent } from "./stock-event.ts";

function lying(name: string, count: number, more: Partial<StockLine> = {}): StockLine {
  return {
    type: { name, kind: "igbt", ratings: { volts: 600 }, source: null },
    count,
    place: "drawer 4",
    price: 2.5,
    supplier: null,
    used: false,
    donor: null,
    ...more,
  };
}

const counted = (...lines: readonly StockLine[]): StockEvent => ({ do: "count", lines, gone: [] });
const replace = (id: string, part = "Q1"): JobEvent => ({
  do: "replace",
  id,
  part,
  with: "K40",
  price: 2.5,
  from: { place: "drawer 4" },
});
const undo = (id: string, of: string): JobEvent => ({ do: "undo", id, of });
const close = (id: string, ...shelved: readonly string[]): JobEvent => ({
  do: "close",
  id,
  verdict: "not-economic",
  shelved,
});

/** The moves of a log that arrives entry by entry, as a bench posts it. */
function movesOf(job: string, log: readonly JobEvent[], brought = 0): readonly StockEvent[] {
  return log
    .slice(brought)
    .flatMap((_, at) => movesOfJob(job, log.slice(0, brought + at + 1), brought + at, () => "igbt"));
}

const state = (events: readonly StockEvent[]) =>
  stockOf(events)
    .lines()
    .map(({ type, count, place, used, donor, short }) => [type.name, count, place, used, donor, short]);

describe("a part fitted out of the drawer", () => {
  it("is one less there, and back again once that entry is undone, and gone again once the undo is", () => {
    const log = [replace("e1"), undo("u1", "e1"), undo("u2", "u1")];
    const after = (entries: number) =>
      state([counted(lying("K40", 3)), ...movesOf("j1", log.slice(0, entries))]);
    expect([1, 2, 3].map((entries) => after(entries)[0]?.[1])).toEqual([2, 3, 2]);
  });

  it("comes from the very line that was named: the pulled ones and the other drawer keep theirs", () => {
    const donor = lying("K40", 2, { used: true, place: null, donor: "heat pump 12" });
    const shelf = lying("K40", 5, { place: "shelf" });
    const fromDonor: JobEvent = {
      do: "replace",
      id: "e1",
      part: "Q1",
      with: "K40",
      used: true,
      from: { donor: "heat pump 12" },
    };
    expect(state([counted(lying("K40", 3), donor, shelf), ...movesOf("j1", [fromDonor])])).toEqual([
      ["K40", 3, "drawer 4", false, null, 0],
      ["K40", 1, null, true, "heat pump 12", 0],
      ["K40", 5, "shelf", false, null, 0],
    ]);
  });

  it("beyond what was counted leaves none, not fewer than none, and says that the count was wrong", () => {
    const events = [counted(lying("K40", 1)), ...movesOf("j1", [replace("e1"), replace("e2", "Q2")])];
    expect(state(events)).toEqual([["K40", 0, "drawer 4", false, null, 1]]);
    // undone, it leaves what was there before it
    expect(
      state([...events, ...movesOf("j1", [replace("e1"), replace("e2", "Q2"), undo("u", "e2")]).slice(2)]),
    ).toEqual([["K40", 0, "drawer 4", false, null, 0]]);
    expect(state([...events, counted(lying("K40", 6))])).toEqual([["K40", 6, "drawer 4", false, null, 0]]);
  });

  it("moves nothing where the log was brought with the job: what it tells of happened elsewhere", () => {
    const log = [replace("e1"), undo("u1", "e1"), replace("e2")];
    expect(state([counted(lying("K40", 3)), ...movesOf("j1", log, 1)])).toEqual([
      ["K40", 2, "drawer 4", false, null, 0],
    ]);
  });

  it("and taken off again when the job is given up lies there as pulled, whoever had it in stock before", () => {
    const unnamed: JobEvent = { do: "replace", id: "e3", part: "C1" };
    const bought: JobEvent = { do: "replace", id: "e2", part: "Q2", with: "K50" };
    const log = [replace("e1"), bought, unnamed, close("c1", "Q1", "Q2", "C1", "Q9")];
    const events = [counted(lying("K40", 3)), ...movesOf("j1", log)];
    expect(state(events)).toEqual([
      ["K40", 2, "drawer 4", false, null, 0],
      ["K40", 1, "drawer 4", true, null, 0],
      ["K50", 1, "pulled parts", true, null, 0],
    ]);
    const reopened = [...log, undo("u1", "c1")];
    expect(state([counted(lying("K40", 3)), ...movesOf("j1", reopened)]).map((line) => line[1])).toEqual([
      2, 0, 0,
    ]);
  });
});

describe("a count", () => {
  it("replaces its line, takes another off the list, and what it says of a type holds for every line of it", () => {
    const better = { ...lying("K40", 4), type: { ...lying("K40", 0).type, ratings: { volts: 650 } } };
    const gone: LineName = lineName(lying("old", 1));
    const stock = stockOf([
      counted(lying("old", 1), lying("K40", 2), lying("K40", 1, { place: "shelf" })),
      { do: "count", lines: [better], gone: [gone] },
    ]);
    expect(stock.lines().map(({ count, place, type }) => [count, place, type.ratings.volts])).toEqual([
      [4, "drawer 4", 650],
      [1, "shelf", 650],
    ]);
  });
});

const name = fc.constantFrom("A", "B");
const anyLine: fc.Arbitrary<LineName> = fc.record({
  name,
  place: fc.constantFrom("drawer", null),
  used: fc.boolean(),
  donor: fc.constantFrom("board 3", null),
});
const by = {
  job: fc.constantFrom("j1", "j2"),
  event: fc.constantFrom("e1", "e2", "e3"),
  part: fc.constant("Q1"),
};
const anyEvent: fc.Arbitrary<StockEvent> = fc.oneof(
  fc.record({ do: fc.constant("take" as const), line: anyLine, ...by }),
  fc.record({ do: fc.constant("put" as const), line: anyLine, kind: fc.constant("igbt" as const), ...by }),
  fc.record({ do: fc.constant("back" as const), ...by }),
  fc.record({
    do: fc.constant("count" as const),
    gone: fc.array(anyLine, { maxLength: 1 }),
    lines: fc.array(
      fc
        .tuple(anyLine, fc.nat(2))
        .map(([{ name: type, ...where }, count]): StockLine => lying(type, count, where)),
      { maxLength: 2 },
    ),
  }),
);

describe("whatever happens to a stock", () => {
  it("no count falls below none, and the same events leave the same stock", () => {
    fc.assert(
      fc.property(fc.array(anyEvent, { maxLength: 40 }), (events) => {
        for (const { count, short } of stockOf(events).lines()) {
          expect(count ?? 0).toBeGreaterThanOrEqual(0);
          expect(short).toBeGreaterThanOrEqual(0);
        }
        expect(state(events)).toEqual(state(JSON.parse(JSON.stringify(events))));
      }),
      { seed: 2207, numRuns: 500 },
    );
  });

  it("a log undone to its beginning leaves the stock as it was before it", () => {
    const entry = fc.constantFrom("fit", "close");
    fc.assert(
      fc.property(fc.array(entry, { maxLength: 6 }), fc.nat(4), (entries, count) => {
        const done = entries.map((kind, at): JobEvent => {
          return kind === "fit" ? replace(`e${at}`, `Q${at % 3}`) : close(`e${at}`, "Q0", "Q1");
        });
        const undone = done.toReversed().map((event, at) => undo(`u${at}`, event.id ?? ""));
        const first = counted(lying("K40", count));
        const after = state([first, ...movesOf("j1", [...done, ...undone])]);
        expect(after.filter((line) => line[1] !== 0)).toEqual(state([first]).filter((line) => line[1] !== 0));
        expect(after.every((line) => line[5] === 0)).toBe(true);
      }),
      { seed: 2208, numRuns: 200 },
    );
  });
});
