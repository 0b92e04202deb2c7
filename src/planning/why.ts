import type { Timeline } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import { curedWords, faultStatement, faultWithinPart } from "../board/fault-words.ts";
import { said } from "../messages/said.ts";
import { byChance, faultChances, likeliestFault, type NamedFault } from "./fault-chances.ts";
import { andList, brief, inOneBreath, orList, percent } from "./faults-in-words.ts";
import type { Hypotheses } from "./hypotheses.ts";
import type { RepairModel } from "./repair-model.ts";
import { type FindingStep, outcomeProbabilities } from "./steps.ts";
import { testedFaults } from "./tested-faults.ts";

/** An outcome that turns a repair into a write-off, or the other way about, by this much is what the step is for. */
const TURNS = 0.25;
/** An outcome rarer than this is no reason to measure. */
const TURNS_LEAST = 0.01;

/** What the words of a step are made from, beside the step itself. */
export interface WhyInput {
  readonly board: Board;
  readonly timeline: Timeline;
  readonly hypotheses: Hypotheses;
  readonly model: RepairModel;
}

/** Why a finding step comes now, in the trade's words. */
export function whyFinding(step: FindingStep, input: WhyInput): string {
  const sentences = [step.lead, leadSentence(step, input), writeOffSentence(step, input), rowSentence(step)];
  return sentences.filter((sentence) => sentence !== null).join(" ");
}

/** A row shares the meter's setting; whether a probe can stay where it is depends on its places. */
function rowSentence({ action, row }: FindingStep): string | null {
  if (row.length === 0 || action.do !== "measure") return null;
  const stays = (probe: "red" | "black") =>
    row.every((next) => next.do === "measure" && next[probe] === action[probe]);
  if (stays("red")) return said`The red probe stays where it is: take the whole row.`;
  if (stays("black")) return said`The black probe stays where it is: take the whole row.`;
  return said`The meter is set already: take the whole row.`;
}

function leadSentence(step: FindingStep, { board, hypotheses }: WhyInput): string | null {
  const told = toldApart(step, hypotheses, board);
  const { action } = step;
  if (action.do === "look")
    return told.length === 0
      ? said`A look at ${action.part} costs next to nothing, and nobody has taken it yet.`
      : said`Damage on ${action.part} would speak for ${orList(inOneBreath(told))}; a clean body clears nothing for certain.`;
  const [only, second] = told;
  if (only === undefined) return step.lead === null ? said`Cheap, and nothing has tested it yet.` : null;
  return second === undefined
    ? said`Shows whether ${faultStatement(only.fault, board)}.`
    : said`Shows which of these it is, if any: ${orList(brief(told))}.`;
}

/** Tested faults whose probability differs most between the outcomes. */
function toldApart(step: FindingStep, hypotheses: Hypotheses, board: Board): readonly NamedFault[] {
  const probabilities = outcomeProbabilities(step.shares, hypotheses);
  const tested = testedFaults(step, hypotheses);
  const spread = new Map<NamedFault, number>();
  const before = faultChances(hypotheses, board, null, tested);
  step.shares.forEach((share, o) => {
    if (probabilities[o] <= 0) return;
    const after = faultChances(hypotheses, board, share, tested);
    for (const [fault, p] of before) {
      const moved = Math.abs((after.get(fault) ?? 0) - p) * probabilities[o];
      spread.set(fault, (spread.get(fault) ?? 0) + moved);
    }
  });
  const ranked = [...spread].sort(byChance);
  const most = ranked[0]?.[1] ?? 0;
  return ranked
    .filter(([, moved]) => moved > 0.002 && moved >= most * 0.3)
    .slice(0, 4)
    .map(([fault]) => fault);
}

/** Named where some outcome shows that a part nobody sells is dead: the late write-off this step prevents. */
function writeOffSentence(step: FindingStep, { hypotheses, model, timeline }: WhyInput): string | null {
  const gone = (share: Float64Array | null): { lost: number; names: Map<string, number> } => {
    const names = new Map<string, number>();
    let lost = 0;
    let total = 0;
    hypotheses.list.forEach(({ dead, weight }, h) => {
      const w = weight * (share === null ? 1 : share[h]);
      total += w;
      if (model.groups[model.groupOf[h]].possible) return;
      lost += w;
      for (const c of model.groups[model.groupOf[h]].cures) {
        const { name, possible } = model.cures[c];
        if (!possible && dead.includes(name)) names.set(name, (names.get(name) ?? 0) + w);
      }
    });
    return { lost: total > 0 ? lost / total : 0, names };
  };
  const before = gone(null).lost;
  const probabilities = outcomeProbabilities(step.shares, hypotheses);
  for (const [o, share] of step.shares.entries()) {
    const { lost, names } = gone(share);
    if (lost - before < TURNS || probabilities[o] < TURNS_LEAST) continue;
    const [name] = [...names].reduce((most, next) => (next[1] > most[1] ? next : most));
    const spent = timeline.entries.some(({ event }) => event.do === "replace");
    const chance = percent(probabilities[o]);
    return spent
      ? said`${name} cannot be bought: a reading that accuses it (${chance}) may end the job, so this comes before more money is spent.`
      : said`${name} cannot be bought: a reading that accuses it (${chance}) may end the job, so this comes before any money is spent.`;
  }
  return null;
}

