import { describe, expect, it } from "vitest";
import { parseBoard } from "../board/parse-board.ts";
import { smallDrive } from "../board/small-drive.fixture.ts";
import type { JobEvent } from "./event.ts";
import { foldLog } from "./fold.ts";
import { isInjection, lastPowerUp } from "./injection.ts";
import { parseEvent } from "./parse-event.ts";

const parsed = parseBoard(smallDrive());
if (!parsed.ok) throw new Error(parsed.problem);
const BOARD = parsed.value;

const low: JobEvent = { do: "power", feed: "bench", volts: 0.35, limitAmps: 1, at: ["V5", "NBUS"] };
const cell: JobEvent = {
  do: "power",
  feed: "bench",
  volts: 1.2,
  limitAmps: 1.2,
  ohms: 1,
  at: ["V5", "NBUS"],
};
const whole: JobEvent = { do: "power", feed: "bench", volts: 5, limitAmps: 0.5, at: ["V5", "NBUS"] };
const mains: JobEvent = { do: "power", feed: "mains", observed: "quiet" };
const off: JobEvent = { do: "unpower" };

function fold(log: readonly JobEvent[]) {
  const folded = foldLog(BOARD, [], log);
  if (!folded.ok) throw new Error(folded.problem);
  return folded.value;
}

describe("a low voltage into a dead rail", () => {
  it("is one below what a rail works with, from a supply or a cell", () => {
    expect([low, cell, whole, mains, off].map((event) => isInjection(event))).toEqual([
      true,
      true,
      false,
      false,
      false,
    ]);
  });

  it("breaks nothing: no fault is dated by it, and it is no power-up of the board", () => {
    expect(fold([low, off]).spans).toHaveLength(1);
    expect(fold([whole, off]).spans).toHaveLength(2);
    expect(lastPowerUp(fold([mains, off, low, off]))).toBe(0);
    expect(lastPowerUp(fold([low, off]))).toBe(-1);
  });

  it("makes the board live all the same: nothing is lifted or measured cold meanwhile", () => {
    expect(foldLog(BOARD, [], [low, { do: "lift", place: "C5.plus" }]).ok).toBe(false);
  });

  it("may come through a resistor, which no other feed has", () => {
    expect(parseEvent(cell, "event")).toMatchObject({ ok: true, value: cell });
    const refused = parseEvent({ do: "power", feed: "lamp", watts: 60, ohms: 1 }, "event");
    expect(refused.ok).toBe(false);
  });
});
