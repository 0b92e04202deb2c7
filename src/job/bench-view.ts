/** What the page shows of a job: the assessment in words, as plain data. */

import type { MeasureEvent } from "../bench/event.ts";
import { waitingFor } from "../bench/waiting.ts";
import type { Board } from "../board/board.ts";
import { curedWords, faultNameWords } from "../board/fault-words.ts";
import { kindOf } from "../board/kinds.ts";
import type { Reason, Suspect } from "../diagnosis/belief.ts";
import { coldCheckOf, shownWords } from "../diagnosis/cold-evidence.ts";
import { NO_ANSWER } from "../diagnosis/shown-words.ts";
import { signsOf, signWords } from "../live/signs.ts";
import { said } from "../messages/said.ts";
import { asReferencesWere, referenceFor } from "../meter/good-readings.ts";
import type { MeterReading } from "../meter/prediction.ts";
import { amountNumber } from "../money/amount.ts";
import { jobSum } from "../money/job-sum.ts";
import { andList } from "../planning/faults-in-words.ts";
import { clipAt } from "../planning/live-clips.ts";
import type { Action } from "../planning/proposal.ts";
import { MOTOR_INSULATION } from "../priors/told.ts";
import { quoted } from "../units/nearest.ts";
import type { Parsed } from "../units/outcome.ts";
import { explanationsNow } from "./answers.ts";
import type { Assessment, Believed } from "./assess.ts";
import type {
  BecauseView,
  BenchView,
  CardView,
  GoodHere,
  GridView,
  LogLineView,
  SuspectView,
} from "./bench-view-shape.ts";
import { eventWords, readingWords } from "./event-words.ts";
import { comparedReadings } from "./good-beside.ts";
import { referenceWords } from "./good-board.ts";
import { stageGrids } from "./grids.ts";
import { insulationAnswers } from "./insulation-words.ts";
import { moneyView } from "./money-view.ts";
import { baselinesView, baselineWords, besideOf, recheckView } from "./recheck-view.ts";
import { safetyView } from "./safety-view.ts";
import { revisionTold } from "./told-in.ts";
import { actionWords, modeWords, placeWords } from "./words.ts";

export function benchView(assessment: Assessment): BenchView {
  const { job, timeline, belief, predictor } = assessment;
  const board = job.board;
  const beside = besideOf(assessment);
  const closing = [...timeline.entries].reverse().find((entry) => entry.event.do === "close")?.event;
  return {
    boardName: board.name,
    currency: job.terms.currency,
    powered: timeline.now.powered,
    safety: safetyView(job, timeline),
    card: timeline.closed ? null : cardView(assessment, beside),
    suspects: belief.suspects.map((suspect) => suspectView(assessment, suspect)),
    explanations: explanationsNow(belief)
      .slice(0, 12)
      .map(({ faults, probability }) => ({
        faults,
        probability,
        words:
          faults.length === 0
            ? said`no fault: nothing read so far needs one`
            : andList(faults.map((fault) => faultNameWords(fault, board))),
      })),
    remainder: belief.remainder,
    healthyProbability: belief.healthyProbability,
    unexplained: belief.unexplained,
    log: logView(assessment),
    whole: asReferencesWere(board, timeline.now),
    compared: comparedReadings(board, timeline).map(({ logIndex, ...both }) => both),
    grids: gridViews(assessment, (check) => {
      const prediction = predictor.predict(check, []);
      return prediction.solved ? shownWords(check.mode, prediction.shown) : NO_ANSWER;
    }),
    places: placeList(board),
    recheck: recheckView(assessment, beside),
    baselines: baselinesView(beside),
    signs: signsOf(job.board).map(({ part, kind }) => ({
      part,
      there: signWords(kind, true),
      missing: signWords(kind, false),
    })),
    lifted: [...timeline.now.lifted],
    off: [...timeline.now.off],
    revision: revisionTold(job.log),
    money: moneyView(assessment),
    beepOhms: assessment.job.meter.beepOhms,
    ...spent(assessment),
    waiting: waitingFor(job.log),
    verdict: closing?.do === "close" ? closing.verdict : null,
  };
}

