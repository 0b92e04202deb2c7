import { faultName } from "../board/fault.ts";
/**
 * A bench for the tests of the planner: the small drive, the real priors and the real diagnosis, and a meter whose readings follow a
 * rule that can be worked out by hand: a short between the two nets reads zero, a leak a few tenths, anything else `OL`.
 */

import type { BenchState } from "../bench/bench-state.ts";
import type { JobEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import type { Board } from "../board/board.ts";
import type { Fault } from "../board/fault.ts";
import { parseBoard } from "../board/parse-board.ts";
import { smallDrive } from "../board/small-drive.fixture.ts";
import { storesOfCharge } from "../board/stores-of-charge.ts";
import type { Belief } from "../diagnosis/belief.ts";
import { believe } from "../diagnosis/believe.ts";
import { EvidenceMemory } from "../diagnosis/cold-evidence.ts";
import type { ColdCheck, MeterReading, Predictor } from "../meter/prediction.ts";
import { DEFAULT_METER } from "../meter/settings.ts";
import { DEFAULT_TERMS, type Terms } from "../money/terms.ts";
import type { Cause } from "../priors/cause.ts";
import type { PriorTable } from "../priors/fault-prior.ts";
import { priorTable } from "../priors/prior-table.ts";
import { junctionPins } from "./junction-pins.ts";
import type { PlanningInput } from "./planning-input.ts";

/** The small drive, parsed; `spoil` may change the raw file first. */
export function smallDriveBoard(spoil: (raw: ReturnType<typeof smallDrive>) => void = () => {}): Board {
  const raw = smallDrive();
  spoil(raw);
  const parsed = parseBoard(raw);
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
}

function netsOf(board: Board, bench: BenchState, fault: Fault): readonly string[] {
  if (fault.of === "nets") return fault.nets;
  const part = board.parts.get(fault.part);
  const pins = part === undefined ? null : junctionPins(part, fault.junction);
  if (part === undefined || pins === null) return [];
  return pins.map((pin) => {
    const place = `${part.ref}.${pin}`;
    return bench.off.has(part.ref) || bench.lifted.has(place) ? place : (part.pins.get(pin) ?? place);
  });
}

/** Nets joined to one net by shorts and leaks. */
function joined(board: Board, bench: BenchState, net: string, faults: readonly Fault[]): ReadonlySet<string> {
  const reached = new Set([net]);
  for (let before = -1; before < reached.size; ) {
    before = reached.size;
    for (const fault of faults) {
      const [a, b] = netsOf(board, bench, fault);
      if (fault.mode === "open" || fault.mode === "drift" || a === undefined || b === undefined) continue;
      if (reached.has(a)) reached.add(b);
      else if (reached.has(b)) reached.add(a);
    }
  }
  return reached;
}

/** Ohms between two nets through shorts and leaks alone, found by walking from net to net. */
function ohmsBetween(board: Board, bench: BenchState, check: ColdCheck, faults: readonly Fault[]): number {
  const links = faults.flatMap((fault) => {
    const [a, b] = netsOf(board, bench, fault);
    if (a === undefined || b === undefined || (fault.mode !== "short" && fault.mode !== "leaky")) return [];
    return [{ a, b, ohms: fault.value ?? (fault.mode === "short" ? 0.2 : 1000) }];
  });
  const reached = new Map([[check.red, 0]]);
  for (let round = 0; round < links.length; round++)
    for (const { a, b, ohms } of links)
      for (const [from, to] of [
        [a, b],
        [b, a],
      ]) {
        const start = reached.get(from);
        if (start !== undefined && start + ohms < (reached.get(to) ?? Number.POSITIVE_INFINITY))
          reached.set(to, start + ohms);
      }
  return reached.get(check.black) ?? Number.POSITIVE_INFINITY;
}

/** A reading by a meter that nobody doubts: nothing shared, no other meters. */
function plain(raw: number, shown: MeterReading["shown"], spread: number): MeterReading {
  return { solved: true, raw, shown, centre: raw, spread, common: 0, alike: 0, restsOn: [] };
}

/** The meter by rule. Its `audible` is exact: it predicts and compares. */
function ruleMeter(board: Board, bench: BenchState): Predictor {
  const predict = (check: ColdCheck, faults: readonly Fault[]): MeterReading => {
    const ohms = ohmsBetween(board, bench, check, faults);
    if (check.mode === "diode") {
      const raw = Number.isFinite(ohms) ? (3 * ohms) / (ohms + 2727) : 3;
      return plain(raw, raw > 2 ? "OL" : raw, 0.005 + 0.01 * raw);
    }
    if (check.mode === "continuity") return plain(ohms, ohms < 40 ? "beep" : "silent", 0.1);
    const raw = Math.min(ohms, 1e9);
    return plain(raw, raw > 6e7 ? "OL" : raw, 0.05 + 0.02 * raw);
  };
  return {
    board,
    bench,
    meter: DEFAULT_METER,
    predict,
    withEach: (check, faults, candidates) => candidates.map((one) => predict(check, [...faults, one])),
    rawWith: (check, faults, at, ohms) =>
      predict(
        check,
        faults.map((fault, i) => (i === at ? { ...fault, value: ohms } : fault)),
      ).raw,
    effect: faultName,
    matters: (_check, faults) => faults,
    audible: (check, faults, candidates) => {
      const before = predict(check, faults).raw;
      const near = new Set([
        ...joined(board, bench, check.red, faults),
        ...joined(board, bench, check.black, faults),
      ]);
      return candidates.map((candidate) => {
        if (!netsOf(board, bench, candidate).every((net) => near.has(net))) return false;
        return Math.abs(predict(check, [...faults, candidate]).raw - before) > 1e-3 * (1 + before);
      });
    },
  };
}

interface Scene {
  readonly input: PlanningInput;
  readonly belief: Belief;
  readonly priors: PriorTable;
  readonly predictor: Predictor;
}

/** A job on a board with a log, believed by the real diagnosis over the rule meter. */
export function scene(
  board: Board,
  log: readonly JobEvent[],
  options: {
    readonly cause?: Cause;
    readonly terms?: Partial<Terms>;
    readonly equipment?: readonly string[];
  } = {},
): Scene {
  const folded = foldLog(board, [], log);
  if (!folded.ok) throw new Error(folded.problem);
  const timeline = folded.value;
  const cause = options.cause ?? "surge";
  const priors = priorTable(board, cause, "dead");
  const belief = believe({
    board,
    timeline,
    cause,
    symptom: "dead",
    priors,
    absent: [],
    predictorFor: (bench) => ruleMeter(board, bench),
    memory: new EvidenceMemory(),
  });
  const input: PlanningInput = {
    board,
    bench: timeline.now,
    timeline,
    terms: { ...DEFAULT_TERMS, ...options.terms },
    equipment: options.equipment ?? ["lamp-100"],
    cause,
    predictorFor: (bench) => ruleMeter(board, bench),
  };
  return { input, belief, priors, predictor: ruleMeter(board, timeline.now) };
}

/** The readings that prove every store of charge empty. */
export function provenEmpty(board: Board): readonly JobEvent[] {
  return storesOfCharge(board).map(({ part, pins }) => ({
    do: "measure",
    mode: "dcv",
    red: `${part}.${pins[0]}`,
    black: `${part}.${pins[1]}`,
    reading: 0.3,
  }));
}
