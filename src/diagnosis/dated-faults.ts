/**
 * Faults live in time. The board came in with some; every `power`, `replace`, `refit` and `restore` opens a span in which
 * parts may have broken or a fitted part may be bad; a replacement cures what its part had. Here the prior table and the
 * timeline become the universe of dated elements.
 */
import type { JobEvent } from "../bench/event.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import type { PriorTable } from "../priors/fault-prior.ts";
import { type FeedHarm, feedHarm, knockOnHarm, ownHarm } from "../priors/feed-harm.ts";
import { jointShare } from "../priors/joint-share.ts";
import { makeUniverse, type Universe } from "./universe.ts";

/** Rules of time (from memory: the shop's own outcomes will replace them). */
export const SPAN_RULES = {
  /** rate at which handling (a pin refitted, a part put back) breaks something in that part */
  handling: 0.005,
  /** a fault that was there through one power-up has done most of its damage: strength of its knock-ons at the next */
  knockOnAtLaterPower: 0.5,
} as const;

const FOREVER = 2 ** 31 - 1;

interface Draft {
  fault: number[];
  site: number[];
  rate: number[];
  from: number[];
  until: number[];
}

/** Builds the universe: elements in order of span, within it of the prior table. Parts in `absent` have no faults. */
export function datedFaults(
  board: Board,
  timeline: Timeline,
  priors: PriorTable,
  absent: readonly string[],
): Universe {
  const lives = partLives(timeline);
  const draft: Draft = { fault: [], site: [], rate: [], from: [], until: [] };
  const siteNumbers = new Map<string, number>();
  const bySpan: Int32Array[] = [];
  const partRate = new Map<string, number>();
  for (const prior of priors.faults) partRate.set(prior.part, (partRate.get(prior.part) ?? 0) + prior.rate);

  for (const span of timeline.spans) {
    const harm = span.event?.do === "power" ? feedHarm(board, span.event) : null;
    const first = new Int32Array(priors.faults.length).fill(-1);
    bySpan.push(first);
    priors.faults.forEach((prior, index) => {
      if (absent.includes(prior.part) && span.index === 0) return;
      const rate = rateInSpan(
        span.event,
        prior.part,
        prior.rate,
        partRate.get(prior.part) ?? 1,
        priors,
        index,
        harm,
      );
      const from = span.openedBy < 0 ? -1 : span.openedBy;
      if (rate <= 0 && span.event?.do !== "power") return;
      const life = lifeAt(lives.get(prior.part) ?? [], from);
      const site = siteNumber(siteNumbers, `${prior.site}#${life.number}`);
      first[index] = draft.fault.length;
      const cured = curedBy(board, timeline, prior.part, prior.fault.mode, from);
      const share = cured.resolder < life.until ? jointShare(board.parts.get(prior.part)?.kind) : 0;
      push(draft, index, site, rate * (1 - share), from, Math.min(life.until, cured.clean));
      if (share > 0) push(draft, index, site, rate * share, from, cured.resolder);
    });
  }
  return makeUniverse({ ...draft, knockOns: datedKnockOns(board, timeline, priors, bySpan, draft) });
}

function push(draft: Draft, fault: number, site: number, rate: number, from: number, until: number): void {
  draft.fault.push(fault);
  draft.site.push(site);
  draft.rate.push(Math.max(rate, 1e-12));
  draft.from.push(from);
  draft.until.push(until);
}

function siteNumber(numbers: Map<string, number>, site: string): number {
  const known = numbers.get(site);
  if (known !== undefined) return known;
  numbers.set(site, numbers.size);
  return numbers.size - 1;
}

/** Log indexes at which each part was replaced. */
function partLives(timeline: Timeline): Map<string, number[]> {
  const lives = new Map<string, number[]>();
  for (const entry of timeline.entries)
    if (entry.event.do === "replace")
      lives.set(entry.event.part, [...(lives.get(entry.event.part) ?? []), entry.logIndex]);
  return lives;
}

