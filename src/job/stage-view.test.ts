/** What the map says of a stage: suspect, hidden behind another fault, not tested yet, cleared. */
import { describe, expect, it } from "vitest";
import { parseBoard } from "../board/parse-board.ts";
import type { Because, Suspect } from "../diagnosis/belief.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { AssessmentSession, beliefOf } from "./assess.ts";
import { parseJob } from "./parse-job.ts";
import { stageViews } from "./stage-view.ts";

const session = new AssessmentSession();
const DRIVE = SHIPPED.find(({ id }) => id === "greenhouse-fan-drive")?.board;
const volts = (place: string) => ({
  do: "measure",
  mode: "dcv",
  red: `${place}.plus`,
  black: `${place}.minus`,
  reading: 0,
});
const DEAD = ["C5", "C6", "C15", "C1", "C7", "C2"].map(volts);
const diode = (red: string, black: string, reading: number | "OL") => ({
  do: "measure",
  mode: "diode",
  red,
  black,
  reading,
});

function stagesOf(board: unknown, log: readonly object[]) {
  const job = parseJob(
    { format: "faultwright-job/1", board, cause: "surge", symptom: "dead", absent: ["M1"], log },
    null,
  );
  if (!job.ok) throw new Error(job.problem);
  const believed = beliefOf(job.value, session);
  if (!believed.ok) throw new Error(believed.problem);
  return stageViews(believed.value);
}

describe("the stages of a board", () => {
  it("run from the mains to the motor, each from the one that feeds it, and none is tested before a reading", () => {
    const stages = stagesOf(DRIVE, []);
    expect(stages.map(({ stage, from }) => `${from ?? "mains"} > ${stage}`)).toEqual([
      "mains > input",
      "input > inrush",
      "inrush > rectifier",
      "rectifier > bus",
      "bus > inverter",
      "inverter > output",
      "bus > supply",
      "supply > drive",
      "supply > logic",
      "logic > sensor",
    ]);
    expect(new Set(stages.map(({ state }) => state))).toEqual(new Set(["untested"]));
    expect(stages.reduce((sum, { parts }) => sum + parts, 0)).toBe(128);
  });

  it("stand behind the rectifier where the charge resistor does", () => {
    const drive = SHIPPED.find(({ id }) => id === "small-frequency-drive-3ph")?.board;
    const job = parseJob(
      { format: "faultwright-job/1", board: drive, cause: "surge", symptom: "dead", log: [] },
      null,
    );
    if (!job.ok) throw new Error(job.problem);
    const believed = beliefOf(job.value, new AssessmentSession());
    if (!believed.ok) throw new Error(believed.problem);
    const order = stageViews(believed.value).map(({ stage }) => stage);
    expect(order.slice(0, 4)).toEqual(["input", "rectifier", "inrush", "bus"]);
  });

  it("hold the suspect that the readings point to, clear what they clear, and leave the rest untested", () => {
    const stages = stagesOf(DRIVE, [
      ...DEAD,
      diode("L_B", "PBUS", 0.467),
      diode("N_C", "PBUS", 0.467),
      diode("NBUS", "L_B", 0.467),
      diode("NBUS", "N_C", 0.467),
      diode("NBUS", "PBUS", 0.455),
      diode("U", "PBUS", 0.001),
      diode("PBUS", "U", 0.001),
    ]);
    const of = (stage: string) => stages.find((one) => one.stage === stage);
    expect(of("inverter")?.state).toBe("suspect");
    expect(of("inverter")?.suspects[0]?.part).toBe("Q1");
    expect(of("rectifier")).toMatchObject({ state: "cleared", untested: [] });
    expect(of("logic")?.state).toBe("untested");
  });

  it("are hidden where a fault elsewhere drowns what readings would have shown of them", () => {
    const board = parseBoard(DRIVE);
    if (!board.ok) throw new Error(board.problem);
    const suspect = (part: string, probability: number, because: Partial<Because>): Suspect => ({
      part,
      probability,
      modes: [],
      because: () => ({ speaksFor: [], speaksAgainst: [], maskedBy: [], untested: false, ...because }),
    });
    const believed = {
      job: { board: board.value },
      timeline: { now: { off: new Set<string>() } },
      belief: {
        suspects: [
          suspect("C5", 0.9, {}),
          suspect("C6", 0.04, { maskedBy: ["C5"] }),
          suspect("BR1", 0.2, { maskedBy: ["C5"] }),
          suspect("RT1", 0.02, { maskedBy: ["C5"], untested: true }),
          suspect("K1", 0.06, { untested: true }),
          suspect("U7", 0.03, {}),
          suspect("C24", 0.03, {}),
          suspect("M1", 0.01, {}),
        ],
      },
    };
    const stages = stageViews(believed);
    const said = (stage: string) => stages.find((one) => one.stage === stage);
    expect(said("bus")).toMatchObject({ state: "suspect", suspects: [{ part: "C5" }], masked: ["C6"] });
    expect(said("rectifier")).toMatchObject({ state: "masked", masked: ["BR1"], maskedBy: ["C5"] });
    expect(said("inrush")).toMatchObject({ state: "untested", untested: ["K1"], masked: ["RT1"] });
    // no part of it counts by itself, together they do: the first is named
    expect(said("logic")).toMatchObject({ state: "suspect", suspects: [{ part: "U7" }] });
    expect(said("logic")?.probability).toBeCloseTo(1 - 0.97 ** 2, 12);
    expect(said("output")?.state).toBe("cleared");
  });
});
