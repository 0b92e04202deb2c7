/** From the first run to the verdict: what is asked of a board before it counts as repaired. */

import { describe, expect, it } from "vitest";
import type { JobEvent, Observed } from "../bench/event.ts";
import { parseBoard } from "../board/parse-board.ts";
import { plain } from "../messages/said.ts";
import { MINUTES } from "../money/minutes.ts";
import { MOTOR_INSULATION } from "../priors/told.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { type Assessment, AssessmentSession, assess } from "./assess.ts";
import { parseJob } from "./parse-job.ts";
import { provenEmpty } from "./work-ahead.ts";

function bench(id: string, equipment: readonly string[] = [], terms: object = {}) {
  const content = SHIPPED.find((one) => one.id === id)?.board;
  const parsed = parseBoard(content);
  if (!parsed.ok) throw new Error(parsed.problem);
  const board = parsed.value;
  const session = new AssessmentSession();
  const jobAfter = (...log: readonly JobEvent[]): Assessment => {
    const job = parseJob(
      { format: "faultwright-job/1", board: content, cause: "surge", symptom: "dead", equipment, terms, log },
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
const end = (observed: Observed, afterPower = 120): JobEvent => ({ do: "unpower", observed, afterPower });

describe("after a board has run at idle", () => {
  const { jobAfter, safe } = bench("greenhouse-fan-drive");
  const known: JobEvent = { do: "overrule", of: "motor", why: "Read before this job, it is good" };
  const ran = [...safe, known, ...fuse, ...idle];

  it("it drives its own load next, with nobody reaching inside: under 5 minutes with all that belongs to it", () => {
    const { action, row, minutes, why } = jobAfter(...ran).proposal;
    expect(action).toEqual({ do: "power", feed: "mains", load: "own" });
    expect([row.length, minutes]).toEqual([0, 3]);
    expect(why).toMatch(/its own load.*Nobody reaches inside/);
    expect(MINUTES.power + MINUTES.measure + MINUTES.unpower).toBeLessThan(5);
  });

  it("a meter that hung on it at idle stays, and one that may be clipped on hangs where it tells most", () => {
    const clipped: readonly JobEvent[] = [
      ...safe,
      known,
      ...fuse,
      { do: "power", feed: "mains", meters: [["V15", "NBUS"]], observed: "runs" },
      { do: "measure", mode: "dcv", red: "V15", black: "NBUS", reading: 15.1 },
      { do: "unpower" },
    ];
    expect(jobAfter(...clipped).proposal.action).toMatchObject({ load: "own", meters: [["V15", "NBUS"]] });
    expect(jobAfter(...ran, load, end("trip"), ...safe).proposal.action).not.toMatchObject({ load: "own" });
  });

  it("a motor that was off its plug meanwhile goes back on it first, every store proven empty, and then it is driven", () => {
    // whoever pays little for a comeback does not look at more while it is open
    const { jobAfter: cheapAfter } = bench("greenhouse-fan-drive", [], { agreedPrice: 20, comebackCost: 0 });
    const apart: readonly JobEvent[] = [
      { do: "remove", part: "M1" },
      ...["u-v", "v-w", "u-w"].map((pair): JobEvent => {
        const [a, b] = pair.split("-");
        return { do: "measure", mode: "ohms", red: `M1.${a}`, black: `M1.${b}`, reading: 4.2 };
      }),
      { do: "answer", question: MOTOR_INSULATION.question, answer: MOTOR_INSULATION.good },
    ];
    const without = [...safe, ...apart, ...fuse, ...idle];
    expect(cheapAfter(...without).proposal.action).toMatchObject({ do: "measure", mode: "dcv" });
    const proven = [...without, ...safe];
    expect(cheapAfter(...proven).proposal).toMatchObject({
      action: { do: "restore", part: "M1" },
      gate: "motor",
    });
    const back = cheapAfter(...proven, { do: "restore", part: "M1" });
    expect(back.proposal.action).toMatchObject({ do: "power", feed: "mains", load: "own" });
    const unread = [...safe, ...fuse, ...idle, ...safe];
    expect(cheapAfter(...unread).proposal).toMatchObject({
      action: { do: "remove", part: "M1" },
      gate: "motor",
    });
  });

  it("the meter is read after 20 s, and a board that is doubted runs warm through; a cheap one is off after 2 min", () => {
    const on = [...ran, load];
    expect(jobAfter(...on).proposal.action).toMatchObject({ mode: "dcv", red: "PBUS", afterPower: 20 });
    const { action, minutes, why } = jobAfter(...on, bus(318, 20)).proposal;
    expect(action).toEqual({ do: "unpower", afterPower: 1200 });
    expect(why).toMatch(/20 min/);
    // a third of the 18 minutes beyond the first two, and switching off
    expect(minutes).toBeCloseTo(6.5, 9);
    const cheap = bench("greenhouse-fan-drive", [], { agreedPrice: 20, comebackCost: 0 });
    expect(cheap.jobAfter(...on, bus(318, 20)).proposal.action).toEqual({ do: "unpower", afterPower: 120 });
  });

  it("one that held is closed as repaired, with what is left unproven, and is not loaded again", () => {
    // whoever pays little for a comeback does not open it once more for what is left
    const { jobAfter: cheapAfter } = bench("greenhouse-fan-drive", [], { agreedPrice: 20, comebackCost: 0 });
    const held = cheapAfter(...ran, load, bus(318, 20), end("runs", 1200)).proposal;
    expect(held.action).toEqual({ do: "close", verdict: "repaired" });
    expect(plain(held.why)).toMatch(/under load as well.*left unproven/);
  });

  it("one that stopped by itself, or smoked, goes on", () => {
    for (const how of ["quiet", "smoke"] as const) {
      const stopped = jobAfter(...ran, load, bus(318, 20), end(how));
      expect(stopped.proposal.action).not.toMatchObject({ do: "close", verdict: "repaired" });
      const held = jobAfter(...ran, load, bus(318, 20), end("runs"));
      expect(stopped.belief.healthyProbability).toBeLessThan(0.5 * held.belief.healthyProbability);
    }
  });

  it("the same end once more, of a board left as it is, counts once; a longer run that held counts for more", () => {
    const healthy = (...log: readonly JobEvent[]) => jobAfter(...ran, ...log).belief.healthyProbability;
    const once = healthy(load, end("quiet"), load, { do: "unpower" });
    expect(healthy(load, end("quiet"), load, end("quiet"))).toBeCloseTo(once, 9);
    expect(healthy(load, end("runs", 1200))).toBeGreaterThan(healthy(load, end("runs", 120)));
  });

  it("one whose bus sags a quarter under load has its inrush part still in the way: relay or what drives it", () => {
    const before = jobAfter(...ran, load);
    const sagged = jobAfter(...ran, load, bus(236, 20), end("runs"));
    const chance = ({ belief }: Assessment, refs: readonly string[]) =>
      belief.suspects
        .filter(({ part }) => refs.includes(part))
        .reduce((sum, { probability }) => sum + probability, 0);
    expect(chance(sagged, ["K1"])).toBeGreaterThan(10 * chance(before, ["K1"]));
    expect(sagged.proposal.action).not.toMatchObject({ do: "close", verdict: "repaired" });
  });
});

describe("a board with a boost", () => {
  const { jobAfter, safe } = bench("outdoor-unit-inverter");
  const on = [...safe, ...fuse, ...idle, load];

  it("that stays at the mains' peak under load never started its boost, and is not handed back", () => {
    const flat = jobAfter(...on, bus(316, 20), end("runs", 1200));
    expect(flat.proposal.action).not.toMatchObject({ do: "close", verdict: "repaired" });
    const pfc = flat.belief.suspects.filter(({ part }) => flat.job.board.parts.get(part)?.stage === "pfc");
    const held = jobAfter(...on, bus(384, 20), end("runs", 1200));
    const before = held.belief.suspects.filter(({ part }) => pfc.some((one) => one.part === part));
    const sum = (list: typeof pfc) => list.reduce((all, { probability }) => all + probability, 0);
    expect(sum(pfc)).toBeGreaterThan(10 * sum(before));
  });
});

describe("a bench with a thermal camera", () => {
  it("takes the warmth of what may cook under load, where that is worth its minutes, once each", () => {
    const { jobAfter, safe } = bench("greenhouse-fan-drive", ["thermal-camera"]);
    const log = [...safe, ...fuse, ...idle, load, bus(318, 20)];
    const { action } = jobAfter(...log).proposal;
    expect(action).toMatchObject({ mode: "temperature", by: "camera", afterPower: 120 });
    if (action.do !== "measure") throw new Error("nothing is measured");
    const next = jobAfter(...log, { ...action, reading: 24 }).proposal.action;
    expect(next.do === "measure" && next.part === action.part).toBe(false);
  });
});
