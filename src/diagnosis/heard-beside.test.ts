import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import type { Board } from "../board/board.ts";
import { parseBoard } from "../board/parse-board.ts";
import { makePredictor } from "../meter/predictor.ts";
import { DEFAULT_METER } from "../meter/settings.ts";
import type { Cause } from "../priors/cause.ts";
import { priorTable } from "../priors/prior-table.ts";
import type { Belief } from "./belief.ts";
import { believe } from "./believe.ts";
import { EvidenceMemory } from "./cold-evidence.ts";

function boardOf(id: string): Board {
  const parsed = parseBoard(JSON.parse(readFileSync(`boards/${id}.json`, "utf8")));
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
}
const fanDrive = boardOf("greenhouse-fan-drive");

function beliefAfter(log: readonly JobEvent[], board = fanDrive, cause: Cause = "overload"): Belief {
  const timeline = foldLog(board, [], log);
  if (!timeline.ok) throw new Error(timeline.problem);
  return believe({
    board,
    timeline: timeline.value,
    cause,
    symptom: "dead",
    priors: priorTable(board, cause, "dead"),
    absent: [],
    predictorFor: (bench) => makePredictor(board, bench, DEFAULT_METER),
    memory: new EvidenceMemory(),
  });
}

const read = (mode: "diode" | "ohms", red: string, black: string, reading: number | "OL"): JobEvent => ({
  do: "measure",
  mode,
  red,
  black,
  reading,
});

/** A leg is through and took the fuse with it; the motor ties all three legs together. */
const LEG_AND_FUSE: readonly JobEvent[] = [
  read("diode", "PBUS", "U", 0.004),
  read("diode", "U", "E_U", 0.004),
  read("diode", "L_IN", "N_IN", "OL"),
  read("diode", "G_LV", "E_V", "OL"),
  read("diode", "L_IN", "N_IN", "OL"),
  read("diode", "DL_V", "NBUS", "OL"),
  read("diode", "V", "DH_V", 0.624),
  read("ohms", "DL_V", "G_LV", 45.2),
  read("ohms", "DH_V", "G_HV", 46.9),
  read("diode", "E_W", "W", 0.004),
];

function shareOf(belief: Belief, ...parts: readonly string[]): number {
  return belief.explanations
    .filter(({ faults }) => parts.every((ref) => faults.some((one) => belief.priors[one.fault].part === ref)))
    .reduce((sum, { probability }) => sum + probability, 0);
}

describe("a fault that only shows beside another", () => {
  it("a fuse that was open, and has been replaced, still explains what was read before", () => {
    const belief = beliefAfter([
      ...LEG_AND_FUSE,
      { do: "replace", part: "F1" },
      read("diode", "L_IN", "N_IN", 1.05),
    ]);
    expect(belief.unexplained).toEqual([]);
    expect(shareOf(belief, "F1")).toBeGreaterThan(0.9);
  });

  it("legs behind one winding read alike: no one of them is sure, and all are held", () => {
    const belief = beliefAfter(LEG_AND_FUSE);
    const legs = [shareOf(belief, "Q1", "Q2"), shareOf(belief, "Q3", "Q4"), shareOf(belief, "Q5", "Q6")];
    // a leg that the search never came to has no share at all
    expect(Math.min(...legs)).toBeGreaterThan(0.02);
    expect(Math.max(...legs)).toBeLessThan(0.9);
  });

  it("a rail of some ohms, read again after clamp and module were changed for it, is its rectifier's: each reading counts once", () => {
    const outdoor = boardOf("outdoor-unit-inverter");
    const some = (reading: number) => read("ohms", "V15", "NBUS", reading);
    const belief = beliefAfter(
      [some(4.6), { do: "replace", part: "ZD2" }, some(4.5), { do: "replace", part: "M1" }, some(4.6)],
      outdoor,
      "surge",
    );
    // under one in a hundred where a short had one resistance, wide enough for all
    expect(belief.suspects.find(({ part }) => part === "D7")?.probability ?? 0).toBeGreaterThan(0.3);
  });

  it("a board left as it is and powered three times stays quiet three times: that is one sight, not three", () => {
    const quiet: readonly JobEvent[] = [{ do: "power", feed: "mains", observed: "quiet" }, { do: "unpower" }];
    const once = beliefAfter(quiet);
    const thrice = beliefAfter([...quiet, ...quiet, ...quiet]);
    expect(thrice.healthyProbability).toBeCloseTo(once.healthyProbability, 3);
    const twoBoards = beliefAfter([...quiet, { do: "resolder", part: "C1" }, ...quiet]);
    expect(twoBoards.healthyProbability).toBeLessThan(0.5 * once.healthyProbability);
  });
});
