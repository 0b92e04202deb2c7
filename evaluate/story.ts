/** What happened in a trial, in lines that a person reads. */
import type { JobEvent } from "../src/bench/event.ts";
import { foldLog } from "../src/bench/fold.ts";
import type { Board } from "../src/board/board.ts";
import { asMarked } from "../src/job/marked.ts";
import { actionWords } from "../src/job/words.ts";
import { plain } from "../src/messages/said.ts";
import { actionMinutes } from "../src/money/minutes.ts";
import { gapOf } from "./jobs-figures.ts";
import { PLAYERS, type Step, type Trial } from "./trial.ts";

/** One line of a run's output. */
export function trialLine(trial: Trial): string {
  const { board, seed, cause, outcomes, arrived, seconds, differences } = trial;
  const cells = PLAYERS.map((player) => {
    const { verdict, state, minutes, partsMoney, profit } = outcomes[player];
    const truth = verdict === "repaired" || verdict === "no-fault" ? ` (${state})` : "";
    return `${player} ${verdict}${truth} ${minutes.toFixed(0)} min ${partsMoney.toFixed(0)} parts ${profit.toFixed(0)} [${seconds[player].toFixed(0)} s]`;
  });
  const left = outcomes.engine.left.length > 0 ? ` | left ${outcomes.engine.left.join(" ")}` : "";
  return `${board} ${seed} ${cause}${differences.length > 0 ? "*" : ""} | ${cells.join(" | ")} | came with ${arrived.join(" ")}${left}`;
}

function outcomeOf(event: JobEvent): string {
  switch (event.do) {
    case "measure":
    case "calibrate":
      return String(event.reading);
    case "look":
      return event.finding;
    case "power":
      return [event.observed].flat().join(", ");
    default:
      return "";
  }
}

export interface StoryLine {
  /** minutes gone when it begins, and what it takes */
  readonly from: number;
  readonly minutes: number;
  readonly words: string;
  readonly outcome: string;
  /** what was believed where this line begins a proposal */
  readonly step: Step | null;
  /** the truth has lost credit since the proposal before, by more than a factor of `TURN` */
  readonly turn: boolean;
}

/** A loss of credit by more than this factor is pointed out. */
const TURN = 3;
const LEAST = 1e-4;

/** ln of the credit that the true faults have together; comparable only while the same ones are present. */
function credit({ believed }: Step): { readonly names: string; readonly log: number } {
  const all = Object.entries(believed);
  const log = all.reduce((sum, [, p]) => sum + Math.log(Math.max(LEAST, p)), 0);
  return { names: all.map(([name]) => name).join(" "), log };
}

/** Log indexes of the proposals at which the truth had lost credit. */
function turnsOf(steps: readonly Step[]): ReadonlySet<number> {
  return new Set(
    steps.flatMap((step, at) => {
      const before = steps[at - 1];
      if (before === undefined) return [];
      const [was, is] = [credit(before), credit(step)];
      return was.names === is.names && was.log - is.log > Math.log(TURN) ? [step.at] : [];
    }),
  );
}

/** The engine's log line by line, with the belief at each proposal. Volts that prove the board dead are one line. */
export function storyOf(trial: Trial, board: Board): readonly StoryLine[] {
  const marked = asMarked(board, [], trial.log);
  const folded = foldLog(marked.board, marked.absent, trial.log);
  if (!folded.ok) throw new Error(`${trial.board} ${trial.seed}: ${folded.problem}`);
  const steps = new Map(trial.steps.map((step) => [step.at, step]));
  const turns = turnsOf(trial.steps);
  const lines: StoryLine[] = [];
  let from = 0;
  for (const { event, before, logIndex } of folded.value.entries) {
    const minutes = actionMinutes(marked.board, before, event);
    const last = lines.at(-1);
    const proof = event.do === "measure" && event.mode === "dcv";
    if (proof && last?.words === PROOF)
      lines[lines.length - 1] = {
        ...last,
        minutes: last.minutes + minutes,
        outcome: `${last.outcome}, ${outcomeOf(event)}`,
      };
    else
      lines.push({
        from,
        minutes,
        words: proof ? PROOF : plain(actionWords(marked.board, event)),
        outcome: outcomeOf(event),
        step: steps.get(logIndex) ?? null,
        turn: turns.has(logIndex),
      });
    from += minutes;
  }
  return lines;
}

const PROOF = "volts across the stores of charge";

/** `K1 43 %, U4 2 %`: the true faults as the engine saw them. */
export function believedWords({ believed, accused }: Step): string {
  const percent = (name: string, p: number) => `${name} ${p < 0.001 ? "0" : (100 * p).toPrecision(2)} %`;
  const truths = Object.entries(believed).map(([name, p]) => percent(name, p));
  return `${truths.join(", ") || "nothing is faulty"}${accused === null ? "" : `; most accused of the good: ${percent(...accused)}`}`;
}

/** Where the money went, in one sentence. */
export function lossWords(trial: Trial): string {
  const gap = gapOf(trial);
  const { engine, "all-knowing": best } = trial.outcomes;
  return (
    `${gap.total.toFixed(0)} less than the all-knowing player: income ${(gap.givenUp + gap.falselyClosed).toFixed(0)} (${engine.verdict}${engine.falselyRepaired ? `, but ${engine.state}` : ""}; it: ${best.verdict}), ` +
    `time ${gap.minutes.toFixed(0)} (${engine.minutes.toFixed(0)} against ${best.minutes.toFixed(0)} minutes), parts ${gap.parts.toFixed(0)}`
  );
}
