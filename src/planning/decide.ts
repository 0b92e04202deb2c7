import type { PowerEvent } from "../bench/event.ts";
import { isInjection } from "../bench/injection.ts";
import { curedWords } from "../board/fault-words.ts";
import type { Belief } from "../diagnosis/belief.ts";
import { said } from "../messages/said.ts";
import type { Predictor } from "../meter/prediction.ts";
import type { PriorTable } from "../priors/fault-prior.ts";
import { minutesOf } from "./action-minutes.ts";
import { atStake, mustShowStakes } from "./at-stake.ts";
import { beforePower, resolderedUnread } from "./before-power.ts";
import { beforeWriteOff, byItself, type MissingProof } from "./before-write-off.ts";
import { baselineAgain } from "./beside-baseline.ts";
import { type Draft, dueProposal, outlook, outlookOfStopping, probesOn } from "./cards.ts";
import { expectations } from "./expectations.ts";
import { percent } from "./faults-in-words.ts";
import { type Findings, findings, firstOf, payingSteps, type WeighedStep, withRow } from "./finding-steps.ts";
import { goodReading } from "./good-reading.ts";
import { deadChance } from "./hands-on-steps.ts";
import type { Hypotheses } from "./hypotheses.ts";
import { injectionForecast } from "./injection-step.ts";
import type { DueStep } from "./make-safe.ts";
import { motorGate } from "./motor-first.ts";
import { fittedWith, whereFrom } from "./part-at-hand.ts";
import type { PlanningInput } from "./planning-input.ts";
import { PLANNING_RATES } from "./planning-rates.ts";
import { powerForecast, whyPower } from "./power-forecast.ts";
import { PowerInTurn } from "./power-in-turn.ts";
import { PowerRisk } from "./power-risk.ts";
import { goesStraightOn } from "./power-step.ts";
import { later, powerSteps } from "./power-steps.ts";
import type { Action, Proposal } from "./proposal.ts";
import { cureAction, type RepairModel } from "./repair-model.ts";
import { repeatWords } from "./repeats.ts";
import { resolderFirst } from "./resolder.ts";
import type { FindingStep } from "./steps.ts";
import { MOSTLY_UNEXPLAINED, readingToRepeat, whyUnexplained } from "./unexplained.ts";
import { bestCourse, FINDING_OUT_RATES, type PlanStep, repairPlan } from "./value.ts";
import { type WhyInput, whyFinding, whyReplace, whyStop } from "./why.ts";

/** Most alternatives named beside the proposal. */
const MOST_OTHERS = 3;

/** All that the choice is made from. */
interface Case {
  readonly input: PlanningInput;
  readonly belief: Belief;
  readonly priors: PriorTable;
  /** of the board with the bench as it is now */
  readonly predictor: Predictor;
  readonly hypotheses: Hypotheses;
  readonly model: RepairModel;
  readonly found: Findings;
  /** those that need no power */
  readonly steps: readonly FindingStep[];
  readonly power: PowerInTurn;
  readonly housekeeping: DueStep | null;
  readonly dead: ReadonlyMap<string, number>;
  readonly risk: PowerRisk;
}

/**
 * Chooses by the sum. Finding out comes first while any step gains more than it costs; then the repair plan's next step; then stopping.
 * Where the plan would only guess, finding out is weighed again as if it cost more per bit, so that rows, lifts and a powered
 * check are all tried before a guess or a write-off.
 */
