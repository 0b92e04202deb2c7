/** The oracle's bench as players meet it, with the truth by which their verdicts are judged. */
import { pinOfPlace } from "../../src/bench/place.ts";
import type { Timeline } from "../../src/bench/timeline.ts";
import { type Fault, faultName } from "../../src/board/fault.ts";
import type { Asked } from "../../src/practice/answer.ts";
import { nameOf } from "../oracle/fault-name.ts";
import type { OracleBench } from "../oracle/oracle-bench.ts";
import { diedOfThemselves, outOfCircuit } from "../oracle/oracle-course.ts";
import { conditionOf } from "../oracle/power-truth.ts";
import type { BoardState, HiddenBench } from "./hidden-bench.ts";

function namesOf(faults: readonly Fault[]): readonly string[] {
  return [...new Set(faults.map(nameOf))];
}

/** The part that this board never had and whose pin, or whose very self, the hands would go to; null where there is none. */
function missingPart({ oracle }: OracleBench, asked: Asked | undefined): string | null {
  const missing = (ref: string | undefined) =>
    ref !== undefined && oracle.file.parts.has(ref) && !oracle.board.parts.has(ref);
  if (asked?.do === "measure") {
    const refs = [asked.red, asked.black].map((place) =>
      place === undefined ? undefined : pinOfPlace(place)?.ref,
    );
    return refs.find(missing) ?? null;
  }
  return asked !== undefined && (asked.do === "clean" || asked.do === "resolder") && missing(asked.part)
    ? (asked.part ?? null)
    : null;
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
    answerRow: async (timeline, asked) => {
      const answers = await bench.answerRow(timeline, asked);
      return answers.map((answer, at) => {
        const part = missingPart(bench, asked[at]);
        return part === null
          ? answer
          : { ok: true, slipped: false, event: { do: "mark", part, as: "absent" } };
      });
    },
    faulty: (timeline) =>
      namesOf(present(timeline).filter((fault) => conditionOf(board, [fault]) !== "works")),
    dead: (timeline) => namesOf(present(timeline)),
    diedOfThemselves: (timeline) => diedOfThemselves(bench.oracle, timeline),
    faults: (timeline) => present(timeline).map(faultName),
    state: (timeline): BoardState => {
      const condition = conditionOf(board, present(timeline), outOfCircuit(timeline.now));
      return condition === "works" || condition === "weak" ? condition : "dead";
    },
  };
}
