/** From the first run to the verdict: what is asked of a board before it counts as repaired. */
import { describe, expect, it } from "vitest";
import type { JobEvent, Observed } from "../bench/event.ts";
import { parseBoard } from "../board/parse-board.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { type Assessment, AssessmentSession, assess } from "./assess.ts";
import { parseJob } from "./parse-job.ts";
import { provenEmpty } from "./warm-up.ts";

function bench(id: string, equipment: readonly string[] = []) {
  const content = SHIPPED.find((one) => one.id === id)?.board;
  const parsed = parseBoard(content);
  if (!parsed.ok) throw new Error(parsed.problem);
  const board = parsed.value;
  const session = new AssessmentSession();
  const jobAfter = (...log: readonly JobEvent[]): Assessment => {
    const job = parseJob(
      { format: "faultwright-job/1", board: content, cause: "surge", symptom: "dead", equipment, log },
      board,
    );
    if (!job.ok) throw new Error(job.problem);
    const assessed = assess(job.value, session);
    if (!assessed.ok) throw new Error(assessed.problem);
    return assessed.value;
  };
  return { board, jobAfter, safe: provenEmpty({ board, absent: [] }) };
}

const fuse: readonly JobEvent[] = [
  { do: "measure", mode: "ohms", red: "L_IN", black: "L_F", reading: "OL" },
  { do: "replace", part: "F1" },
  { do: "measure", mode: "ohms", red: "L_IN", black: "L_F", reading: 0.1 },
];
const idle: readonly JobEvent[] = [{ do: "power", feed: "mains", observed: "runs" }, { do: "unpower" }];
const load: JobEvent = {
  do: "power",
  feed: "mains",
  load: "own",
  meters: [["PBUS", "NBUS"]],
  observed: "runs",
};
const bus = (reading: number, afterPower: number): JobEvent => ({
  do: "measure",
  mode: "dcv",
  red: "PBUS",
  black: "NBUS",
  reading,
  afterPower,
});
const end = (observed: Observed): JobEvent => ({ do: "unpower", observed });

describe("after a board has run at idle", () => {
  const { jobAfter, safe } = bench("greenhouse-fan-drive");
  const ran = [...safe, ...fuse, ...idle];

  it("it is not closed: emptied once more, and told to run with a meter on it", () => {
    expect(jobAfter(...ran).proposal.action).toMatchObject({ do: "measure", mode: "dcv" });
    const { action, forecast, why } = jobAfter(...ran, ...safe).proposal;
    expect(action).toMatchObject({ do: "power", feed: "mains", load: "own" });
    expect(action).toHaveProperty("meters.length", 1);
    expect(forecast).not.toBeNull();
    expect(why).toMatch(/its own load/);
  });

  it("the meter is read after 20 s and after 20 min, then the end of the run is asked for", () => {
    const on = [...ran, ...safe, load];
    expect(jobAfter(...on).proposal.action).toMatchObject({ mode: "dcv", red: "PBUS", afterPower: 20 });
    expect(jobAfter(...on, bus(318, 20)).proposal.action).toMatchObject({ mode: "dcv", afterPower: 1200 });
    const last = jobAfter(...on, bus(318, 20), bus(318, 1200)).proposal;
    expect(last.action).toEqual({ do: "unpower" });
    expect(last.why).toMatch(/20 min/);
  });

  it("one that held is closed as repaired, with what is left in doubt", () => {
    const held = jobAfter(...ran, ...safe, load, bus(318, 20), bus(318, 1200), end("runs")).proposal;
    expect(held.action).toEqual({ do: "close", verdict: "repaired" });
    expect(held.why).toMatch(/Left in doubt|comes back/);
  });

  it("one that stopped by itself, or smoked, goes on", () => {
    for (const how of ["quiet", "smoke"] as const) {
      const stopped = jobAfter(...ran, ...safe, load, bus(318, 20), end(how));
      expect(stopped.proposal.action).not.toMatchObject({ do: "close", verdict: "repaired" });
      const held = jobAfter(...ran, ...safe, load, bus(318, 20), end("runs"));
      expect(stopped.belief.healthyProbability).toBeLessThan(0.5 * held.belief.healthyProbability);
    }
  });

  it("one whose bus sags a quarter under load has its inrush part still in the way: relay or what drives it", () => {
    const before = jobAfter(...ran, ...safe, load);
    const sagged = jobAfter(...ran, ...safe, load, bus(236, 20), end("runs"));
    const chance = ({ belief }: Assessment, refs: readonly string[]) =>
      belief.suspects
        .filter(({ part }) => refs.includes(part))
        .reduce((sum, { probability }) => sum + probability, 0);
    const way = ["K1"];
    expect(chance(sagged, way)).toBeGreaterThan(10 * chance(before, way));
    expect(sagged.proposal.action).not.toMatchObject({ do: "close", verdict: "repaired" });
  });
});

describe("a board with a boost", () => {
  const { jobAfter, safe } = bench("outdoor-unit-inverter");
  const on = [...safe, ...fuse, ...idle, ...safe, load];

  it("that stays at the mains' peak under load never started its boost, and is not handed back", () => {
    const flat = jobAfter(...on, bus(316, 20), bus(316, 1200), end("runs"));
    expect(flat.proposal.action).not.toMatchObject({ do: "close", verdict: "repaired" });
    const pfc = flat.belief.suspects.filter(({ part }) => flat.job.board.parts.get(part)?.stage === "pfc");
    const held = jobAfter(...on, bus(384, 20), bus(384, 1200), end("runs"));
    const before = held.belief.suspects.filter(({ part }) => pfc.some((one) => one.part === part));
    const sum = (list: typeof pfc) => list.reduce((all, { probability }) => all + probability, 0);
    expect(sum(pfc)).toBeGreaterThan(10 * sum(before));
  });
});

describe("a bench with a thermometer", () => {
  const { jobAfter, safe } = bench("greenhouse-fan-drive", ["thermal-camera"]);

  it("takes the warmth of what was fitted after two minutes, from outside", () => {
    const log: readonly JobEvent[] = [
      ...safe,
      ...fuse,
      { do: "replace", part: "BR1" },
      ...idle,
      ...safe,
      load,
    ];
    const { action, row } = jobAfter(...log, bus(318, 20)).proposal;
    const asked = [action, ...row].map((one) =>
      one.do === "measure" ? [one.part, one.by, one.afterPower] : [],
    );
    expect(asked).toContainEqual(["BR1", "camera", 120]);
  });
});