export function decide(
  input: PlanningInput,
  belief: Belief,
  priors: PriorTable,
  predictor: Predictor,
  hypotheses: Hypotheses,
  model: RepairModel,
): Draft {
  const dead = deadChance(hypotheses);
  const housekeeping = beforePower(input, dead) ?? baselineAgain(input, predictor);
  const found = findings(input, belief, hypotheses, predictor);
  const risk = new PowerRisk(input, belief, priors);
  // from a lamp that went dark to the cold checks every store is proven empty first; straight on to the mains nobody reaches inside
  const straightOn = goesStraightOn(input.board, input.timeline);
  const power = new PowerInTurn(model, () => powerSteps(input, hypotheses, model, risk, straightOn));
  const proof = straightOn ? model.proofMinutes : 0;
  const steps = found.steps.map((step) => later(step, proof));
  const given: Case = {
    input,
    belief,
    priors,
    predictor,
    hypotheses,
    model,
    found,
    steps,
    power,
    housekeeping,
    dead,
    risk,
  };
  let plan: readonly PlanStep[] = [];
  let weighed: readonly WeighedStep[] = [];
  for (const minutesPerBit of FINDING_OUT_RATES) {
    plan = planSteps(given, minutesPerBit);
    weighed = power.among(steps, hypotheses, minutesPerBit);
    const best = inHandFirst(payingSteps(weighed, model));
    if (best !== undefined) return findingProposal(given, best.step, weighed, minutesPerBit, plan);
    // a repair (or stopping) that is worth more than finding out at this price is not put off by a higher one
    if (bestCourse(model.weights, model, minutesPerBit).course !== "find out") break;
  }
  return committed(given, plan, weighed);
}

/** Of steps nearly as good as the best, the one on the part in hand: it was freed to be measured by itself. */
function inHandFirst(worthIt: readonly WeighedStep[]): WeighedStep | undefined {
  const [best] = worthIt;
  return (
    worthIt.find(
      ({ step, perMoney }) =>
        step.inHand !== null &&
        step.action.do === "measure" &&
        perMoney >= PLANNING_RATES.inHandShare * best.perMoney,
    ) ?? best
  );
}

/** The plan's steps; powering up as it stands is left out where that has been done and told nothing. */
function planSteps(given: Case, minutesPerBit: number): readonly PlanStep[] {
  const { model, housekeeping } = given;
  const plan = repairPlan(model.weights, model, minutesPerBit);
  if (plan.steps[0]?.cures.length !== 0 || housekeeping !== null || given.power.steps.due !== null)
    return plan.steps;
  const rest = model.weights.map((weight, g) => (model.groups[g].cures.length === 0 ? 0 : weight));
  return repairPlan(rest, model, minutesPerBit).steps;
}

function findingProposal(
  given: Case,
  step: FindingStep,
  weighed: readonly WeighedStep[],
  minutesPerBit: number,
  plan: readonly PlanStep[],
): Draft {
  const { hypotheses, model, found, belief } = given;
  if (step.action.do === "power" && !isInjection(step.action))
    return powerProposal(given, step, step.action, weighed);
  const full = withRow(step, found, hypotheses, model, minutesPerBit);
  return {
    action: full.action,
    row: full.row,
    minutes: full.minutes,
    money: 0,
    why: whyFinding(
      full,
      whyInput(given),
      repeatWords(given.input.timeline, full.action, belief.unexplained),
    ),
    expect: expectations(
      firstOf(full, found),
      hypotheses,
      given.input.board,
      goodReading(given.predictor, full.action),
    ),
    others: others(given, full.action, weighed, plan),
    atStake: null,
    forecast: injectionForecast(full.action),
    probesOn: probesOn(full.action, full.inHand),
    outlook: outlook(given.model),
  };
}

function whyInput({ input: { board, timeline }, hypotheses, model }: Case): WhyInput {
  return { board, timeline, hypotheses, model };
}

function committed(given: Case, plan: readonly PlanStep[], weighed: readonly WeighedStep[]): Draft {
  const { input, model, housekeeping, dead } = given;
  const [step] = plan;
  if (step === undefined) return stopProposal(given, weighed);
  // What is hardly suspected is not cured on the way: power tells whether anything is left at all.
  const surest = Math.max(0, ...step.cures.map((c) => dead.get(model.cures[c].name) ?? 0));
  const powerStep = housekeeping === null ? given.power.steps.due : null;
  const mayPower = housekeeping !== null || powerStep !== null;
  // Where power has told nothing new, a guess is a last try; what is as good as cleared is not changed for the sake of trying.
  const least = mayPower ? PLANNING_RATES.cureAt : PLANNING_RATES.guessAt;
  if (step.cures.length > 0 && surest >= least) return cureProposal(given, step, weighed);
  if (housekeeping !== null) return dueProposal(input, housekeeping, model);
  if (powerStep?.action.do === "power") return powerProposal(given, powerStep, powerStep.action, weighed);
  // more than a quarter of the belief says that something breaks, and nothing left tells what: not on this bench
  return stopProposal(given, weighed);
}

