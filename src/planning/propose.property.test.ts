import fc from "fast-check";
import { expect, test } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { canAppend } from "../bench/fold.ts";
import { plain } from "../messages/said.ts";
import { anyLog, readToTheEnd, whyNot } from "./any-log.fixture.ts";
import type { Action, Proposal } from "./proposal.ts";
import { propose } from "./propose.ts";
import { scene, smallDriveBoard } from "./scene.fixture.ts";

/** One leg of the small drive: every kind of step, quickly answered. */
const BOARD = smallDriveBoard((raw) => {
  for (const ref of ["2", "3", "5", "6"].flatMap((n) => [`Q${n}`, `RG${n}`, `RP${n}`, `DZ${n}`]))
    delete raw.parts[ref];
});
const EQUIPMENT = ["lamp-100", "bench-supply", "insulation-tester", "oscilloscope", "resistor-4700"];

function next(log: readonly JobEvent[]): Proposal {
  const { input, belief, priors, predictor } = scene(BOARD, log, { equipment: EQUIPMENT });
  return propose(input, belief, priors, predictor);
}

/** What came of it: `pick` chooses among what a bench may well answer. */
function answered(action: Action, pick: number, id: string): JobEvent {
  if (action.do === "measure")
    return {
      ...action,
      id,
      reading: action.mode === "dcv" ? [0.2, 3, 160][pick % 3] : ["OL" as const, 0, 0.45][pick % 3],
    };
  if (action.do === "look") return { ...action, id, finding: pick % 2 === 0 ? "clean" : "burnt" };
  if (action.do === "power") return { ...action, id, observed: pick % 2 === 0 ? "quiet" : "runs" };
  return { ...action, id };
}

/** Words in which an insulation tester would be asked for, outside of what warns of it. */
const TESTER = /insulation|megohm|test voltage/i;

test("no proposal, nor what stands beside it, wants a hand in a board that is live or not proven dead, whatever was done before and after", () => {
  const asked = new Set<string>();
  const property = fc.property(
    anyLog(BOARD, 14),
    fc.array(fc.nat({ max: 5 }), { minLength: 1, maxLength: 3 }),
    (start, picks) => {
      let log = start;
      for (const [turn, pick] of picks.entries()) {
        const { action, row, others, why } = next(log);
        const end = readToTheEnd(BOARD, log);
        for (const step of [action, ...row, ...others.map((other) => other.action)]) {
          expect(whyNot(BOARD, end, step)).toBeNull();
          asked.add(step.do === "measure" ? step.mode : step.do);
        }
        expect(plain([why, ...others.map((other) => other.why)].join(" "))).not.toMatch(TESTER);
        const event = answered(action, pick, `then${turn}`);
        if (canAppend(BOARD, [], log, event) !== null) return;
        log = [...log, event];
      }
    },
  );
  fc.assert(property, { seed: 815, numRuns: 45 });
  for (const step of ["dcv", "diode", "ohms", "clip", "unclip", "unpower", "replace"])
    expect([...asked]).toContain(step);
});
