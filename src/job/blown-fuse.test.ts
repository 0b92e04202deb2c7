/** A fuse that was seen to blow is open, and something blew it. */
import { expect, it } from "vitest";
import { parseBoard } from "../board/parse-board.ts";
import { provenEmpty } from "../planning/scene.fixture.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { AssessmentSession, beliefOf } from "./assess.ts";
import { parseJob } from "./parse-job.ts";

it.each(["greenhouse-fan-drive", "washing-machine-drive", "induction-hob"])(
  "on the mains, %s: the fuse is open, and the board is not whole",
  (id) => {
    const content = SHIPPED.find((one) => one.id === id)?.board;
    const board = parseBoard(content);
    if (!board.ok) throw new Error(board.problem);
    const job = parseJob(
      {
        format: "faultwright-job/1",
        board: content,
        cause: "surge",
        symptom: "dead",
        terms: {},
        log: [...provenEmpty(board.value), { do: "power", feed: "mains", observed: "fuse-blew" }],
      },
      board.value,
    );
    if (!job.ok) throw new Error(job.problem);
    const believed = beliefOf(job.value, new AssessmentSession());
    if (!believed.ok) throw new Error(believed.problem);
    const { suspects, healthyProbability } = believed.value.belief;
    expect(suspects.find(({ part }) => part === "F1")?.probability).toBeGreaterThan(0.95);
    expect(healthyProbability).toBeLessThan(0.01);
    // a fuse does not blow by itself
    const [, ...others] = suspects;
    expect(others.reduce((sum, { probability }) => sum + probability, 0)).toBeGreaterThan(0.8);
  },
);
