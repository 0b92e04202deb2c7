/** The reference of `exact.ts` against scoring each set from scratch. */
import { expect, test } from "vitest";
import { parseBoard } from "../src/board/parse-board.ts";
import { commonLogWeights } from "../src/diagnosis/calibration.ts";
import { coldEvidence, coldGroups, EvidenceMemory } from "../src/diagnosis/cold-evidence.ts";
import { datedFaults } from "../src/diagnosis/dated-faults.ts";
import { scoreSet } from "../src/diagnosis/scored-set.ts";
import { priorTable } from "../src/priors/prior-table.ts";
import { SHIPPED } from "../src/shipped/shipped.ts";
import { Enumeration } from "./enumeration.ts";
import { drawCase } from "./exact-case.ts";

const FAULTS = 14;
const DEPTH = 4;
/** Per reading the fifth part of what both sides call the same answer. */
const NEAR = 0.1;

test.each([3, 4, 5])(
  "every set of up to four of fourteen faults is scored as from scratch, case %i",
  (seed) => {
    const parsed = parseBoard(SHIPPED[seed % SHIPPED.length].board);
    if (!parsed.ok) throw new Error(parsed.problem);
    const board = parsed.value;
    const { table, timeline, predictor } = drawCase(board, priorTable(board, "surge", "dead"), seed, FAULTS);
    const universe = datedFaults(board, timeline, table, []);
    const weights = commonLogWeights(timeline);
    const { sets } = new Enumeration(timeline, universe, predictor, table.faults, weights, DEPTH);
    const memory = new EvidenceMemory();
    const evidence = coldGroups(timeline).map((group) =>
      coldEvidence(group, predictor, table.faults, memory, new Set()),
    );
    expect(sets.length).toBeGreaterThan(900);
    expect(new Set(sets.map(({ set }) => set.join(","))).size).toBe(sets.length);
    for (const { set, score } of sets) {
      const again = scoreSet(universe, evidence, weights, set).score;
      if (again !== score) expect(Math.abs(score - again)).toBeLessThan(set.length < DEPTH ? 1e-9 : NEAR);
    }
  },
);
