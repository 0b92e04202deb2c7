import type { Board } from "../../src/board/board.ts";
import type { Fault } from "../../src/board/fault.ts";
import type { Random } from "../../src/practice/seeded-random.ts";
import { logUniform } from "./draw.ts";
import { FAULT_VALUES } from "./fault-table.ts";

const digits = (value: number): number => Number(value.toPrecision(3));

/** Marked ohms of what drifts, where the board says them. */
function markedOhms(board: Board, ref: string, junction: string | null): number {
  const value = board.parts.get(ref)?.value;
  return value?.ohms ?? value?.coilOhms ?? value?.windings?.[junction ?? ""]?.ohms ?? 1;
}

/** The fault with the value that it really has, over decades; an open has none. */
export function faultOhms(board: Board, fault: Fault, random: Random): Fault {
  const V = FAULT_VALUES;
  if (fault.of === "nets") return { ...fault, value: digits(logUniform(random, V.netLeakOhms)) };
  const part = board.parts.get(fault.part);
  switch (fault.mode) {
    case "open":
      return fault;
    case "short":
      return { ...fault, value: digits(logUniform(random, V.shortOhms)) };
    case "leaky": {
      const inSeries = part?.kind === "fuse" || part?.kind === "link";
      return { ...fault, value: digits(logUniform(random, inSeries ? V.contactOhms : V.leakOhms)) };
    }
    case "drift": {
      if (part?.kind === "capacitor")
        return {
          ...fault,
          value: digits((part.value.farads ?? 100e-9) * logUniform(random, V.driftFaradsFactor)),
        };
      const ohms = markedOhms(board, fault.part, fault.junction);
      return { ...fault, value: digits(ohms * logUniform(random, V.driftOhmsFactor)) };
    }
  }
}