/** Power, or what still stands before it: pins and parts to put back, the re-check, a motor that nobody has read. */
function powerProposal(
  given: Case,
  step: FindingStep,
  action: PowerEvent,
  weighed: readonly WeighedStep[],
): Draft {
  const { input, hypotheses, model, housekeeping } = given;
  const before = housekeeping ?? (action.feed === "bench" ? null : motorGate(input));
  if (before !== null) return dueProposal(input, before, model);
  return {
    action,
    row: [],
    minutes: step.minutes,
    money: 0,
    why: whyPower(input, action, step.lead),
    expect: expectations(step, hypotheses, input.board, null),
    others: others(given, action, weighed, []),
    atStake: null,
    forecast: powerForecast(input, action, given.risk, hypotheses, model, given.found.steps),
    probesOn: null,
    outlook: outlook(model),
  };
}

function cureProposal(given: Case, step: PlanStep, weighed: readonly WeighedStep[]): Draft {
  const { input, hypotheses, model, priors, dead, found } = given;
  const { board, timeline } = input;
  const cures = step.cures.map((c) => model.cures[c]);
  // dirt first: it costs nothing and hides the rest; then what is surest for its money; a fuse after what blew it
  const isFuse = (name: string): boolean => board.parts.get(name)?.kind === "fuse";
  const worth = ({ name, money, minutes }: (typeof cures)[number]) =>
    (dead.get(name) ?? 0) / (money + minutes * model.perMinute + 1e-6);
  const likely = cures.filter(({ name }) => (dead.get(name) ?? 0) >= PLANNING_RATES.cureAt);
  const ordered = (likely.length > 0 ? likely : cures).sort(
    (a, b) =>
      Number(isFuse(a.name)) - Number(isFuse(b.name)) || worth(b) - worth(a) || (a.name < b.name ? -1 : 1),
  );
  const [first] = ordered;
  const unread = resolderedUnread(input, first.name);
  if (unread !== null) return dueProposal(input, unread, model);
  const again = timeline.replacedIn.has(first.name)
    ? byItself(input, first.name, 1, hypotheses, given.steps)
    : null;
  if (again !== null)
    return proofProposal(
      given,
      again,
      weighed,
      said`${first.name} is new and reads as if it were bad (${percent(dead.get(first.name) ?? 0)}). Measure it by itself before another is fitted: either it came bad, or the board is not as drawn.`,
    );
  const solder = resolderFirst(input, first.name, hypotheses, { ...first, perMinute: model.perMinute });
  if (solder !== null) return resolderProposal(given, solder, first.name, weighed);
  const action = cureAction(board, first.name);
  if (action === null) throw new Error(`nothing on this board cures ${first.name}`);
  const names = ordered.map(({ name }) => name);
  const spent = cures.reduce((sum, { money }) => sum + money, 0);
  const stakes =
    action.do === "replace" && mustShowStakes(action.part, spent, board, model)
      ? atStake(action.part, spent, hypotheses, priors, model, found.steps, board, names)
      : null;
  const fitted: Action =
    action.do === "replace"
      ? { ...action, ...fittedWith(first.name, model.terms), price: first.paid }
      : action;
  return {
    action: fitted,
    row: [],
    minutes: minutesOf(board, timeline.now, fitted),
    money: first.paid,
    why:
      action.do === "clean"
        ? said`There may be ${curedWords(first.name, board)} (${percent(dead.get(first.name) ?? 0)}): clean and dry the place before anything else there is judged.`
        : whyReplace(names, dead, step.success, { board, hypotheses }, whereFrom(names, model.terms)),
    expect: [],
    others: others(given, action, weighed, []),
    atStake: stakes,
    forecast: null,
    probesOn: null,
    outlook: outlook(model),
  };
}

