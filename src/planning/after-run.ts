/** From the moment a board has run on the mains: the test under load, what is still looked for after it, the verdict. */
import type { Belief } from "../diagnosis/belief.ts";
import type { Predictor } from "../meter/prediction.ts";
import { MINUTES } from "../money/minutes.ts";
import type { FaultPrior, PriorTable } from "../priors/fault-prior.ts";
import { type Draft, dueProposal, outlook, probesOn } from "./cards.ts";
import { CLOSING, hasRun, isLoadTested, verdictStep } from "./closing.ts";
import { closingCheck, goingOnPays } from "./closing-checks.ts";
import { expectations } from "./expectations.ts";
import { percent } from "./faults-in-words.ts";
import { firstOf } from "./finding-steps.ts";
import { deadChance } from "./hands-on-steps.ts";
import type { Hypotheses } from "./hypotheses.ts";
import { unreadClips } from "./live-clips.ts";
import { liveProposal, momentWords } from "./live-proposal.ts";
import { LOAD_TEST, lastLoadRun, loadReadings, loadTestPower } from "./load-test.ts";
import { makeSafe } from "./make-safe.ts";
import type { PlanningInput } from "./planning-input.ts";
import { powerForecast } from "./power-step.ts";
import type { RepairModel } from "./repair-model.ts";
import { doubtOf } from "./working-chance.ts";

/** What the steps after a run are made from. */
export interface AfterRun {
  readonly input: PlanningInput;
  readonly belief: Belief;
  readonly priors: PriorTable;
  readonly predictor: Predictor;
  readonly hypotheses: Hypotheses;
  readonly model: RepairModel;
  readonly livedWith: (fault: FaultPrior) => boolean;
}

/** What is read while the board is on, and how its run under load ends; null where it is off, or has to go off. */
export function whileOn({ input, hypotheses, model }: AfterRun): Draft | null {
  const { timeline } = input;
  const run = lastLoadRun(timeline);
  if (run === null) {
    const [clipped] = unreadClips(timeline);
    if (clipped === undefined) return null;
    const [red, black] = clipped;
    return liveProposal(input, [{ do: "measure", mode: "dcv", red, black }], hypotheses, model);
  }
  const [first, ...row] = loadReadings(input, hypotheses, run);
  if (first !== undefined) return liveProposal(input, [first, ...row], hypotheses, model);
  if (!run.on || !run.seen.includes("runs") || run.seen.length > 1) return null;
  return dueProposal(
    input,
    {
      action: { do: "unpower" },
      row: [],
      why: `It has run for ${momentWords(LOAD_TEST.endSeconds)} or stopped before: switch off, pull the plug, and write down what it did until then.`,
      expect: [],
    },
    model,
  );
}

/** The next step of a board that has run: its test, then what still pays, then the verdict; null where the repair goes on. */
export function afterRun(given: AfterRun): Draft | null {
  const { input, belief, hypotheses, model, livedWith } = given;
  const { timeline, board } = input;
  const accused = Math.max(0, ...deadChance(hypotheses).values());
  if (!hasRun(timeline, accused)) return null;
  if (!isLoadTested(timeline)) return loadTest(given);
  if (goingOnPays(input, hypotheses, model)) return null;
  const doubt = doubtOf(belief, board, livedWith);
  const verdict = verdictStep(timeline, doubt, belief, board);
  if (doubt.all < CLOSING.doubt) return dueProposal(input, verdict, model);
  const check = closingCheck(input, belief, hypotheses, model, given.predictor);
  if (check === null) return dueProposal(input, verdict, model);
  const safe = makeSafe(input);
  if (safe !== null) return dueProposal(input, safe, model);
  const { step, found } = check;
  return {
    action: step.action,
    row: step.row,
    minutes: step.minutes,
    money: 0,
    why: `It ran and held under load; that it is weak all the same: ${percent(doubt.all)}. This is cheaper than the comeback.`,
    expect: expectations(firstOf(step, found), hypotheses, board, null),
    others: [
      {
        action: verdict.action,
        minutes: 0,
        money: 0,
        why: "Close it with that doubt.",
      },
    ],
    atStake: null,
    forecast: null,
    probesOn: probesOn(step.action, step.inHand),
    outlook: outlook(model),
  };
}

/** A board that has run is not given up: where the repair finds nothing more that pays, it goes out with its doubt told. */
export function insteadOfGivingUp(given: AfterRun, draft: Draft): Draft {
  const { input, belief, model, livedWith } = given;
  const { action } = draft;
  const givesUp = action.do === "close" && action.verdict !== "repaired" && action.verdict !== "no-fault";
  if (!givesUp || !hasRun(input.timeline, 0)) return draft;
  const doubt = doubtOf(belief, input.board, livedWith);
  const { agreedPrice, comebackCost, feeIfNotRepaired } = model.terms;
  if ((1 - doubt.all) * agreedPrice - doubt.all * comebackCost <= feeIfNotRepaired) return draft;
  return dueProposal(input, verdictStep(input.timeline, doubt, belief, input.board), model);
}

function loadTest({ input, belief, priors, hypotheses, model }: AfterRun): Draft {
  const safe = makeSafe(input);
  if (safe !== null) return dueProposal(input, safe, model);
  const action = loadTestPower(input, hypotheses);
  return {
    ...dueProposal(input, { action, row: [], why: whyLoadTest(action), expect: [] }, model),
    minutes: MINUTES.power,
    forecast: powerForecast(input, belief, priors, action),
  };
}

function whyLoadTest(action: ReturnType<typeof loadTestPower>): string {
  const load = action.do === "power" ? action.load : undefined;
  const what =
    typeof load === "number"
      ? `a dummy load of about ${load} W (three equal lamps in a star)`
      : "its own load";
  const meters = action.do === "power" ? (action.meters ?? []) : [];
  const clips = meters.map(([red, black]) => `red on ${red}, black on ${black}`).join("; second meter ");
  const on = meters.length === 0 ? "" : ` Clip the meter on first, DC volts: ${clips}.`;
  return `It ran at idle, and a minute at idle proves little: ${momentWords(LOAD_TEST.endSeconds)} with ${what} show a boost that never starts, an inrush part left in the way, a leak that cooks.${on} Heatsink on, cover or barrier in place, then hands off.`;
}
