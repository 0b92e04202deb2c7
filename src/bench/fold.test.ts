import { describe, expect, it } from "vitest";
import type { Board } from "../board/board.ts";
import { parseBoard } from "../board/parse-board.ts";
import { smallDrive } from "../board/small-drive.fixture.ts";
import { plain } from "../messages/said.ts";
import type { JobEvent } from "./event.ts";
import { canAppend, foldLog, undoneEvents } from "./fold.ts";
import type { Timeline } from "./timeline.ts";

const parsedBoard = parseBoard(smallDrive());
if (!parsedBoard.ok) throw new Error(parsedBoard.problem);
const BOARD: Board = parsedBoard.value;

function fold(log: readonly JobEvent[], absent: readonly string[] = []): Timeline {
  const folded = foldLog(BOARD, absent, log);
  if (!folded.ok) throw new Error(folded.problem);
  return folded.value;
}

function problemOf(log: readonly JobEvent[], absent: readonly string[] = []): string {
  const folded = foldLog(BOARD, absent, log);
  return folded.ok ? "none" : plain(folded.problem);
}

const zero: JobEvent = { do: "measure", mode: "diode", red: "PBUS", black: "NBUS", reading: 0 };
const mains: JobEvent = { do: "power", feed: "mains", observed: "quiet" };
const off: JobEvent = { do: "unpower" };
const lift = (place: string, id?: string): JobEvent => ({
  do: "lift",
  place,
  ...(id === undefined ? {} : { id }),
});
const refit = (place: string, id?: string): JobEvent => ({
  do: "refit",
  place,
  ...(id === undefined ? {} : { id }),
});
const hands = (name: "remove" | "restore" | "replace", part: string, id?: string): JobEvent => ({
  do: name,
  part,
  ...(id === undefined ? {} : { id }),
});
const undo = (of: string, id?: string): JobEvent => ({ do: "undo", of, ...(id === undefined ? {} : { id }) });

describe("the bench", () => {
  it("begins as the board came: nothing lifted, absent parts off, no power", () => {
    const { now, spans, closed } = fold([], ["M1"]);
    expect(now).toEqual({ lifted: new Set(), off: new Set(["M1"]), clips: [], powered: false });
    expect(spans).toEqual([{ index: 0, openedBy: -1, event: null }]);
    expect(closed).toBe(false);
  });

  it("holds what is lifted, off, clipped on and powered after each event", () => {
    const clip: JobEvent = { do: "clip", at: ["PBUS", "NBUS"], ohms: 2200 };
    const timeline = fold([lift("Q1.c"), hands("remove", "C1"), clip, mains]);
    expect(timeline.entries.map((entry) => entry.before.lifted.size)).toEqual([0, 1, 1, 1]);
    expect(timeline.now).toEqual({
      lifted: new Set(["Q1.c"]),
      off: new Set(["C1"]),
      clips: [{ at: ["PBUS", "NBUS"], ohms: 2200 }],
      powered: true,
    });
  });

  it("makes every joint of a part that is taken off, put back or replaced", () => {
    expect(fold([lift("Q1.c"), hands("remove", "Q1"), hands("restore", "Q1")]).now.lifted.size).toBe(0);
    expect(fold([lift("Q1.c"), lift("Q1.e"), hands("replace", "Q1")]).now.lifted.size).toBe(0);
  });

  it("puts an off part on the board by replacing it", () => {
    expect(fold([hands("remove", "Q1"), hands("replace", "Q1")]).now.off.size).toBe(0);
  });

  it("lets a part that did not come be brought later", () => {
    expect(fold([hands("restore", "M1")], ["M1"]).now.off.size).toBe(0);
  });

  it("takes the same clip off, whichever way round it is named", () => {
    const clip: JobEvent = { do: "clip", at: ["PBUS", "NBUS"], ohms: 2200 };
    expect(fold([clip, { do: "unclip", at: ["NBUS", "PBUS"], ohms: 2200 }]).now.clips).toEqual([]);
    expect(problemOf([clip, { do: "unclip", at: ["NBUS", "PBUS"], ohms: 100 }])).toBe(
      "log[1].at: no 100 ohm is clipped on between NBUS and PBUS",
    );
  });

  it("may be powered again while on, as when the bench supply is turned up, and unpowered while off", () => {
    expect(fold([off, mains, mains]).now.powered).toBe(true);
  });
});