function resolderProposal(given: Case, action: Action, part: string, weighed: readonly WeighedStep[]): Draft {
  const { input, dead, model } = given;
  return {
    action,
    row: [],
    minutes: minutesOf(input.board, input.timeline.now, action),
    money: 0,
    why: said`The readings say that ${part} is open (${percent(dead.get(part) ?? 0)}). A cracked joint reads the same, and solder costs no part: make its joints anew, then read it again.`,
    expect: [],
    others: others(given, action, weighed, []),
    atStake: null,
    forecast: null,
    probesOn: null,
    outlook: outlook(model),
  };
}

function stopProposal(given: Case, weighed: readonly WeighedStep[]): Draft {
  const { input, belief, hypotheses, model, dead, steps } = given;
  if (belief.remainder >= MOSTLY_UNEXPLAINED) return unexplainedProposal(given, weighed);
  let impossible = 0;
  let total = 0;
  model.groups.forEach(({ possible }, g) => {
    total += model.weights[g];
    if (!possible) impossible += model.weights[g];
  });
  const share = total > 0 ? impossible / total : 0;
  if (share >= 0.5) {
    const missing = beforeWriteOff(input, hypotheses, model, dead, steps);
    if (missing !== null)
      return proofProposal(
        given,
        missing,
        weighed,
        said`${missing.part} (${percent(dead.get(missing.part) ?? 0)}) would condemn the board, since it cannot be bought: it is measured by itself before the board is written off.`,
      );
  }
  const action: Action = { do: "close", verdict: share >= 0.5 ? "not-repairable" : "not-economic" };
  return {
    action,
    row: [],
    minutes: 0,
    money: 0,
    why: whyStop(whyInput(given), share),
    expect: [],
    others: others(given, action, weighed, []),
    atStake: null,
    forecast: null,
    probesOn: null,
    outlook: outlookOfStopping(model),
  };
}

/** Where nothing explains the readings no sum is to be trusted: a reading again, and only then stopping. */
function unexplainedProposal(given: Case, weighed: readonly WeighedStep[]): Draft {
  const { input, belief, model } = given;
  const again = readingToRepeat(input.timeline, belief.unexplained);
  const action: Action = again ?? { do: "close", verdict: "not-economic" };
  return {
    action,
    row: [],
    minutes: minutesOf(input.board, input.timeline.now, action),
    money: 0,
    why: whyUnexplained(again),
    expect: [],
    others: others(given, action, weighed, []),
    atStake: null,
    forecast: null,
    probesOn: probesOn(action, null),
    outlook: outlook(model),
  };
}

function proofProposal(
  given: Case,
  { action, step }: MissingProof,
  weighed: readonly WeighedStep[],
  why: string,
): Draft {
  const { input, hypotheses, model } = given;
  return {
    action,
    row: [],
    minutes: minutesOf(input.board, input.timeline.now, action),
    money: 0,
    why,
    expect: expectations(step, hypotheses, input.board, goodReading(given.predictor, action)),
    others: others(given, action, weighed, []),
    atStake: null,
    forecast: null,
    probesOn: probesOn(action, step.inHand),
    outlook: outlook(model),
  };
}

/** The best different things to do instead. */
function others(
  given: Case,
  chosen: Action,
  weighed: readonly WeighedStep[],
  plan: readonly PlanStep[],
): Proposal["others"] {
  const { input, model } = given;
  const list: { action: Action; minutes: number; money: number; why: string }[] = [];
  const seen = new Set([JSON.stringify(chosen)]);
  const add = (action: Action, money: number, why: string): void => {
    const key = JSON.stringify(action);
    if (seen.has(key) || list.length >= MOST_OTHERS) return;
    seen.add(key);
    list.push({ action, minutes: minutesOf(input.board, input.timeline.now, action), money, why });
  };
  const nextCure = plan[0]?.cures[0];
  if (nextCure !== undefined) {
    const cure = model.cures[nextCure];
    const action = cureAction(input.board, cure.name);
    if (action !== null)
      add(
        action,
        cure.paid,
        said`The best repair from here: ${curedWords(cure.name, input.board)}, ${percent(plan[0].success)} that it is enough.`,
      );
  }
  for (const { step } of weighed) {
    if (list.length >= MOST_OTHERS) break;
    if (step.row.length > 0 || step.action.do === "power") continue;
    add(step.action, 0, whyFinding(step, whyInput(given)));
  }
  return list;
}