function cardView(assessment: Assessment, beside: ReturnType<typeof besideOf>): CardView {
  const { job, proposal } = assessment;
  const action = proposal.action;
  const measure = action.do === "measure" ? action : null;
  return {
    action: { ...action },
    gate: proposal.gate ?? null,
    answers:
      action.do === "answer" && action.question === MOTOR_INSULATION.question ? insulationAnswers() : [],
    headline: actionWords(job.board, action),
    red: measure?.red === undefined ? null : placeWords(job.board, measure.red),
    black: measure?.black === undefined ? null : placeWords(job.board, measure.black),
    mode: measure === null ? null : modeWords(measure.mode),
    clipModes: action.do === "power" ? (action.meters ?? []).map((pair) => clipAt(job.board, pair).mode) : [],
    probesOn: proposal.probesOn,
    row: proposal.row.map((other) => ({ ...other })),
    rowWords: proposal.row.map((other) => {
      const good = goodWords(assessment, other);
      const before = baselineWords(beside, other);
      return rowWords(actionWords(job.board, other), good, before);
    }),
    minutes: proposal.minutes,
    money: proposal.money,
    why: proposal.why,
    expect: proposal.expect,
    cautions: proposal.cautions,
    wait: measure === null ? null : waitWords(assessment, measure),
    ...goodHere(assessment, action),
    atStake: proposal.atStake,
    forecast: proposal.forecast,
    firstMinute: proposal.firstMinute(),
    others: proposal.others.map((other) => ({
      action: { ...other.action },
      headline: actionWords(job.board, other.action),
      minutes: other.minutes,
      money: other.money,
      why: other.why,
    })),
    outlook: proposal.outlook,
  };
}

/** A check of a row, with what a good board reads there and what the part read before it went in. */
function rowWords(check: string, good: string | null, before: string | null): string {
  const withGood = good === null ? check : said`${check}; good: ${good}`;
  return before === null ? withGood : said`${withGood}; before it went in: ${before}`;
}

/** What a good board shows at a step of one's own, as the card of a proposal says it. */
export function goodHere(believed: Believed, action: Action): GoodHere {
  return { good: goodWords(believed, action), restsOn: goodReading(believed, action)?.restsOn ?? [] };
}

/** The reading of a good board at a cold check, with the bench as it is; null where the step is none. */
function goodReading({ predictor }: Believed, action: Action): MeterReading | null {
  const check = action.do === "measure" ? coldCheckOf(action) : null;
  const good = check === null ? null : predictor.predict(check, []);
  return good?.solved === true ? good : null;
}

function goodWords(believed: Believed, action: Action): string | null {
  const good = goodReading(believed, action);
  const check = action.do === "measure" ? coldCheckOf(action) : null;
  if (good === null || check === null) return null;
  const reference = referenceFor(believed.job.board, check);
  const words = shownWords(check.mode, good.shown);
  return reference === null ? words : said`${words} (${referenceWords(reference)})`;
}

/** A reading that still moves after two seconds wants patience: say so, with where it starts. */
function waitWords(assessment: Assessment, measure: Omit<MeasureEvent, "reading">): string | null {
  const check = coldCheckOf(measure);
  if (check === null || check.mode === "farads" || check.mode === "continuity") return null;
  const settled = assessment.predictor.predict(check, []);
  const early = assessment.predictor.predict({ ...check, seconds: 2 }, []);
  if (!settled.solved || !early.solved || early.raw >= 0.9 * settled.raw) return null;
  return said`Wait until it stops climbing: the meter charges the capacitors.`;
}

/** Why `part` is suspected or cleared, in words; refused where the board has no such part. */
export function becauseView(believed: Believed, part: string): Parsed<BecauseView> {
  const suspect = believed.belief.suspects.find((one) => one.part === part);
  if (suspect === undefined) return { ok: false, problem: said`there is no part ${quoted(part)}` };
  const { speaksFor, speaksAgainst, maskedBy, untested } = suspect.because();
  const line = (reason: Reason): string => reasonWords(believed, reason);
  return {
    ok: true,
    value: {
      speaksFor: speaksFor.map(line),
      speaksAgainst: speaksAgainst.map(line),
      maskedBy: maskedBy.map((name) => curedWords(name, believed.job.board)),
      untested,
    },
  };
}