describe("a span of time", () => {
  it("is opened by power, replace, refit and restore, and its opener belongs to it", () => {
    const log = [
      zero,
      lift("Q1.c"),
      refit("Q1.c"),
      zero,
      hands("remove", "C1"),
      hands("restore", "C1"),
      mains,
      off,
      zero,
    ];
    const timeline = fold(log);
    expect(timeline.entries.map((entry) => entry.span)).toEqual([0, 0, 1, 1, 1, 2, 3, 3, 3]);
    expect(timeline.spans.map((span) => span.openedBy)).toEqual([-1, 2, 5, 6]);
  });

  it("is remembered for each part that was replaced", () => {
    const timeline = fold([
      hands("replace", "Q1"),
      mains,
      off,
      hands("replace", "Q1"),
      hands("replace", "C1"),
    ]);
    expect([...timeline.replacedIn]).toEqual([
      ["Q1", [1, 3]],
      ["C1", [4]],
    ]);
  });
});

describe("a log that could not have happened", () => {
  it.each<[string, readonly JobEvent[], string]>([
    ["lifts a pin that is up", [lift("Q1.c"), lift("Q1.c")], "log[1].place: Q1.c is lifted already"],
    ["refits a pin that is down", [refit("Q1.c")], "log[0].place: Q1.c is not lifted"],
    [
      "lifts a pin of a part that is off",
      [hands("remove", "Q1"), lift("Q1.c")],
      "log[1].place: Q1 is off the board; there is no pin to lift",
    ],
    [
      "removes a part twice",
      [hands("remove", "Q1"), hands("remove", "Q1")],
      "log[1].part: Q1 is off the board already",
    ],
    ["restores what is on", [hands("restore", "Q1")], "log[0].part: Q1 is on the board; nothing to restore"],
    [
      "measures cold on a live board",
      [mains, zero],
      "log[1].mode: diode is a cold mode and the board is powered; unpower first",
    ],
    ["lifts on a live board", [mains, lift("Q1.c")], "log[1].do: the board is powered; unpower first"],
    [
      "replaces on a live board",
      [mains, hands("replace", "Q1")],
      "log[1].do: the board is powered; unpower first",
    ],
    [
      "probes a net that is not there",
      [{ ...zero, red: "PBSU" } as JobEvent],
      'log[0].red: there is no net "PBSU"; did you mean "PBUS"?',
    ],
    [
      "probes a pin that is not there",
      [{ ...zero, black: "Q1.d" } as JobEvent],
      'log[0].black: Q1 has no pin "d"; did you mean "g"?',
    ],
    [
      "probes a test point by name",
      [{ ...zero, black: "TP1" } as JobEvent],
      'log[0].black: "TP1" is a test point, which is no place; write its net, "PBUS"',
    ],
    [
      "looks at a part that is not there",
      [{ do: "look", part: "Q11", finding: "burnt" }],
      'log[0].part: there is no part "Q11"; did you mean "Q1"?',
    ],
    [
      "cleans a stage nobody has",
      [{ do: "clean", stage: "rectifyer" }],
      'log[0].stage: no part is in the stage "rectifyer"; did you mean "rectifier"?',
    ],
    [
      "feeds a net that is not there",
      [{ do: "power", feed: "bench", volts: 5, limitAmps: 1, at: ["V_15", "NBUS"] }],
      'log[0].at[0]: there is no net "V_15"; did you mean "V15"?',
    ],
    [
      "uses an id twice",
      [{ ...off, id: "a" } as JobEvent, { ...off, id: "a" } as JobEvent],
      'log[1].id: "a" is the id of log[0] too; ids are unique in a job',
    ],
    [
      "goes on after the verdict",
      [{ do: "close", verdict: "declined" }, zero],
      "log[1].do: the job is closed; undo the close first",
    ],
  ])("%s: refused, with index and field", (_, log, problem) => {
    expect(problemOf(log)).toBe(problem);
  });

  it("probes a pin of a part that never came", () => {
    expect(problemOf([{ ...zero, red: "M1.u" } as JobEvent], ["M1"])).toBe(
      'log[0].red: M1 did not come with the board; write its net, "U"',
    );
    expect(problemOf([], ["M9"])).toBe('absent[0]: there is no part "M9"; did you mean "M1"?');
  });

  it("is told before the event is written", () => {
    expect(canAppend(BOARD, [], [mains], zero)).toContain("log[1].mode: diode is a cold mode");
    expect(canAppend(BOARD, [], [mains, off], zero)).toBeNull();
  });
});

