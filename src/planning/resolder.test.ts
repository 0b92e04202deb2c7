import { expect, test } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import type { FaultMode } from "../board/fault.ts";
import { DEFAULT_TERMS } from "../money/terms.ts";
import type { Hypotheses } from "./hypotheses.ts";
import type { PlanningInput } from "./planning-input.ts";
import { resolderFirst } from "./resolder.ts";
import { smallDriveBoard } from "./scene.fixture.ts";

const BOARD = smallDriveBoard();
const PRICE = { money: 3, minutes: 10, perMinute: 0.5 };

/** The part is faulty in one way, for certain. */
function surely(part: string, mode: FaultMode): Hypotheses {
  const prior = {
    fault: { of: "part", part, junction: null, mode, value: null } as const,
    reportAs: `${part}:${mode}`,
    part,
    site: part,
    rate: 0.01,
    spreadLn: 0,
  };
  return {
    priors: [prior],
    cores: [{ present: [0], faults: [prior.fault] }],
    list: [{ core: 0, beside: -1, unlisted: false, weight: 1, dead: [part] }],
    remainder: 0,
  };
}

function after(log: readonly JobEvent[]): PlanningInput {
  const folded = foldLog(BOARD, [], log);
  if (!folded.ok) throw new Error(folded.problem);
  const timeline = folded.value;
  return { board: BOARD, bench: timeline.now, timeline, terms: DEFAULT_TERMS, equipment: [] };
}

test("the joints of an open inrush resistor are made anew before one is bought", () => {
  expect(resolderFirst(after([]), "NTC1", surely("NTC1", "open"), PRICE)).toEqual({
    do: "resolder",
    part: "NTC1",
  });
});

test("a short is no joint, and a fuse blows inside", () => {
  expect(resolderFirst(after([]), "NTC1", surely("NTC1", "short"), PRICE)).toBeNull();
  expect(resolderFirst(after([]), "F1", surely("F1", "open"), PRICE)).toBeNull();
});

test("joints are made anew once, and again only for a part fitted since", () => {
  const open = surely("NTC1", "open");
  const done: JobEvent = { do: "resolder", part: "NTC1" };
  expect(resolderFirst(after([done]), "NTC1", open, PRICE)).toBeNull();
  expect(resolderFirst(after([done, { do: "replace", part: "NTC1" }]), "NTC1", open, PRICE)).not.toBeNull();
});

test("a part with a pin off its pad is soldered anyway", () => {
  const lifted = after([{ do: "lift", place: "NTC1.1" }]);
  expect(resolderFirst(lifted, "NTC1", surely("NTC1", "open"), PRICE)).toBeNull();
});
