import { describe, expect, it, test } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { parseBoard } from "../board/parse-board.ts";
import { deriveRoles } from "../board/roles.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { AssessmentSession, assess } from "./assess.ts";
import { parseJob } from "./parse-job.ts";
import { provenEmpty } from "./warm-up.ts";

const content = SHIPPED.find(({ id }) => id === "greenhouse-fan-drive")?.board;
const parsed = parseBoard(content);
if (!parsed.ok) throw new Error(parsed.problem);
const board = parsed.value;
const { bus, rails } = deriveRoles(board);
const session = new AssessmentSession();

function proposalAfter(...log: readonly JobEvent[]) {
  const job = parseJob(
    { format: "faultwright-job/1", board: content, cause: "unknown", symptom: "dead", log },
    board,
  );
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
    expect(why).toMatch(/hands off/);
    expect(cautions.join(" ")).toMatch(/Hands off while it is live/);
    expect(cautions.join(" ")).not.toMatch(/Unplug it and wait/);
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

test("power is proposed with a meter on the bus or a rail, and the card says where", () => {
  // Every store proven empty, every cold reading of the usual sweep that of a good board: nothing cold is left that tells much.
  const log: JobEvent[] = [...provenEmpty({ board, absent: [] })];
  for (let step = 0; step < 60; step++) {
    const { action, row, why } = proposalAfter(...log);
    if (action.do === "power") {
      const places = [...rails.map(({ net, back }) => [net, back]), [...clipped]];
      expect(action.meters?.length).toBe(1);
      expect(places).toContainEqual(action.meters?.[0]);
      expect(why).toContain(`red on ${action.meters?.[0]?.[0]}`);
      return;
    }
    for (const next of [action, ...row]) log.push(goodAnswer(next));
  }
  throw new Error("sixty steps without power");
});

/** What a good board shows. */
function goodAnswer(action: ReturnType<typeof proposalAfter>["action"]): JobEvent {
  if (action.do === "look") return { ...action, finding: "clean" };
  if (action.do !== "measure") return action;
  if (action.mode === "dcv" || action.mode === "acv") return { ...action, reading: 0 };
  const job = parseJob(
    { format: "faultwright-job/1", board: content, cause: "unknown", symptom: "dead", log: [] },
    board,
  );
  if (!job.ok) throw new Error(job.problem);
  const bench = { lifted: new Set<string>(), off: new Set<string>(), clips: [], powered: false };
  const { mode, red = "", black = "" } = action;
  if (mode !== "diode" && mode !== "ohms" && mode !== "farads") throw new Error(`a ${mode} check`);
  const shown = session.predictor(job.value, bench).predict({ mode, red, black }, []);
  if (!shown.solved) throw new Error(shown.why);
  return { ...action, reading: shown.shown };
}
