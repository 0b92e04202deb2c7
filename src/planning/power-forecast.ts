/** What the power card shows: why this rung comes now, each feed with what it would break, and what would lower the risk. */

import type { PowerEvent } from "../bench/event.ts";
import { netWords } from "../board/net-words.ts";
import { plain, said } from "../messages/said.ts";
import { fittedPrice } from "../money/prices.ts";
import { feedNets } from "../priors/fed-nets.ts";
import type { PowerForecast } from "../safety/forecast.ts";
import { lampAdvice, lampFor, NO_LAMP } from "../safety/limiter.ts";
import { idleWatts } from "./board-idle.ts";
import type { Hypotheses } from "./hypotheses.ts";
import { ladderStates } from "./ladder-states.ts";
import { motorWords } from "./motor-first.ts";
import type { PlanningInput } from "./planning-input.ts";
import { benchRungs, lampRung, mainsRung, pulsed, type Rung, rungOf, triedRungs } from "./power-ladder.ts";
import type { PowerRisk } from "./power-risk.ts";
import { RUNGS } from "./power-rungs.ts";
import type { Action, FeedRisk, Forecast } from "./proposal.ts";
import type { RepairModel } from "./repair-model.ts";
import { riskLowered } from "./risk-lowered.ts";
import type { FindingStep } from "./steps.ts";

const REASONS: Readonly<Record<Rung["id"], string>> = {
  A: said`The rail at its own volts from the bench supply says what cold checks cannot, and no mains is near.`,
  B: said`The rail at its own volts from the bench supply says what cold checks cannot, and no mains is near.`,
  C: said`Some volts across the bus with a small limit show a short that the mains would feed.`,
  D: said`The small supply starts from an isolated bus before any mains is there.`,
  E: said`No cold check left is worth its minutes; power says more, and the lamp holds the mains back.`,
  F: said`No cold check left is worth its minutes; power says more.`,
  H: said`No cold check left is worth its minutes; power says more.`,
};

/**
 * Why power comes now.
 * @param lead - where the meters go first; null where no place is better than another
 */
export function whyPower(input: PlanningInput, action: PowerEvent, lead: string | null): string {
  return [
    reasonOf(input, action),
    ...(action.feed === "bench" ? [] : motorWords(input)),
    lead ?? said`Clip the meters on first.`,
    said`Then hands off.`,
  ].join(" ");
}

function reasonOf(input: PlanningInput, action: PowerEvent): string {
  const { board, timeline } = input;
  const id = rungOf(board, timeline.now, action);
  const tried = triedRungs(board, timeline);
  const last = tried.at(-1);
  if (id === "E" && last?.came === "unread")
    return said`Nothing read behind the lamp shows that the bus stands: gone dark proves nothing, a short behind a hot limiter goes dark too.`;
  if (id === "E" && last?.id === "E" && last.event.watts !== action.watts)
    return said`Pulsing may only be the lamp: a larger one carries the board.`;
  if (tried.some((one) => one.id === id && one.event.feed !== "bench"))
    return said`The board bears power and shows no more by itself: once more, with the meter at another place.`;
  if (action.feed === "mains" && last?.id === "E" && pulsed(last))
    return said`The lamp pulsed and did nothing else. That may be the lamp itself, and no larger one is at hand: on the mains at the risk told below.`;
  if (action.feed === "mains" && last?.id === "E")
    return said`The lamp showed nothing hard, and it passes too little to prove the board.`;
  if (id === "H" && last?.id === "F") return said`It bore the mains without its motor: now with it.`;
  if (action.feed === "mains" && lampRung(input) !== null)
    return said`Hardly anything is believed left that power could break: what a lamp would spare is worth less than its minutes.`;
  return REASONS[id];
}

/** Every feed that is worth showing beside this one, with what each would lose; the checks that would see it; the ladder. */
export function powerForecast(
  input: PlanningInput,
  action: PowerEvent,
  risk: PowerRisk,
  hypotheses: Hypotheses,
  model: RepairModel,
  checks: readonly FindingStep[],
): Forecast {
  const rung = { id: rungOf(input.board, input.timeline.now, action), action };
  const chosen = risk.under(action);
  const { proves, goOn, stop } = RUNGS[rung.id];
  return {
    rung: { proves, goOn, stop },
    ladder: ladderStates(input, rung),
    feeds: feedRisks(input, rung, (one) => (one === rung ? chosen : risk.under(one.action))),
    lowers: riskLowered(risk.losses(action, hypotheses), hypotheses, checks, (one) => checkWords(input, one)),
    spent: spentAtRisk(input, chosen, model),
    anyBreaks: chosen.anyBreaks,
    breaks: risk.breaks(action, chosen),
    advice: adviceOf(input, action),
  };
}

