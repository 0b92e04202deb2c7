import { describe, expect, it } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import { railGroups, railShort } from "../board/rail-groups.ts";
import { makePredictor } from "../meter/predictor.ts";
import { DEFAULT_METER } from "../meter/settings.ts";
import { fixtureBoard } from "../priors/drives.fixture.ts";
import { priorTable } from "../priors/prior-table.ts";
import { type Asked, answer } from "./answer.ts";
import { faultsAfter, faultsOnArrival, type PracticeJob } from "./hidden-course.ts";

const board = fixtureBoard("module");
const table = priorTable(board, "impact", "dead");

const practiceJob = (seed: number): PracticeJob => ({
  job: { board, cause: "impact", symptom: "dead", absent: [], meter: DEFAULT_METER },
  table,
  seed,
});

/** Boards of which one thing is wrong: a part across a rail, shorted with a few ohms or less. */
const shorted = (() => {
  const groups = railGroups(board).filter(({ name, members }) => name !== "bus" && members.length > 2);
  return Array.from({ length: 1500 }, (_, seed) => practiceJob(seed)).flatMap((practice) => {
    const [only, ...more] = faultsOnArrival(practice);
    if (only === undefined || more.length > 0) return [];
    return groups.flatMap((group) => {
      const short = railShort(group, only.fault);
      return short === null || short.member === null || short.ohms > 3 ? [] : [{ practice, group, short }];
    });
  });
})();

function asked(practice: PracticeJob, log: readonly JobEvent[], event: Asked): JobEvent {
  const folded = foldLog(board, [], log);
  if (!folded.ok) throw new Error(folded.problem);
  const answered = answer(practice, folded.value, event, makePredictor);
  if (!answered.ok) throw new Error(answered.problem);
  return answered.event;
}

const reading = (event: JobEvent): number =>
  event.do === "measure" && typeof event.reading === "number" ? event.reading : Number.NaN;

describe("a practice board with a shorted rail", () => {
  it("reads lowest by four wires at the pins of the shorted part, more often than not by far", () => {
    expect(shorted.length).toBeGreaterThan(8);
    let right = 0;
    for (const { practice, group, short } of shorted) {
      const ohms = group.members.map(({ part, plus, minus }) =>
        reading(
          asked(practice, [], {
            do: "measure",
            mode: "ohms",
            wires: 4,
            red: `${part.ref}.${plus}`,
            black: `${part.ref}.${minus}`,
          }),
        ),
      );
      for (const one of ohms) expect(Math.abs(one - short.ohms)).toBeLessThan(0.1 + 0.1 * short.ohms);
      const lowest = group.members[ohms.indexOf(Math.min(...ohms))];
      if (lowest?.part === short.member?.part) right++;
    }
    expect(right / shorted.length).toBeGreaterThan(0.85);
  });

  it("fed a low voltage limits or not by its ohms, and nothing breaks by it", () => {
    for (const { practice, group, short } of shorted) {
      const power = asked(practice, [], {
        do: "power",
        feed: "bench",
        volts: 0.35,
        limitAmps: 1,
        at: [group.net, group.back],
      });
      // 0.35 V over 1 A less the supply's own leads
      const seen = power.do === "power" ? power.observed : null;
      if (short.ohms > 0.5) expect(seen).toBe("quiet");
      if (short.ohms < 0.15) expect(seen).toBe("limiting");
      const after = foldLog(board, [], [power]);
      if (!after.ok) throw new Error(after.problem);
      expect(faultsAfter(practice, after.value)).toEqual(faultsOnArrival(practice));
    }
  });
});
