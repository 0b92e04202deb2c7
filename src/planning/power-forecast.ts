/** What the power card shows: each feed with what it would break, the rung, and what would lower the risk. */
import type { PowerEvent } from "../bench/event.ts";
import { faultNameWords } from "../board/fault-words.ts";
import { netWords } from "../board/net-words.ts";
import { MINUTES } from "../money/minutes.ts";
import { partPrice } from "../money/prices.ts";
import { feedNets } from "../priors/fed-nets.ts";
import type { PowerForecast, PowerRisks } from "../safety/forecast.ts";
import { lampAdvice, lampFor, NO_LAMP } from "../safety/limiter.ts";
import { motorConnected, motorsOf } from "../safety/motor-check.ts";
import { idleWatts } from "./board-idle.ts";
import { percent } from "./faults-in-words.ts";
import type { Hypotheses } from "./hypotheses.ts";
import { absentParts, type PlanningInput } from "./planning-input.ts";
import { benchRungs, lampRung, mainsRung, type Rung, triedRungs } from "./power-ladder.ts";
import { RUNGS } from "./power-rungs.ts";
import type { PowerStep } from "./power-step.ts";
import type { Action, FeedRisk, Forecast } from "./proposal.ts";
import { breakingCost, type RepairModel } from "./repair-model.ts";
import { riskLowered } from "./risk-lowered.ts";
import type { FindingStep } from "./steps.ts";

const BREAK_LEAST = 0.005;
const MOST_BREAKS = 6;
/** Feeds shown: a phone holds no more beside the rest. */
const MOST_FEEDS = 5;

/** Why power comes now, and where the meters go first. */
export function whyPower(input: PlanningInput, { id }: Rung, lead: string | null): string {
  const { board, timeline } = input;
  const unread = triedRungs(board, timeline).at(-1)?.came === "unread";
  const reason =
    id === "E" && unread
      ? "The lamp went dark and nobody read the bus: that proves nothing, a short behind a hot limiter goes dark too."
      : REASONS[id];
  const motor = motorsOf(board, absentParts(input)).some((one) => motorConnected(timeline.now, one));
  const unplugged =
    id === "H" || id === "A" || id === "B" || !motor ? "" : " Motor unplugged where it can be.";
  return `${reason}${unplugged} ${lead ?? "Clip the meters on first."} Then hands off.`;
}

const REASONS: Readonly<Record<Rung["id"], string>> = {
  A: "The rail at its own volts from the bench supply says what cold checks cannot, and no mains is near.",
  B: "The rail at its own volts from the bench supply says what cold checks cannot, and no mains is near.",
  C: "Some volts across the bus with a small limit show a short that the mains would feed.",
  D: "The small supply starts from an isolated bus before any mains is there.",
  E: "No cold check left is worth its minutes; power says more, and the lamp holds the mains back.",
  F: "What came before showed nothing hard, and passes too little to prove the board.",
  H: "It ran without its motor, and the motor reads well: now with it, under load.",
};

/** The forecast shown with every power-up. */
export function powerForecast(
  input: PlanningInput,
  risks: PowerRisks,
  step: PowerStep,
  hypotheses: Hypotheses,
  model: RepairModel,
  checks: readonly FindingStep[],
): Forecast {
  const { board, timeline, terms, equipment } = input;
  const { rung } = step;
  const money = { of: breakingCost(board, timeline.now, terms), most: terms.agreedPrice };
  const chosen = risks.under(rung.harm, money);
  const { name, proves, goOn, stop } = RUNGS[rung.id];
  const lamp = lampFor(equipment, idleWatts(board), (step.action.watts ?? 1) - 1);
  return {
    rung: { name, proves, goOn, stop },
    feeds: feedRisks(input, rung, (one) => (one === rung ? chosen : risks.under(one.harm, money)), model),
    lowers: riskLowered(step.losses, hypotheses, checks, (action) => checkWords(input, action)),
    spent: spentAtRisk(input, chosen, model),
    anyBreaks: chosen.anyBreaks,
    breaks: chosen.breaks
      .filter(({ probability }) => probability >= BREAK_LEAST)
      .slice(0, MOST_BREAKS)
      .map(({ part, probability }) => {
        const because = risks.because(part, rung.harm);
        return {
          part,
          probability,
          because:
            because === null
              ? "some parts die at switch-on with nothing else wrong"
              : `${faultNameWords(because.fault, board)} may be left (${percent(because.probability)}), the likeliest cause`,
        };
      }),
    advice:
      step.action.feed === "bench"
        ? "Set volts and limit with the leads in the air, switch off, clip on plus to plus, then switch on."
        : step.action.feed === "lamp" && lamp !== null
          ? lampAdvice(lamp, idleWatts(board))
          : lamp === null
            ? NO_LAMP
            : "On the mains only through the right fuse.",
  };
}

/** Every feed that this bench can do, gentlest first, with what each would lose. */
function feedRisks(
  input: PlanningInput,
  rung: Rung,
  under: (rung: Rung) => PowerForecast,
  model: RepairModel,
): readonly FeedRisk[] {
  const bench = benchRungs(input);
  const bus = bench.filter(({ id }) => id === "C" || id === "D");
  const lamp = lampRung(input);
  const all = [...bus, ...(lamp === null ? [] : [lamp]), mainsRung(input)];
  const feeds = all.map((one) =>
    feedWords(input, one.action) === feedWords(input, rung.action) ? rung : one,
  );
  if (!feeds.includes(rung)) feeds.unshift(rung);
  const minutes = MINUTES.power + MINUTES.unpower + model.proofMinutes;
  const rows = feeds.slice(-MOST_FEEDS).map((one) => {
    const { anyBreaks, lossMoney } = under(one);
    return { one, anyBreaks, lossMoney };
  });
  const least = rows.reduce((best, row) => (row.lossMoney <= best.lossMoney ? row : best));
  return rows.map(({ one, anyBreaks, lossMoney }) => ({
    what: feedWords(input, one.action),
    anyBreaks,
    lossMoney,
    minutes,
    chosen: one === rung,
    cheapest: one === least.one,
  }));
}

function feedWords({ board }: PlanningInput, { feed, watts, volts, limitAmps, at }: PowerEvent): string {
  if (feed === "mains") return "mains";
  if (feed === "lamp") return `lamp, ${watts} W`;
  const { rail } = typeof at === "object" ? feedNets(board, at) : { rail: null };
  return `${volts} V, ${limitAmps} A into ${rail === null ? "the bus" : rail.name}`;
}

function checkWords({ board }: PlanningInput, action: Action): string | null {
  if (action.do === "look") return `look at ${action.part}`;
  if (action.do !== "measure" || action.red === undefined || action.black === undefined) return null;
  return `${action.mode}, red on ${netWords(board, action.red)}, black on ${netWords(board, action.black)}`;
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
    spent += event.price ?? partPrice(part, terms.newBoardPrice);
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
  const repairable = total > 0 ? possible / total : 1;
  return { money: spent, probability: 1 - repairable * intact };
}
