/** The oracle's own rules for what is seen and heard on a powered board. */
import { describe, expect, it } from "vitest";
import type { Fault } from "../../src/board/fault.ts";
import { judgedBoards } from "../boards/judged-boards.ts";
import { oracleBoard } from "./oracle-board.ts";
import { signsNoted } from "./sign-truth.ts";

const [judged] = judgedBoards("small-frequency-drive-3ph");
if (judged === undefined) throw new Error("no such board");
const oracle = oracleBoard(judged.board, "surge", 7);
const RUNS = 200;

const fault = (part: string, junction: string | null, mode: Fault["mode"]): Fault => ({
  of: "part",
  part,
  junction,
  mode,
  value: null,
});

/** Share of power-ups at which each sign is noted. */
function shares(faults: readonly Fault[]): (part: string) => number {
  const noted = Array.from({ length: RUNS }, (_, at) => signsNoted(oracle, faults, new Set(), at));
  return (part) => noted.filter((signs) => signs[part] === true).length / RUNS;
}

describe("the signs of life of an oracle's drive", () => {
  it.each([
    ["whole: all of them, mostly", [], { LED1: true, K1: true, FAN1: true }],
    [
      "with its supply's switch open: none",
      [fault("U2", "ds", "open")],
      { LED1: false, K1: false, FAN1: false },
    ],
    [
      "with the relay's coil open: no click",
      [fault("K1", "coil", "open")],
      { LED1: true, K1: false, FAN1: true },
    ],
    [
      "with the relay's contact open: it clicks",
      [fault("K1", "contact", "open")],
      { LED1: true, K1: true, FAN1: true },
    ],
    [
      "with the relay's transistor open: no click",
      [fault("Q1", "ce", "open")],
      { LED1: true, K1: false, FAN1: true },
    ],
    [
      "with the light's own resistor open: dark",
      [fault("R57", null, "open")],
      { LED1: false, K1: true, FAN1: true },
    ],
  ] as const)("%s", (_, faults, expected) => {
    const share = shares(faults);
    for (const [part, there] of Object.entries(expected))
      if (there) expect(share(part), part).toBeGreaterThan(0.85);
      else expect(share(part), part).toBeLessThan(0.15);
  });
});
