/** Readings while capacitors charge: what the display shows so many seconds after touching, everything empty before. */
import { climb } from "../circuit/climb.ts";
import type { Values } from "../circuit/netlist.ts";
import type { Unsolved } from "../circuit/solve.ts";
import type { ColdCheck } from "./prediction.ts";
import type { Probed, Probing } from "./probing.ts";
import { rangesOf, rawAt } from "./ranges.ts";

/** The circuit at each of `times` (ascending); each in the first range whose reading fits at that time. */
export function climbAt(
  probing: Probing,
  check: ColdCheck,
  values: Values,
  times: readonly number[],
): readonly Probed[] | Unsolved {
  const found: (Probed | null)[] = times.map(() => null);
  for (const range of rangesOf(check.mode, probing.meter)) {
    const waiting = times.filter((_, i) => !fits(found[i]));
    if (waiting.length === 0) break;
    const problem = probing.problem(check, range, values);
    const answer = climb(problem, waiting, check.mode === "diode" ? "volts" : "ohms");
    if (!answer.solved) return answer;
    const { plus, minus } = problem.source;
    const ground = problem.netlist.nets;
    let next = 0;
    for (let i = 0; i < times.length; i++) {
      if (fits(found[i])) continue;
      const netVolts = answer.volts[next++];
      const volts = netVolts[plus < 0 ? ground : plus] - netVolts[minus < 0 ? ground : minus];
      found[i] = {
        solved: true,
        problem,
        range,
        answer: {
          solved: true,
          volts: netVolts,
          rung: "warm newton",
          iterations: answer.steps,
          residualAmps: 0,
        },
        volts,
        raw: rawAt(check.mode, range, volts),
      };
    }
  }
  return found.filter((one) => one !== null);
}

function fits(probed: Probed | null): boolean {
  return probed !== null && probed.raw <= probed.range.limit;
}