/** Why these parts are replaced now, the first of them first. */
export function whyReplace(
  names: readonly string[],
  chance: ReadonlyMap<string, number>,
  success: number,
  { board, hypotheses }: Pick<WhyInput, "board" | "hypotheses">,
): string {
  const [first, ...rest] = names.map((name) => {
    const fault = likeliestFault(name, hypotheses);
    const sure = percent(chance.get(name) ?? 0);
    if (fault === null || fault.of === "nets") return said`${curedWords(name, board)} (${sure})`;
    return said`${name} (${sure}, likeliest ${faultWithinPart(fault, board)})`;
  });
  const sentences = [said`${first ?? ""}: no check left is worth its minutes before that.`];
  if (rest.length > 0) sentences.push(said`Due with it before the next power-up: ${andList(rest)}.`);
  const fuses = names.filter((name) => board.parts.get(name)?.kind === "fuse");
  if (fuses.length > 0 && fuses.length < names.length)
    sentences.push(said`${andList(fuses)} last: fitted before what blew it, a fuse blows again.`);
  sentences.push(said`After that, ${percent(success)} that the board is whole.`);
  return sentences.join(" ");
}

/** Why it stops here. */
export function whyStop({ board, hypotheses, model }: WhyInput, impossible: number): string {
  const dead = new Map<string, number>();
  hypotheses.list.forEach(({ dead: names, weight }) => {
    for (const name of names) dead.set(name, (dead.get(name) ?? 0) + weight);
  });
  const unobtainable = model.cures
    .filter(({ possible }) => !possible)
    .sort((a, b) => (dead.get(b.name) ?? 0) - (dead.get(a.name) ?? 0))[0];
  if (impossible >= 0.5 && unobtainable !== undefined)
    return said`${unobtainable.name} is dead (${percent(dead.get(unobtainable.name) ?? 0)}) and nobody sells it. Anything fitted now is money lost.`;
  const whole = wholeChance(model);
  if (whole >= 0.5)
    return said`By the readings this board is more likely whole (${percent(whole)}) than not, yet it has not been seen to run, and nothing left on this bench tells why. Before it is given back: what tells it to run may be missing (a command, a door or float switch, a sensor, the fan's signal). Try it in its own unit.`;
  const repair = likeliestRepair(model);
  if (repair === null)
    return said`What is left to find and to replace would cost more in minutes and parts than the repair earns.`;
  const { agreedPrice, currency } = model.terms;
  const names = andList(repair.names.map((name) => curedWords(name, board)));
  const parts = `${Number(repair.money.toFixed(2))} ${currency}`;
  return said`The likeliest repair from here is ${names}: ${parts} of parts, ${`${Math.round(repair.minutes)} min`}, and ${percent(repair.chance)} that it is enough. Weighed with what a failed try costs, that is worth less than stopping, at ${`${agreedPrice} ${currency}`} for the repair.`;
}

/** Chance that nothing on the board has to be cured. */
function wholeChance({ groups, weights }: RepairModel): number {
  return groups.reduce(
    (sum, { cures, unlisted }, g) => (cures.length === 0 && !unlisted ? sum + weights[g] : sum),
    0,
  );
}

/** What would cure the likeliest state of the board that can be cured by name; null where none is. */
function likeliestRepair({ groups, cures, weights }: RepairModel): {
  readonly names: readonly string[];
  readonly money: number;
  readonly minutes: number;
  readonly chance: number;
} | null {
  let best = -1;
  groups.forEach(({ possible, unlisted, cures: due }, g) => {
    if (possible && !unlisted && due.length > 0 && weights[g] > (best < 0 ? 0 : weights[best])) best = g;
  });
  if (best < 0) return null;
  const due = groups[best].cures.map((c) => cures[c]);
  return {
    names: due.map(({ name }) => name),
    money: due.reduce((sum, { paid }) => sum + paid, 0),
    minutes: due.reduce((sum, { minutes }) => sum + minutes, 0),
    chance: weights[best],
  };
}