describe("an undo", () => {
  it("makes an event count as never done, the log keeping both", () => {
    const timeline = fold([lift("Q1.c", "a"), zero, undo("a")]);
    expect(timeline.now.lifted.size).toBe(0);
    expect(timeline.entries.map((entry) => entry.logIndex)).toEqual([1]);
    expect(timeline.entries[0]?.before.lifted.size).toBe(0);
  });

  it("of an undo restores, to any depth", () => {
    const log = [lift("Q1.c", "a"), undo("a", "b"), undo("b", "c"), undo("c", "d")];
    expect(fold(log.slice(0, 3)).now.lifted.has("Q1.c")).toBe(true);
    expect(fold(log).now.lifted.has("Q1.c")).toBe(false);
    expect(undoneEvents(log)).toEqual([true, false, true, false]);
  });

  it("is refused where a later event would become impossible", () => {
    expect(problemOf([lift("Q1.c", "a"), refit("Q1.c", "b"), undo("a")])).toBe(
      'log[2].of: undoing "a" would make a later event impossible: log[1].place: Q1.c is not lifted',
    );
    expect(problemOf([lift("Q1.c", "a"), refit("Q1.c", "b"), undo("b"), undo("a")])).toBe("none");
  });

  it("of an undo is refused where what was done since could not have been", () => {
    const log = [lift("Q1.c", "a"), undo("a", "b"), lift("Q1.c"), undo("b")];
    expect(problemOf(log)).toBe(
      'log[3].of: undoing "b" would make a later event impossible: log[2].place: Q1.c is lifted already',
    );
  });

  it("of power lets the cold readings stand as cold, and closes its span", () => {
    const timeline = fold([{ ...mains, id: "p" } as JobEvent, undo("p"), zero]);
    expect(timeline.entries.map((entry) => entry.span)).toEqual([0]);
    expect(timeline.spans).toHaveLength(1);
  });

  it("of the close opens the job again", () => {
    const log: JobEvent[] = [{ do: "close", verdict: "declined", id: "c" }, undo("c"), zero];
    expect(fold(log).closed).toBe(false);
  });

  it.each<[string, readonly JobEvent[], string]>([
    ["nothing", [undo("x")], 'log[0].of: no earlier event has the id "x"'],
    ["itself", [{ do: "undo", of: "x", id: "x" }], 'log[0].of: no earlier event has the id "x"'],
    [
      "a later event",
      [undo("x"), { ...off, id: "x" } as JobEvent],
      'log[0].of: no earlier event has the id "x"',
    ],
    [
      "what is undone",
      [lift("Q1.c", "a"), undo("a"), undo("a")],
      'log[2].of: the event "a" is undone already',
    ],
    ["__proto__", [undo("__proto__")], 'log[0].of: no earlier event has the id "__proto__"'],
  ])("of %s is refused", (_, log, problem) => {
    expect(problemOf(log)).toBe(problem);
  });
});
