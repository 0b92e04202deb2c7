/** Good before power and zero after it: it broke then. Readings are the solver's for the board without the fault, and with it. */
import { describe, expect, it } from "vitest";
import type { JobEvent, MeasureEvent, Observed } from "../bench/event.ts";
import type { Fault } from "../board/fault.ts";
import { parseBoard } from "../board/parse-board.ts";
import { parseFault } from "../board/parse-fault.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { AssessmentSession, beliefOf } from "./assess.ts";
import { parseJob } from "./parse-job.ts";
import { provenEmpty } from "./work-ahead.ts";

const content = SHIPPED.find(({ id }) => id === "greenhouse-fan-drive")?.board;
const parsed = parseBoard(content);
if (!parsed.ok) throw new Error(parsed.problem);
const board = parsed.value;
const session = new AssessmentSession();
const SAFE = provenEmpty({ board, absent: [] });
const BARE = { lifted: new Set<string>(), off: new Set<string>(["M1"]), clips: [], powered: false };

function jobOf(log: readonly JobEvent[]) {
  const job = parseJob(
    { format: "faultwright-job/1", board: content, cause: "unknown", symptom: "dead", absent: ["M1"], log },
    board,
  );
  if (!job.ok) throw new Error(job.problem);
  return job.value;
}

function believed(log: readonly JobEvent[]) {
  const found = beliefOf(jobOf(log), session);
  if (!found.ok) throw new Error(found.problem);
  return found.value.belief;
}

function faultNamed(name: string): Fault {
  const fault = parseFault(name, board);
  if (!fault.ok) throw new Error(fault.problem);
  return fault.value;
}

type Pair = Pick<MeasureEvent, "mode" | "red" | "black">;

/** What the meter shows with these faults. */
function read({ mode, red = "", black = "" }: Pair, faults: readonly Fault[]): JobEvent {
  if (mode !== "diode" && mode !== "ohms") throw new Error(`${mode} is not predicted here`);
  const shown = session.predictor(jobOf([]), BARE).predict({ mode, red, black }, faults);
  if (!shown.solved) throw new Error(shown.why);
  return { do: "measure", mode, red, black, reading: shown.shown };
}

const diode = (red: string, black: string): Pair => ({ mode: "diode", red, black });

/** What breaks, what was seen of it, and the pair of places that tells. */
const PAIRS: readonly (readonly [fault: string, seen: Observed, pair: Pair])[] = [
  ["BR1.minusac1:short", "fuse-blew", diode("NBUS", "L_B")],
  ["BR1.ac2plus:short", "fuse-blew", diode("N_C", "PBUS")],
  ["RV1:short", "fuse-blew", diode("L_F", "N_IN")],
  ["C5:short", "fuse-blew", diode("NBUS", "PBUS")],
  ["Q1.ce:short", "smoke", diode("U", "PBUS")],
  ["Q4.ce:short", "smoke", diode("E_V", "V")],
  ["Q5.ge:short", "smoke", diode("G_HW", "W")],
  ["U4.ds:short", "smoke", diode("NBUS", "DRAIN")],
  ["D7:short", "quiet", diode("S_V15", "V15")],
  ["U7.supply:short", "smoke", diode("NBUS", "V5")],
];

/** Those with nothing beside them that would read the same. */
const ALONE: ReadonlySet<string> = new Set([
  "BR1.minusac1:short",
  "BR1.ac2plus:short",
  "Q1.ce:short",
  "Q4.ce:short",
  "Q5.ge:short",
  "U4.ds:short",
]);

/** Both ways, as a junction is read. */
const bothWays = (pair: Pair, faults: readonly Fault[]): readonly JobEvent[] => [
  read(pair, faults),
  read(diode(pair.black ?? "", pair.red ?? ""), faults),
];

describe("a junction that read good before power and zero after it", () => {
  it.each(PAIRS)("%s, power showing %s: it broke then, and no reading is a slip", (name, seen, pair) => {
    const after = believed([
      ...SAFE,
      ...bothWays(pair, []),
      { do: "power", feed: "mains", observed: seen },
      { do: "unpower" },
      ...SAFE,
      ...bothWays(pair, [faultNamed(name)]),
    ]);
    expect(after.unexplained).toEqual([]);
    const broke = after.explanations.filter(({ faults }) => faults.some(({ since }) => since >= 0));
    expect(broke.reduce((sum, { probability }) => sum + probability, 0)).toBeGreaterThan(0.95);
    // where nothing else lies between the two places it is this part
    const [part] = name.split(/[.:]/);
    const chance = after.suspects.find((one) => one.part === part)?.probability;
    if (ALONE.has(name)) expect(chance).toBeGreaterThan(0.95);
  });
});
