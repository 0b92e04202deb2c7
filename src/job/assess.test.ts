import { describe, expect, it } from "vitest";
import { parseBoard } from "../board/parse-board.ts";
import { deriveRoles } from "../board/roles.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { assess } from "./assess.ts";
import { parseJob } from "./parse-job.ts";

describe.each(SHIPPED.map(({ id, board }) => [id, board] as const))(
  "%s with its line fuse read open",
  (_, content) => {
    const board = parseBoard(content);
    if (!board.ok) throw new Error(board.problem);
    const [fuse] = deriveRoles(board.value).lineFuses;
    const [red, black] = [...(board.value.parts.get(fuse ?? "")?.pins.values() ?? [])];
    const job = parseJob(
      {
        format: "faultwright-job/1",
        board: content,
        cause: "surge",
        symptom: "dead",
        log: [{ do: "measure", mode: "ohms", red, black, reading: "OL" }],
      },
      board.value,
    );
    if (!job.ok) throw new Error(job.problem);
    const assessed = assess(job.value);
    if (!assessed.ok) throw new Error(assessed.problem);
    const { explanations, remainder, suspects } = assessed.value.belief;

    it("leaves explanations, whatever has blown it and now hides behind it", () => {
      expect(explanations.length).toBeGreaterThan(0);
      expect(explanations.reduce((sum, { probability }) => sum + probability, remainder)).toBeCloseTo(1, 9);
    });

    it("names the fuse before any other part", () => {
      expect(suspects[0]?.part).toBe(fuse);
      expect(suspects[0]?.probability).toBeGreaterThan(0.9);
    });
  },
);
