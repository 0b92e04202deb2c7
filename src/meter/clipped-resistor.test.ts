import { describe, expect, it } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import { findBus } from "../board/bus.ts";
import { parseBoard } from "../board/parse-board.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import type { ColdCheck } from "./prediction.ts";
import { makePredictor } from "./predictor.ts";
import { DEFAULT_METER } from "./settings.ts";

const OHMS = 2200;

describe.each(SHIPPED.map(({ id, board }) => [id, board] as const))(
  "%s with a resistor left on its bus",
  (_, content) => {
    const parsed = parseBoard(content);
    if (!parsed.ok) throw new Error(parsed.problem);
    const board = parsed.value;
    const bus = findBus(board);
    if (bus === null) throw new Error("no bus");
    const at = [bus.plus, bus.minus] as const;
    const raw = (log: readonly JobEvent[], mode: "ohms" | "diode", red: string, black: string): number => {
      const folded = foldLog(board, [], log);
      if (!folded.ok) throw new Error(folded.problem);
      const check: ColdCheck = { mode, red, black };
      const reading = makePredictor(board, folded.value.now, DEFAULT_METER).predict(check, []);
      if (!reading.solved) throw new Error(reading.why);
      return reading.raw;
    };
    const clip: JobEvent = { do: "clip", at, ohms: OHMS };

    it("shows it in every mode, both ways round, until it is taken off", () => {
      for (const [red, black] of [at, [at[1], at[0]]] as const) {
        const bare = raw([], "ohms", red, black);
        // side by side with what the board itself has there
        expect(raw([clip], "ohms", red, black)).toBeLessThanOrEqual(OHMS * 1.01);
        expect(raw([clip], "ohms", red, black)).toBeLessThan(bare);
        const through =
          (DEFAULT_METER.diodeOpenVolts * OHMS) /
          (OHMS + DEFAULT_METER.diodeOpenVolts / DEFAULT_METER.diodeShortAmps);
        expect(raw([clip], "diode", red, black)).toBeLessThanOrEqual(through * 1.01);
        expect(raw([clip, { do: "unclip", at, ohms: OHMS }], "ohms", red, black)).toBe(bare);
      }
    });
  },
);
