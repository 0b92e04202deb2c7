import { describe, expect, it, test } from "vitest";
import type { BenchState } from "../bench/bench-state.ts";
import type { JobEvent, PowerEvent } from "../bench/event.ts";
import { parseBoard } from "../board/parse-board.ts";
import { deriveRoles } from "../board/roles.ts";
import { liveReading } from "../live/live-reading.ts";
import { plain } from "../messages/said.ts";
import { couldProveBus } from "../planning/bus-proof.ts";
import { planningHypotheses } from "../planning/hypotheses.ts";
import { clipAt } from "../planning/live-clips.ts";
import { powerFinding } from "../planning/power-step.ts";
import { repairModel } from "../planning/repair-model.ts";
import { MOTOR_INSULATION } from "../priors/told.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { AssessmentSession, assess, beliefOf, planningInput } from "./assess.ts";
import { parseJob } from "./parse-job.ts";
import { provenEmpty } from "./work-ahead.ts";

const content = SHIPPED.find(({ id }) => id === "greenhouse-fan-drive")?.board;
const parsed = parseBoard(content);
if (!parsed.ok) throw new Error(parsed.problem);
const board = parsed.value;
const { bus, rails, switchers, inrush } = deriveRoles(board);
const session = new AssessmentSession();
const AS_BROUGHT = {
  format: "faultwright-job/1",
  board: content,
  cause: "unknown",
  symptom: "dead",
  equipment: ["lamp-100", "second-meter"],
};

function proposalAfter(...log: readonly JobEvent[]) {
  const job = parseJob({ ...AS_BROUGHT, log }, board);
  if (!job.ok) throw new Error(job.problem);
  const assessed = assess(job.value, session);
  if (!assessed.ok) throw new Error(assessed.problem);
  return assessed.value.proposal;
}

const clipped = [bus?.plus ?? "", bus?.minus ?? ""] as const;
const power = (
  observed: "quiet" | "smoke" | "trip",
  meters: readonly (readonly [string, string])[],
): JobEvent => ({
  do: "power",
  feed: "mains",
  observed,
  meters,
});

describe("on a live board", () => {
  it("the meter that was clipped on before is read, hands off, before the switch goes off", () => {
    const { action, why, cautions, expect: outcomes } = proposalAfter(power("quiet", [clipped]));
    expect(action).toEqual({ do: "measure", mode: "dcv", red: clipped[0], black: clipped[1] });
    expect(plain(why)).toMatch(/hands off/);
    expect(plain(cautions.join(" "))).toMatch(/Hands off while it is live/);
    expect(plain(cautions.join(" "))).not.toMatch(/Unplug it and wait/);
    expect(outcomes.length).toBeGreaterThan(1);
  });

  it("after the reading power goes off, and where nothing was clipped on at once", () => {
    const read: JobEvent = { do: "measure", mode: "dcv", red: clipped[0], black: clipped[1], reading: 322 };
    expect(proposalAfter(power("quiet", [clipped]), read).action.do).toBe("unpower");
    expect(proposalAfter(power("quiet", [])).action.do).toBe("unpower");
  });

  it("after smoke or a tripped breaker nothing is read", () => {
    expect(proposalAfter(power("smoke", [clipped])).action.do).toBe("unpower");
    expect(proposalAfter(power("trip", [clipped])).action.do).toBe("unpower");
  });
});

/** Every store proven empty and every cold reading that is asked for that of a good board, up to the next power-up. */
function upToPower(before: readonly JobEvent[]) {
  const log: JobEvent[] = [...before, ...provenEmpty({ board, absent: [] })];
  for (let step = 0; step < 60; step++) {
    const proposal = proposalAfter(...log);
    if (proposal.action.do === "power") return { log, proposal };
    if (proposal.gate === "motor" && proposal.action.do === "answer") {
      log.push({ ...proposal.action, answer: MOTOR_INSULATION.good });
      continue;
    }
    for (const next of [proposal.action, ...proposal.row]) log.push(goodAnswer(next));
  }
  throw new Error("sixty steps without power");
}
/** A new bridge: the lamp comes before the mains. */
const REPAIRED: readonly JobEvent[] = [...provenEmpty({ board, absent: [] }), { do: "replace", part: "BR1" }];
const UP_TO_POWER = upToPower(REPAIRED);

test("behind the lamp a meter hangs on the bus or on a rail made from it, another where it tells most, and the card says where", () => {
  const { action, why } = UP_TO_POWER.proposal;
  if (action.do !== "power") throw new Error("no power");
  expect(action.meters?.length).toBe(2);
  const coils = [...board.parts.values()].flatMap(({ kind, pins }) =>
    kind === "relay" ? [[pins.get("coil1"), pins.get("coil2")]] : [],
  );
  const supplies = switchers.map(({ part }) =>
    ["vcc", "s"].map((pin) => board.parts.get(part)?.pins.get(pin)),
  );
  const limiters = inrush.map((ref) => ["1", "2"].map((pin) => board.parts.get(ref)?.pins.get(pin)));
  const places = [
    [...clipped],
    ...rails.map(({ net, back }) => [net, back]),
    ...coils,
    ...supplies,
    ...limiters,
  ];
  expect(places).toContainEqual(action.meters?.[0]);
  const shown = (action.meters ?? []).filter((pair) => couldProveBus(board, 100, pair));
  expect(shown.length).toBeGreaterThan(0);
  expect(why).toContain(`red on ${action.meters?.[0]?.[0]}`);
});

