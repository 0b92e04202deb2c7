/** A leak between the two sides of the bus is judged by the watts that it turns to heat, wherever on them it lies. */
import { describe, expect, it } from "vitest";
import type { Board } from "../board/board.ts";
import { parseBoard } from "../board/parse-board.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { busSides } from "./bus-sides.ts";
import { viewOf } from "./circuit-view.ts";
import { powerEffect } from "./power-effects.ts";

function shipped(id: string): Board {
  const board = parseBoard(SHIPPED.find((one) => one.id === id)?.board);
  if (!board.ok) throw new Error(board.problem);
  return board.value;
}

const drive = shipped("small-frequency-drive");
const drive3ph = shipped("small-frequency-drive-3ph");

const dirt = (board: Board, nets: readonly [string, string], ohms: number) =>
  powerEffect(viewOf(board), { of: "nets", nets, mode: "leaky", value: ohms });

describe("the sides of a drive's bus", () => {
  it("reach through fusible and brake resistors and the primary of the small supply, and stop at rails and mains", () => {
    const sides = busSides(drive);
    expect([...(sides?.plus ?? [])].sort()).toEqual(["BRAKE", "BR_P", "DRAIN", "PBUS", "SUP_P"]);
    expect([...(sides?.minus ?? [])].sort()).toEqual(["NBUS", "N_U", "N_V", "N_W"]);
  });

  it("stand at the peak of the mains", () => {
    expect(busSides(drive)?.volts).toBeCloseTo(325.3, 1);
    expect(busSides(drive3ph)?.volts).toBeCloseTo(565.7, 1);
  });
});

describe("dirt across the bus", () => {
  it("of 20 kohm between drain and ground turns 5 W to heat: the board may run, and comes back charred", () => {
    expect(dirt(drive, ["DRAIN", "NBUS"], 20_000)).toBe("weak");
  });

  it("of 100 kohm is lived with at 325 V and not at 566 V", () => {
    expect(dirt(drive, ["DRAIN", "NBUS"], 100_000)).toBe("none");
    expect(dirt(drive3ph, ["DRAIN", "NBUS"], 100_000)).toBe("weak");
  });

  it("between a rail and ground is judged by the rail", () => {
    expect(dirt(drive, ["V15", "NBUS"], 20_000)).toBe("none");
  });
});

it("the small supply's own capacitor that leaks 10 kohm is no harmless one", () => {
  const leak = { of: "part", part: "C28", junction: null, mode: "leaky", value: 10_000 } as const;
  expect(powerEffect(viewOf(drive), leak)).toBe("weak");
});
