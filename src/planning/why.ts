import { benchKey } from "../bench/bench-state.ts";
import type { Timeline } from "../bench/timeline.ts";
import { faultStatement, faultWords } from "../board/fault-words.ts";
import { orList, percent } from "./faults-in-words.ts";
import { faultsOf, type Hypotheses } from "./hypotheses.ts";
import type { Action } from "./proposal.ts";
import type { RepairModel } from "./repair-model.ts";
import { type FindingStep, outcomeProbabilities } from "./steps.ts";

/** An outcome that turns a repair into a write-off, or the other way about, by this much is what the step is for. */
const TURNS = 0.25;

/** Why a finding step comes now, in the trade's words. */
export function whyFinding(step: FindingStep, hypotheses: Hypotheses, model: RepairModel): string {
  const sentences = step.lead === null ? [] : [step.lead];
  sentences.push(leadSentence(step, hypotheses));
  const verdict = writeOffSentence(step, hypotheses, model);
  if (verdict !== null) sentences.push(verdict);
  if (step.row.length > 0) sentences.push("The probes are there already: take the whole row.");
  return sentences.join(" ");
}

/** The same reading a second time wants saying so, or it looks like a mistake of the program. */
export function repeatWords(timeline: Timeline, action: Action): string {
  if (action.do !== "measure") return "";
  const bench = benchKey(timeline.now);
  const before = timeline.entries.some(
    ({ event, before: state }) =>
      event.do === "measure" &&
      event.mode === action.mode &&
      event.red === action.red &&
      event.black === action.black &&
      benchKey(state) === bench,
  );
  return before
    ? "The same reading once more: what it showed fits badly with the rest, and probes slip. "
    : "";
}

function leadSentence(step: FindingStep, hypotheses: Hypotheses): string {
  const told = toldApart(step, hypotheses);
  if (told.length === 0) return "Cheap, and nothing has tested it yet.";
  const [only, second] = told;
  if (second === undefined) {
    const named = hypotheses.priors.find(({ fault }) => faultWords(fault) === only);
    return `Shows whether ${named === undefined ? only : faultStatement(named.fault)}.`;
  }
  return `Tells which: ${orList(told)}.`;
}

/** Faults whose probability differs most between the outcomes. */
function toldApart(step: FindingStep, hypotheses: Hypotheses): readonly string[] {
  const probabilities = outcomeProbabilities(step.shares, hypotheses);
  const spread = new Map<string, number>();
  const before = faultChances(hypotheses, () => 1);
  step.shares.forEach((share, o) => {
    if (probabilities[o] <= 0) return;
    const after = faultChances(hypotheses, (h) => share[h]);
    for (const [words, p] of before) {
      const moved = Math.abs((after.get(words) ?? 0) - p) * probabilities[o];
      spread.set(words, (spread.get(words) ?? 0) + moved);
    }
  });
  const ranked = [...spread].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1));
  const most = ranked[0]?.[1] ?? 0;
  return ranked
    .filter(([, moved]) => moved > 0.002 && moved >= most * 0.3)
    .slice(0, 4)
    .map(([words]) => words);
}

function faultChances(hypotheses: Hypotheses, shareOf: (h: number) => number): ReadonlyMap<string, number> {
  const chances = new Map<string, number>();
  let total = 0;
  hypotheses.list.forEach((hypothesis, h) => {
    const w = hypothesis.weight * shareOf(h);
    total += w;
    for (const f of faultsOf(hypothesis, hypotheses)) {
      const words = faultWords(hypotheses.priors[f].fault);
      chances.set(words, (chances.get(words) ?? 0) + w);
    }
  });
  if (total > 0) for (const [words, w] of chances) chances.set(words, w / total);
  return chances;
}

/** Named where some outcome shows that a part nobody sells is dead: the late write-off this step prevents. */
function writeOffSentence(step: FindingStep, hypotheses: Hypotheses, model: RepairModel): string | null {
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
  for (const share of step.shares) {
    const { lost, names } = gone(share);
    if (lost - before < TURNS) continue;
    const [name] = [...names].reduce((most, next) => (next[1] > most[1] ? next : most));
    return `${name} cannot be bought: if it is dead (${percent(before)}) the board is not worth another part, so this comes before any money.`;
  }
  return null;
}

/** Why these parts are replaced now. */
export function whyReplace(
  names: readonly string[],
  chance: ReadonlyMap<string, number>,
  success: number,
): string {
  const each = names.map((name) => `${name} (${percent(chance.get(name) ?? 0)})`);
  const also =
    names.length > 1
      ? ` ${each.slice(1).join(", ")}: changed in the same go, since a power-up that fails costs more.`
      : "";
  return `${each[0]} is faulty as far as the readings tell, and no check left is worth its minutes before that.${also} Then ${percent(success)} that the board is whole.`;
}

/** Why it stops here. */
export function whyStop(hypotheses: Hypotheses, model: RepairModel, impossible: number): string {
  const dead = new Map<string, number>();
  hypotheses.list.forEach(({ dead: names, weight }) => {
    for (const name of names) dead.set(name, (dead.get(name) ?? 0) + weight);
  });
  const unobtainable = model.cures
    .filter(({ possible }) => !possible)
    .sort((a, b) => (dead.get(b.name) ?? 0) - (dead.get(a.name) ?? 0))[0];
  if (impossible >= 0.5 && unobtainable !== undefined)
    return `${unobtainable.name} is dead (${percent(dead.get(unobtainable.name) ?? 0)}) and nobody sells it. Anything fitted now is money lost.`;
  return `What it would still take in minutes and parts is more than the ${model.terms.agreedPrice} ${model.terms.currency} of a repair is worth, weighed with the chance that it succeeds.`;
}