/** Powered as proposed, the board does what `observed` says and the meter shows what a good board's would. */
function powered(
  action: ReturnType<typeof proposalAfter>["action"],
  observed: "lamp-dark" | "quiet",
): JobEvent[] {
  if (action.do !== "power") throw new Error(`${action.do} instead of power`);
  const job = jobAsBrought();
  const live = session.live(job, { lifted: new Set(), off: new Set(), clips: [], powered: true }, action);
  const readings = (action.meters ?? []).map(([red, black]): JobEvent => {
    const mode = clipAt(board, [red, black]).mode;
    const reading = liveReading(live.state([]), { mode, red, black });
    return { do: "measure", mode, red, black, reading: reading?.value ?? 0 };
  });
  return [{ ...action, observed }, ...readings, { do: "unpower" }];
}

test("after a lamp gone dark the mains follows with the clips where they are, and no hand inside; then all is proven empty", () => {
  const before = upToPower([]);
  const lamp = UP_TO_POWER.proposal.action;
  if (lamp.do !== "power") throw new Error("no power");
  const after = [...before.log, ...powered(lamp, "lamp-dark")];
  const mains = proposalAfter(...after);
  expect(mains.action).toMatchObject({ do: "power", feed: "mains" });
  if (mains.action.do !== "power") return;
  // those that would tell nothing more are not read again
  for (const pair of mains.action.meters ?? []) expect(lamp.meters).toContainEqual(pair);
  expect(plain(mains.why)).toContain("Nobody reaches inside");
  const quiet = [...after, ...powered(mains.action, "quiet")];
  // whatever comes next wants a hand: the proof comes first
  expect(proposalAfter(...quiet).action).toMatchObject({ do: "measure", mode: "dcv" });
});

test("a board that bears power and stays quiet is powered once more for another place than the one that was read", () => {
  const bus: JobEvent = { do: "measure", mode: "dcv", red: clipped[0], black: clipped[1], reading: 322 };
  const proven = provenEmpty({ board, absent: [] });
  const again = powerWeighed([...proven, power("quiet", [clipped]), bus, { do: "unpower" }, ...proven]);
  expect(again?.again).toBe(true);
  const action = again?.step.action;
  if (action?.do !== "power") throw new Error("no second look");
  expect(action.feed).toBe("mains");
  expect(action.meters).not.toContainEqual(clipped);
  // after smoke there is no second look
  expect(powerWeighed([...proven, power("smoke", [clipped]), { do: "unpower" }, ...proven])).toBeNull();
});

/** Power-up as it is weighed after this log, proposed or not. */
function powerWeighed(log: readonly JobEvent[]) {
  const job = { ...jobAsBrought(), log };
  const believed = beliefOf(job, session);
  if (!believed.ok) throw new Error(believed.problem);
  const { timeline, belief, priors } = believed.value;
  const hypotheses = planningHypotheses(belief, new Set());
  const model = repairModel(hypotheses, board, timeline.now, job.terms, priors, 8);
  const input = {
    ...planningInput(job, timeline),
    liveFor: (bench: BenchState, power: PowerEvent) => session.live(job, bench, power),
  };
  return powerFinding(input, hypotheses, model, () => ({ anyBreaks: 0, lossMoney: 0 }), false);
}

/** What a good board shows. */
function goodAnswer(action: ReturnType<typeof proposalAfter>["action"]): JobEvent {
  if (action.do === "look") return { ...action, finding: "clean" };
  if (action.do !== "measure") return action;
  if (action.mode === "dcv" || action.mode === "acv") return { ...action, reading: 0 };
  const bench = { lifted: new Set<string>(), off: new Set<string>(), clips: [], powered: false };
  const { mode, red = "", black = "" } = action;
  if (mode !== "diode" && mode !== "ohms" && mode !== "farads") throw new Error(`a ${mode} check`);
  const shown = session.predictor(jobAsBrought(), bench).predict({ mode, red, black }, []);
  if (!shown.solved) throw new Error(shown.why);
  return { ...action, reading: shown.shown };
}

function jobAsBrought() {
  const job = parseJob({ ...AS_BROUGHT, log: [] }, board);
  if (!job.ok) throw new Error(job.problem);
  return job.value;
}

test("a meter across the inrush part on the line is set to alternating volts, one across the bus to direct", () => {
  const [ref] = inrush;
  const pins = ["1", "2"].map((pin) => board.parts.get(ref ?? "")?.pins.get(pin) ?? "");
  expect(clipAt(board, [pins[0], pins[1]]).mode).toBe("acv");
  expect(clipAt(board, [pins[1], pins[0]]).mode).toBe("acv");
  if (bus === null) throw new Error("no bus");
  expect(clipAt(board, [bus.plus, bus.minus]).mode).toBe("dcv");
});
