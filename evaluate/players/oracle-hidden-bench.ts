/** The oracle's bench as players meet it, with the truth by which their verdicts are judged. */
import type { Timeline } from "../../src/bench/timeline.ts";
import { type Fault, faultName } from "../../src/board/fault.ts";
import { nameOf } from "../oracle/fault-name.ts";
import type { OracleBench } from "../oracle/oracle-bench.ts";
import { outOfCircuit } from "../oracle/oracle-course.ts";
import { conditionOf } from "../oracle/power-truth.ts";
import type { BoardState, HiddenBench } from "./hidden-bench.ts";

function namesOf(faults: readonly Fault[]): readonly string[] {
  return [...new Set(faults.map(nameOf))];
}

/**
 * A fault matters where the board with it alone does not simply work: it is dead, or it runs and comes back. What the oracle's own
 * rules call working is let be, also where it might one day bring another fault: a capacitor that takes spikes off and has lost
 * some of its farads, a leak of megohms.
 *
 * A board counts as repaired where it works with everything that is left: it runs, and will go on doing so. `weak` runs more often
 * than not and is brought back; handing it back is a false `repaired`, counted apart from one that never ran.
 */
export function oracleHiddenBench(bench: OracleBench): HiddenBench {
  const { board } = bench.oracle;
  const present = (timeline: Timeline) => bench.hidden(timeline).faults;
  return {
    answerRow: (timeline, asked) => bench.answerRow(timeline, asked),
    faulty: (timeline) =>
      namesOf(present(timeline).filter((fault) => conditionOf(board, [fault]) !== "works")),
    dead: (timeline) => namesOf(present(timeline)),
    faults: (timeline) => present(timeline).map(faultName),
    state: (timeline): BoardState => {
      const condition = conditionOf(board, present(timeline), outOfCircuit(timeline.now));
      return condition === "works" || condition === "weak" ? condition : "dead";
    },
  };
}
