/** A bench on which an oracle board lies: answers what a technician asks of it, many checks in one run of ngspice. */

import { type BenchState, benchKey } from "../../src/bench/bench-state.ts";
import type {
  CalibrateEvent,
  ColdMode,
  JobEvent,
  LiveMode,
  LookEvent,
  MeasureEvent,
  Reading,
  UnpowerEvent,
} from "../../src/bench/event.ts";
import { isInjection } from "../../src/bench/injection.ts";
import { lastPowered, poweredNow } from "../../src/bench/last-power.ts";
import { pinOfPlace } from "../../src/bench/place.ts";
import { staysOn } from "../../src/bench/stays-on.ts";
import type { Timeline } from "../../src/bench/timeline.ts";
import { isColdMode } from "../../src/bench/words.ts";
import type { Board } from "../../src/board/board.ts";
import { faultName } from "../../src/board/fault.ts";
import { CLIMBING_SECONDS } from "../../src/diagnosis/cold-evidence.ts";
import type { Asked } from "../../src/practice/answer.ts";
import { restVolts } from "../../src/practice/charge.ts";
import { seededRandom } from "../../src/practice/seeded-random.ts";
import type { Cause } from "../../src/priors/cause.ts";
import { MOTOR_INSULATION } from "../../src/priors/told.ts";
import { findingOf } from "./looks.ts";
import { type OracleCheck, runChecks } from "./meter-run.ts";
import { type OracleBoard, oracleBoard } from "./oracle-board.ts";
import { faultsUnderPower, type Hidden, hiddenAfter, outOfCircuit } from "./oracle-course.ts";
import { liveAnswer } from "./oracle-live.ts";
import { calibration, type Seen, shown } from "./oracle-meter.ts";
import { loadEnd, observed } from "./power-outcome.ts";
import { conditionOf } from "./power-truth.ts";
import { signsNoted } from "./sign-truth.ts";
import { slipOf } from "./slips.ts";

/** The event with its outcome (and whether the hand slipped), or one sentence why this bench has none. */
export type OracleAnswer =
  | { readonly ok: true; readonly event: JobEvent; readonly slipped: boolean }
  | { readonly ok: false; readonly problem: string };

export interface OracleBench {
  readonly oracle: OracleBoard;
  /**
   * What the board shows for an event that would be appended to the log of `timeline`. Asked to handle a part that is not on this
   * board, it answers with the `mark` event by which a technician says so.
   */
  answer(timeline: Timeline, asked: Asked): Promise<OracleAnswer>;
  /** The answers to a row of events that follow one another; cold checks in a row are run together. */
  answerRow(timeline: Timeline, asked: readonly Asked[]): Promise<readonly OracleAnswer[]>;
  /** the true state after the log: what the all-knowing player sees, and what a verdict is judged by */
  hidden(timeline: Timeline): Hidden;
}

/** Answers of the circuit kept; each is two numbers. */
const MOST_KEPT = 50_000;

type Measure = Omit<MeasureEvent, "reading">;

/** A bench with the oracle board of this file, cause and seed. */
export function oracleBench(file: Board, cause: Cause, seed: number): OracleBench {
  return new Bench(oracleBoard(file, cause, seed));
}

function nextIndex(timeline: Timeline): number {
  return (timeline.entries.at(-1)?.logIndex ?? -1) + 1;
}

const done = (event: JobEvent, slipped = false): OracleAnswer => ({ ok: true, event, slipped });
const refused = (problem: string): OracleAnswer => ({ ok: false, problem });

class Bench implements OracleBench {
  readonly oracle: OracleBoard;
  readonly #seen = new Map<string, Seen | null>();

  constructor(oracle: OracleBoard) {
    this.oracle = oracle;
  }

  hidden(timeline: Timeline): Hidden {
    return hiddenAfter(this.oracle, timeline);
  }

  async answer(timeline: Timeline, asked: Asked): Promise<OracleAnswer> {
    const [answer] = await this.answerRow(timeline, [asked]);
    return answer ?? refused("nothing was asked");
  }

  async answerRow(timeline: Timeline, asked: readonly Asked[]): Promise<readonly OracleAnswer[]> {
    const hidden = this.hidden(timeline);
    const made = asked.map((event, at) => this.#checkMade(timeline, event, at));
    await this.#run(
      timeline.now,
      hidden,
      made.flatMap((one) => (one === null ? [] : [one.check])),
    );
    return asked.map((event, at) => {
      const one = made[at];
      if (one !== null && one !== undefined && event.do === "measure")
        return this.#reading(timeline, hidden, event, one, at);
      return this.#other(timeline, hidden, event);
    });
  }