function adviceOf({ board, equipment }: PlanningInput, { feed, watts }: PowerEvent): string {
  if (feed === "bench")
    return said`Set volts and limit with the leads in the air, switch off, clip on plus to plus, then switch on.`;
  const idle = idleWatts(board);
  const lamp = lampFor(equipment, idle, (watts ?? 1) - 1);
  if (lamp === null) return NO_LAMP;
  return feed === "lamp" ? lampAdvice(lamp, idle) : said`On the mains only through the right fuse.`;
}

/** This feed beside the lamp and the mains, and beside a supply across the bus where the bench has one; gentlest first. */
function feedRisks(
  input: PlanningInput,
  rung: Rung,
  under: (rung: Rung) => PowerForecast,
): readonly FeedRisk[] {
  const lamp = lampRung(input);
  const onBus = benchRungs(input).filter(({ id }) => id === "C" || id === "D");
  const feeds = [...onBus, ...(lamp === null ? [] : [lamp]), mainsRung(input)];
  const own = plain(feedWords(input, rung.action));
  const others = feeds.filter((one) => plain(feedWords(input, one.action)) !== own);
  const rank = (one: Rung) => ["bench", "lamp", "mains"].indexOf(one.action.feed);
  return [rung, ...others]
    .sort(
      (a, b) =>
        rank(a) - rank(b) ||
        (a.action.watts ?? a.action.volts ?? 0) - (b.action.watts ?? b.action.volts ?? 0),
    )
    .map((one) => {
      const { anyBreaks, lossMoney } = under(one);
      return { what: feedWords(input, one.action), anyBreaks, lossMoney, chosen: one === rung };
    });
}

function feedWords({ board }: PlanningInput, { feed, watts, volts, limitAmps, at }: PowerEvent): string {
  if (feed === "mains") return said`mains`;
  if (feed === "lamp") return said`lamp, ${`${watts} W`}`;
  const { rail } = typeof at === "object" ? feedNets(board, at) : { rail: null };
  const gives = `${volts} V, ${limitAmps} A`;
  return rail === null ? said`${gives} into the bus` : said`${gives} into ${rail.name}`;
}

/** The meter's settings for the cold checks. */
const MODES: Readonly<Record<string, string>> = {
  diode: said`diode`,
  ohms: said`ohms`,
  farads: said`farads`,
};

function checkWords({ board }: PlanningInput, action: Action): string | null {
  if (action.do === "look") return said`look at ${action.part}`;
  if (action.do !== "measure" || action.red === undefined || action.black === undefined) return null;
  const mode = MODES[action.mode] ?? action.mode;
  return said`${mode}, red on ${netWords(board, action.red)}, black on ${netWords(board, action.black)}`;
}

/** Money spent on parts so far, and how likely this power-up shows it lost: what cannot be bought is dead, or a new part breaks. */
function spentAtRisk(
  { board, timeline, terms }: PlanningInput,
  { breaks }: PowerForecast,
  model: RepairModel,
): Forecast["spent"] {
  const chance = new Map(breaks.map(({ part, probability }) => [part, probability]));
  let spent = 0;
  let intact = 1;
  const fitted = new Set<string>();
  for (const { event } of timeline.entries) {
    const part = event.do === "replace" ? board.parts.get(event.part) : undefined;
    if (event.do !== "replace" || part === undefined) continue;
    spent += event.price ?? fittedPrice(part, terms);
    if (!fitted.has(event.part)) intact *= 1 - (chance.get(event.part) ?? 0);
    fitted.add(event.part);
  }
  if (spent <= 0) return null;
  let possible = 0;
  let total = 0;
  model.groups.forEach((group, g) => {
    total += model.weights[g];
    if (group.possible) possible += model.weights[g];
  });
  return { money: spent, probability: 1 - (total > 0 ? possible / total : 1) * intact };
}