function lifeAt(replacedAt: readonly number[], from: number): { number: number; until: number } {
  const number = replacedAt.filter((at) => at <= from).length;
  return { number, until: replacedAt.find((at) => at > from) ?? FOREVER };
}

function rateInSpan(
  event: JobEvent | null,
  part: string,
  arrivalRate: number,
  partRate: number,
  priors: PriorTable,
  index: number,
  harm: FeedHarm | null,
): number {
  if (event === null) return arrivalRate;
  switch (event.do) {
    case "power":
      return (priors.breaksAtPower[index] ?? 0) * (harm === null ? 1 : ownHarm(harm, priors.faults[index]));
    case "replace": {
      if (event.part !== part) return 0;
      const bad =
        (event.used === true ? priors.fittedBad.used : priors.fittedBad.new) + priors.fittedBad.fittedWrong;
      return (bad * arrivalRate) / partRate;
    }
    case "restore":
      return event.part === part ? (SPAN_RULES.handling * arrivalRate) / partRate : 0;
    case "refit":
      return event.place.startsWith(`${part}.`) ? (SPAN_RULES.handling * arrivalRate) / partRate : 0;
    default:
      return 0;
  }
}

/** When cleaning ended a leak between nets, and resoldering an open joint, after `from`. */
function curedBy(
  board: Board,
  timeline: Timeline,
  part: string,
  mode: string,
  from: number,
): { clean: number; resolder: number } {
  const cured = { clean: FOREVER, resolder: FOREVER };
  const isLeak = part.includes("~");
  if (!isLeak && mode !== "open") return cured;
  for (const entry of timeline.entries) {
    const event = entry.event;
    if (entry.logIndex <= from) continue;
    if (isLeak && event.do === "clean" && touches(board, event, part.split("~")))
      cured.clean = Math.min(cured.clean, entry.logIndex);
    if (!isLeak && event.do === "resolder" && (event.part === part || sameStage(board, event.stage, part)))
      cured.resolder = Math.min(cured.resolder, entry.logIndex);
  }
  return cured;
}

function sameStage(board: Board, stage: string | undefined, part: string): boolean {
  return stage !== undefined && board.parts.get(part)?.stage === stage;
}

/** Did this cleaning reach a part that carries one of the nets? */
function touches(board: Board, event: { part?: string; stage?: string }, nets: readonly string[]): boolean {
  if (event.part === undefined && event.stage === undefined) return true;
  for (const part of board.parts.values()) {
    if (part.ref !== event.part && (event.stage === undefined || part.stage !== event.stage)) continue;
    for (const net of part.pins.values()) if (nets.includes(net)) return true;
  }
  return false;
}

function datedKnockOns(
  board: Board,
  timeline: Timeline,
  priors: PriorTable,
  bySpan: readonly Int32Array[],
  draft: Draft,
) {
  const edges: { from: number; to: number; rate: number }[] = [];
  for (const span of timeline.spans) {
    if (span.event !== null && span.event.do !== "power") continue;
    const children = bySpan[span.index];
    const fed = span.event === null ? null : feedHarm(board, span.event);
    for (const knock of priors.knockOns) {
      const child = children[knock.child];
      const harm = fed === null ? 1 : knockOnHarm(fed, knock, priors.faults);
      if (child < 0 || harm <= 0) continue;
      for (let earlier = 0; earlier <= span.index; earlier++) {
        const parent = bySpan[earlier][knock.parent];
        if (parent < 0 || draft.until[parent] <= span.openedBy) continue;
        const seen = earlier < span.index && poweredBetween(timeline, earlier, span.index);
        const strength = harm * (seen ? SPAN_RULES.knockOnAtLaterPower : 1);
        const rate = span.event === null ? knock.arrivalRate : knock.rate;
        edges.push({ from: parent, to: child, rate: rate * strength });
      }
    }
  }
  return edges;
}

/** Has the fault of `earlier` seen power (on arrival counts) before the power-up that opened `later`? */
function poweredBetween(timeline: Timeline, earlier: number, later: number): boolean {
  if (earlier === 0) return true;
  return timeline.spans.slice(earlier, later).some((span) => span.event?.do === "power");
}
