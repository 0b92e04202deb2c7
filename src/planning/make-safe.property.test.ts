import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { foldLog } from "../bench/fold.ts";
import { parseBoard } from "../board/parse-board.ts";
import { smallDrive } from "../board/small-drive.fixture.ts";
import { DEFAULT_TERMS } from "../money/terms.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { anyLog, readToTheEnd, whyNot } from "./any-log.fixture.ts";
import { makeSafe } from "./make-safe.ts";

function boardOf(content: unknown) {
  const parsed = parseBoard(content);
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
}

const BOARDS = [
  ["a small drive with a series pair", boardOf(smallDrive())],
  ...SHIPPED.map(({ id, board }) => [id, boardOf(board)] as const),
] as const;
const RUNS = { seed: 4711, numRuns: 500 };

describe.each(BOARDS)("whatever was done to %s", (_name, board) => {
  it("as long as a store is not proven empty, only that is asked for that proves or empties it", () => {
    let open = 0;
    let shut = 0;
    const property = fc.property(anyLog(board, 40), (log) => {
      const folded = foldLog(board, [], log);
      if (!folded.ok) throw new Error(folded.problem);
      const timeline = folded.value;
      const due = makeSafe({ board, bench: timeline.now, timeline, terms: DEFAULT_TERMS, equipment: [] });
      const end = readToTheEnd(board, log);
      const closed = end.powered || (!end.proofOverruled && end.unproven.size > 0);
      if (closed) shut++;
      else open++;
      // nothing due: whatever the sums say comes next, a hand inside, a cold check or power
      if (due === null) {
        expect(closed).toBe(false);
        expect(end.resistors > 0 && !end.resistorOverruled).toBe(false);
      } else for (const step of [due.action, ...due.row]) expect(whyNot(board, end, step)).toBeNull();
      // and nobody who has proven everything is kept waiting
      if (!closed && end.resistors === 0) expect(due).toBeNull();
    });
    fc.assert(property, RUNS);
    expect(open).toBeGreaterThan(RUNS.numRuns / 10);
    expect(shut).toBeGreaterThan(RUNS.numRuns / 4);
  });
});