function suspectView(assessment: Assessment, suspect: Suspect): SuspectView {
  const part = assessment.job.board.parts.get(suspect.part);
  return {
    part: suspect.part,
    what: part === undefined ? curedWords(suspect.part, assessment.job.board) : kindOf(part.kind).words,
    stage: part?.stage ?? null,
    probability: suspect.probability,
    modes: suspect.modes
      .filter((mode) => mode.probability >= 0.001)
      .slice(0, 6)
      .map((mode) => ({ ...mode, words: faultNameWords(mode.fault, assessment.job.board) })),
  };
}

/** `diode mode: red on ..., black on ... read 0.00; with this fault 0.00 V, without it 0.43 V` */
function reasonWords({ job, belief }: Believed, reason: Reason): string {
  const event = job.log[reason.logIndex];
  const seen = eventWords(job.board, event);
  if (reason.withFault === "" && reason.without === "") return seen;
  if (reason.withFault !== reason.without)
    return belief.unexplained.includes(reason.logIndex)
      ? said`${seen} (with this fault ${reason.withFault}, without it ${reason.without}; neither explains it)`
      : said`${seen} (with this fault ${reason.withFault}, without it ${reason.without})`;
  // What was seen comes with and without the fault, only not as often.
  const times = Math.exp(Math.abs(reason.logRatio));
  const often = times > 100 ? said`over ${100}` : times.toFixed(times < 10 ? 1 : 0);
  return reason.logRatio > 0
    ? said`${seen} (${often} times as likely with this fault)`
    : said`${seen} (${often} times as likely without this fault)`;
}

function logView(assessment: Assessment): LogLineView[] {
  const { job, timeline, belief } = assessment;
  const counting = new Set(timeline.entries.map((entry) => entry.logIndex));
  return job.log.map((event, logIndex) => ({
    logIndex,
    id: event.id ?? null,
    words: eventWords(job.board, event),
    undone: event.do !== "undo" && !counting.has(logIndex),
    unexplained: belief.unexplained.includes(logIndex),
    restsOn: assessment.assumptions.get(logIndex) ?? [],
    canUndo: event.id !== undefined && event.do !== "undo" && counting.has(logIndex),
  }));
}

function gridViews(
  assessment: Assessment,
  healthy: (check: { mode: "diode" | "ohms"; red: string; black: string }) => string,
): GridView[] {
  const { job, timeline } = assessment;
  const spanNow = timeline.spans.length - 1;
  return stageGrids(job.board).map((grid) => ({
    stage: grid.stage,
    title: grid.title,
    cells: grid.checks.map((check) => {
      const taken = [...timeline.entries]
        .reverse()
        .find(
          ({ event }) =>
            event.do === "measure" &&
            event.mode === check.mode &&
            event.red === check.red &&
            event.black === check.black,
        );
      const action: Action = { do: "measure", mode: check.mode, red: check.red, black: check.black };
      return {
        label: check.label,
        action: { ...action },
        healthy: healthy(check),
        reading: taken?.event.do === "measure" ? readingWords(taken.event) : null,
        span: taken === undefined ? null : taken.span === spanNow ? "now" : "earlier",
      };
    }),
  }));
}

function placeList(board: Board): { place: string; words: string }[] {
  const nets = [...board.nets.keys()].map((net) => ({ place: net, words: placeWords(board, net) }));
  const pins = [...board.parts.values()].flatMap((part) =>
    [...part.pins.keys()].map((pin) => ({
      place: `${part.ref}.${pin}`,
      words: placeWords(board, `${part.ref}.${pin}`),
    })),
  );
  return [...nets, ...pins];
}

function spent({ job, timeline }: Assessment): { minutesSpent: number; moneySpent: number } {
  const { minutes, partsTotal } = jobSum(job.board, timeline, job.terms);
  return { minutesSpent: amountNumber(minutes), moneySpent: amountNumber(partsTotal) };
}