  /** The cold check that the hand really makes, slips included; null for anything else. */
  #checkMade(
    timeline: Timeline,
    event: Asked,
    at: number,
  ): { readonly check: OracleCheck; readonly slipped: boolean } | null {
    if (event.do !== "measure" || !isColdMode(event.mode)) return null;
    const { mode, red, black } = event;
    if (red === undefined || black === undefined || timeline.now.powered) return null;
    const plain = { mode, red, black };
    const check =
      event.settling === "climbing" && mode !== "farads" ? { ...plain, seconds: CLIMBING_SECONDS } : plain;
    const random = seededRandom(this.oracle.seed, `slip ${mode} ${red} ${black} ${nextIndex(timeline) + at}`);
    const slip = slipOf(this.oracle.board, check, this.oracle.slipShare, random);
    return slip === null ? { check, slipped: false } : { check: slip, slipped: true };
  }

  #key(bench: BenchState, hidden: Hidden, check: OracleCheck): string {
    return [
      benchKey(bench),
      hidden.faults.map(faultName).join(","),
      [...hidden.generations].flat().join(","),
      hidden.leaks.map(({ nets }) => nets.join("~")).join(","),
      `${check.mode} ${check.red} ${check.black} ${check.seconds ?? "settled"}`,
    ].join("|");
  }

  /** Asks ngspice for what is not known yet. */
  async #run(bench: BenchState, hidden: Hidden, checks: readonly OracleCheck[]): Promise<void> {
    const wanted = new Map(checks.map((check) => [this.#key(bench, hidden, check), check]));
    for (const key of wanted.keys()) if (this.#seen.has(key)) wanted.delete(key);
    if (wanted.size === 0) return;
    if (this.#seen.size > MOST_KEPT) this.#seen.clear();
    const { board, file, room, meter } = this.oracle;
    const seen = await runChecks({ board, file, room, bench, ...hidden }, meter, [...wanted.values()]);
    for (const [at, key] of [...wanted.keys()].entries()) this.#seen.set(key, seen[at] ?? null);
  }

  #reading(
    timeline: Timeline,
    hidden: Hidden,
    event: Measure,
    { check, slipped }: { readonly check: OracleCheck; readonly slipped: boolean },
    at: number,
  ): OracleAnswer {
    const seen = this.#seen.get(this.#key(timeline.now, hidden, check));
    if (seen === undefined || seen === null)
      return refused(
        `no reading: ngspice found no operating point for ${check.mode} ${check.red} to ${check.black}`,
      );
    const salt = `noise ${check.mode} ${check.red} ${check.black} ${nextIndex(timeline) + at}`;
    const reading: Reading = shown(
      this.oracle.meter,
      event.mode as ColdMode,
      seen,
      seededRandom(this.oracle.seed, salt),
    );
    return done({ ...event, reading }, slipped);
  }

  /** Everything that is no cold check. */
  #other(timeline: Timeline, hidden: Hidden, event: Asked): OracleAnswer {
    const missing = this.#missingPart(event);
    if (missing !== null) return done({ do: "mark", part: missing, as: "absent" });
    switch (event.do) {
      case "measure":
        if (!isColdMode(event.mode) && timeline.now.powered)
          return this.#live(timeline, hidden, { ...event, mode: event.mode });
        return event.mode === "dcv"
          ? this.#volts(timeline, hidden, event)
          : refused(`this bench has no answer to ${event.mode} here`);
      case "look":
        return this.#look(hidden, event);
      case "calibrate":
        return this.#calibrate(event);
      case "power": {
        const off = outOfCircuit(timeline.now);
        const entry = { before: timeline.now, logIndex: nextIndex(timeline) };
        const faults = faultsUnderPower(this.oracle, hidden.faults, event, entry);
        const seen = observed(this.oracle, faults, event, off);
        if (isInjection(event) || !staysOn(seen)) return done({ ...event, observed: seen });
        const signs = signsNoted(this.oracle, faults, off, entry.logIndex);
        return done({ ...event, observed: seen, ...(Object.keys(signs).length > 0 && { signs }) });
      }
      case "answer":
        return done(
          event.question === MOTOR_INSULATION.question ? { ...event, answer: MOTOR_INSULATION.good } : event,
        );
      case "unpower":
        return done(this.#unpower(timeline, hidden, event));
      default:
        return done(event);
    }
  }

  #missingPart(event: Asked): string | null {
    const ref =
      event.do === "lift" || event.do === "refit"
        ? pinOfPlace(event.place)?.ref
        : event.do === "look" || event.do === "replace" || event.do === "remove" || event.do === "restore"
          ? event.part
          : undefined;
    return ref !== undefined && this.oracle.file.parts.has(ref) && !this.oracle.board.parts.has(ref)
      ? ref
      : null;
  }

  #look(hidden: Hidden, event: Omit<LookEvent, "finding">): OracleAnswer {
    const part = this.oracle.board.parts.get(event.part);
    if (part === undefined) return refused(`there is no part ${event.part}`);
    const finding = findingOf(part, hidden, this.oracle.cause, this.oracle.seed);
    return done({ ...event, finding });
  }

  #calibrate(event: Omit<CalibrateEvent, "reading">): OracleAnswer {
    if (event.mode !== "diode" && event.mode !== "ohms")
      return refused(`this bench calibrates diode and ohms only`);
    const { meter, room } = this.oracle;
    return done({ ...event, reading: calibration(meter, event.mode, event.known, room.celsius) });
  }

  /** What charge is left at rest. */
  #volts(timeline: Timeline, hidden: Hidden, event: Measure): OracleAnswer {
    const { red, black } = event;
    const { board, seed } = this.oracle;
    if (red === undefined || black === undefined) return refused("dcv needs two places");
    const condition = conditionOf(board, hidden.faults, outOfCircuit(timeline.now));
    const volts = restVolts(board, timeline, seed, red, black, condition === "bus-short");
    return done({ ...event, reading: Number(volts.toFixed(2)) });
  }

  /** What a clipped meter or a thermometer shows under power. */
  #live(timeline: Timeline, hidden: Hidden, event: Measure & { readonly mode: LiveMode }): OracleAnswer {
    const power = lastPowered(timeline)?.power ?? null;
    const value = power === null ? null : liveAnswer(this.oracle, hidden, timeline.now, power, event);
    return value === null
      ? refused("the live model has no answer there")
      : done({ ...event, reading: Number(value.toFixed(2)) });
  }

  /** After a run under load, what it had done until then. */
  #unpower(timeline: Timeline, hidden: Hidden, event: UnpowerEvent): UnpowerEvent {
    const on = poweredNow(timeline);
    if (on === null || on.power.load === undefined) return event;
    const off = outOfCircuit(on.entry.before);
    return { ...event, observed: loadEnd(this.oracle, hidden.faults, off, event.afterPower ?? 0) };
  }
}
