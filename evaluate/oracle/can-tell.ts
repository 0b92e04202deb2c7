/**
 * Can a cold check tell a fault at all? Judged by the oracle alone, whatever the engine believes.
 *
 * Definition. The board lies on the bench as it came, nothing lifted, all its faults in it. The checks are those that the planner
 * draws up when it suspects just the parts that are truly faulty (bus, switches, gates, bridges and rails always, then every
 * junction of those parts). The noise-free reading of each is computed once as the board is and once with the faults of one part (or one
 * leak) taken away. The fault can be told where some reading changes by more than the last digits of this board's meter and the
 * practical spread of `TELLS` together; a capacitance that is shown in one case only counts as a change. A fault that hides behind
 * another, whose own removal changes nothing yet, cannot be told by this definition.
 */
import { foldLog } from "../../src/bench/fold.ts";
import type { Belief, Suspect } from "../../src/diagnosis/belief.ts";
import type { ColdCheck } from "../../src/meter/prediction.ts";
import { candidateChecks } from "../../src/planning/candidate-checks.ts";
import { BARE_BENCH } from "../agreement.ts";
import { nameOf } from "./fault-name.ts";
import { runChecks } from "./meter-run.ts";
import type { OracleBoard } from "./oracle-board.ts";
import type { OracleMeter, Seen } from "./oracle-meter.ts";

/** By how much good parts of one type, contacts and rooms move a reading without anything being wrong. From memory. */
const TELLS = {
  volts: 0.04,
  voltsShare: 0.03,
  ohms: 0.5,
  ohmsShare: 0.15,
  /** above this a board that is not new reads anything */
  mostOhms: 1e7,
  farads: 3e-10,
  faradsShare: 0.25,
} as const;

/** Digits of the display that a reading has to move by besides. */
const COUNTS = 3;

/** The checks that the planner has for a board whose truly faulty parts are suspected. */
function checksFor({ file }: OracleBoard, names: readonly string[]): readonly ColdCheck[] {
  const folded = foldLog(file, [], []);
  if (!folded.ok) throw new Error(folded.problem);
  const because = () => ({ speaksFor: [], speaksAgainst: [], maskedBy: [], untested: false });
  const suspects = names.map((part): Suspect => ({ part, probability: 1, modes: [], because }));
  const belief: Belief = {
    priors: [],
    suspects,
    healthyProbability: 0,
    explanations: [],
    remainder: 0,
    unexplained: [],
    notSolved: [],
  };
  return candidateChecks(file, BARE_BENCH, folded.value, belief).map(({ check }) => check);
}

/** The reading as far as the display goes; null where it shows no number. */
function displayed(check: ColdCheck, seen: Seen, meter: OracleMeter): number | null {
  if (check.mode === "diode") return Math.min(seen.value * meter.diodeGain, meter.diodeLimit);
  if (check.mode === "ohms") return Math.min(seen.value * meter.ohmsGain, TELLS.mostOhms);
  return seen.range < 0 || seen.value > meter.faradsLimit ? null : seen.value;
}

function differs(check: ColdCheck, one: Seen, other: Seen, meter: OracleMeter): boolean {
  const [a, b] = [displayed(check, one, meter), displayed(check, other, meter)];
  if (a === null || b === null) return a !== b;
  const most = Math.max(Math.abs(a), Math.abs(b));
  const digits = (limit: number) => (COUNTS * limit) / meter.counts;
  const spread =
    check.mode === "diode"
      ? TELLS.volts + TELLS.voltsShare * most + digits(meter.counts / 1000)
      : check.mode === "ohms"
        ? TELLS.ohms + TELLS.ohmsShare * most + digits(most)
        : TELLS.farads + TELLS.faradsShare * most + digits(most);
  return Math.abs(a - b) > spread;
}

/** Names (parts, leaks) of the faults of this board that some cold check can tell, or one of `among`. */
export async function tellable(
  oracle: OracleBoard,
  among?: readonly ColdCheck[],
): Promise<readonly string[]> {
  const names = [...new Set(oracle.faults.map(nameOf))];
  const checks = among ?? checksFor(oracle, names);
  const { board, file, room, meter, leaks } = oracle;
  const readings = (without: string | null) =>
    runChecks(
      {
        board,
        file,
        room,
        leaks,
        bench: BARE_BENCH,
        generations: new Map(),
        faults: oracle.faults.filter((fault) => nameOf(fault) !== without),
      },
      meter,
      checks,
    );
  const asItIs = await readings(null);
  const told: string[] = [];
  for (const name of names) {
    const cured = await readings(name);
    const tells = checks.some((check, at) => {
      const [one, other] = [asItIs[at] ?? null, cured[at] ?? null];
      return one !== null && other !== null && differs(check, one, other, meter);
    });
    if (tells) told.push(name);
  }
  return told;
}
