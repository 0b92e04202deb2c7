import { describe, expect, it } from "vitest";
import type { JobEvent } from "../../src/bench/event.ts";
import type { Asked } from "../../src/practice/answer.ts";
import { shippedBoards } from "../oracle/shipped-boards.ts";
import { trialJob } from "../trial.ts";
import { Course } from "./course.ts";
import type { BenchAnswer, HiddenBench } from "./hidden-bench.ts";

const board = shippedBoards().find(({ id }) => id === "greenhouse-fan-drive")?.board;
if (board === undefined) throw new Error("the fan drive is not in boards/");

/** A bench that answers as told, and the rows that it was asked. */
function courseWith(answer: (asked: Asked) => BenchAnswer, dead: readonly string[] = []) {
  const rows: (readonly string[])[] = [];
  const bench: HiddenBench = {
    answerRow: async (_timeline, asked) => {
      rows.push(asked.map((one) => one.do));
      return asked.map(answer);
    },
    faulty: () => dead,
    dead: () => dead,
    faults: () => dead,
    state: () => (dead.length === 0 ? "works" : "dead"),
  };
  return { course: new Course(trialJob(board as NonNullable<typeof board>, 1), bench), rows };
}

const done = (event: JobEvent): BenchAnswer => ({ ok: true, event, slipped: false });
const plain = (asked: Asked): BenchAnswer =>
  done(asked.do === "measure" ? { ...asked, reading: 0.5 } : (asked as JobEvent));
const reading = { do: "measure", mode: "diode", red: "U", black: "PBUS" } as const;

describe("a player's course", () => {
  it("readings after a lift are asked of the board with the pin lifted, not of the row as it began", async () => {
    const { course, rows } = courseWith(plain);
    await course.takeRow([{ do: "lift", place: "Q1.c" }, reading, { ...reading, red: "V" }]);
    expect(rows).toEqual([["lift"], ["measure", "measure"]]);
    expect(course.timeline.now.lifted.has("Q1.c")).toBe(true);
  });

  it("where the part is not there the rest of its row is left", async () => {
    const { course } = courseWith((asked) =>
      asked.do === "lift" ? done({ do: "mark", part: "C16", as: "absent" }) : plain(asked),
    );
    const events = await course.takeRow([
      { do: "lift", place: "C16.plus" },
      { ...reading, red: "C16.plus" },
    ]);
    expect(events.map(({ do: what }) => what)).toEqual(["mark"]);
    expect(course.job.absent).toContain("C16");
  });

  it("an event that cannot have happened is withdrawn and told, not kept", async () => {
    const { course } = courseWith(plain);
    expect((await course.take({ do: "refit", place: "Q1.c" })).do).toBe("note");
    expect(course.unanswered[0]).toContain("Q1");
    expect(course.timeline.entries.every(({ event }) => event.do === "note")).toBe(true);
  });

  it("a good part replaced is counted, a second repair after power is a second try", async () => {
    const { course } = courseWith(plain, ["K1"]);
    const lamp = { do: "power", feed: "lamp", watts: 100 } as const;
    for (const action of [
      { do: "replace", part: "R4" } as const,
      { do: "replace", part: "K1" } as const,
      lamp,
      { do: "unpower" } as const,
      { do: "replace", part: "K1" } as const,
      lamp,
    ])
      await course.take(action);
    await course.close("repaired");
    expect(course.outcome()).toMatchObject({
      goodReplaced: ["R4"],
      secondTries: 1,
      powerUps: 2,
      falselyRepaired: true,
      state: "dead",
    });
    expect(course.outcome().income).toBe(-course.asBrought.terms.comebackCost);
  });
});
