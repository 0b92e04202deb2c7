import { createColors } from "picocolors";
import { momentWords } from "../planning/live-proposal.ts";
import type { BenchView, CardView } from "../wire/bench-view.ts";
import { percent, table } from "./answer-text.ts";
import { chargeLine } from "./stores-text.ts";

/** Outcomes rarer than this are counted, not told: ten lines are not read at the bench. */
const RARE = 0.003;

/**
 * The next step in words: what to do, where the probes go, what to expect, what it costs, what could hurt.
 * @param goesIn - what a part asks before it goes in, where the step fits one
 */
export function cardText(view: BenchView, color: boolean, goesIn = ""): string {
  const paint = createColors(color);
  const { card } = view;
  if (card === null) {
    return view.verdict === null ? "There is nothing to propose.\n" : `The job is closed: ${view.verdict}.\n`;
  }
  return [
    view.waiting === null ? "" : paint.bold("Put aside: type resume to take it up again.\n"),
    view.powered ? `${paint.red("THE BOARD IS LIVE.")}\n` : paint.dim(chargeLine(view)),
    ...card.cautions.map((caution) => `${paint.yellow(`! ${caution}`)}\n`),
    `${paint.bold(card.headline)}\n`,
    card.probesOn === null ? "" : `  Probes ${card.probesOn}.\n`,
    card.wait === null ? "" : `  ${card.wait}\n`,
    `  ${costText(card, view.currency)}\n`,
    `  Why: ${card.why}\n`,
    card.good === null ? "" : `  A good board shows ${card.good}.\n`,
    baselineText(view, card),
    ...view.recheck
      .filter(({ amiss }) => amiss || card.action.do === "power")
      .map(({ words, amiss }) => `  ${amiss ? paint.yellow(`! ${words}`) : words}.\n`),
    expectText(card),
    rowText(card),
    stakeText(card, view.currency),
    goesIn,
    forecastText(card, view.currency),
    gateText(card),
    firstMinuteText(card),
    signsText(view, card),
  ].join("");
}

/** How signs of life are typed, at the power-up itself. */
function signsText({ signs }: BenchView, { action }: CardView): string {
  if (action.do !== "power" || action.feed === "bench" || signs.length === 0) return "";
  const typed = signs.map(({ part }) => `${part}=on or ${part}=off`);
  return `  Signs of life are typed behind what is seen: ${typed.join(", ")}; leave out what was not looked at.\n`;
}

/** What the part read there before it went in. */
function baselineText({ baselines }: BenchView, { action }: CardView): string {
  const had = baselines.find(
    ({ mode, red, black }) => action.mode === mode && action.red === red && action.black === black,
  );
  return had === undefined ? "" : `  Before it went in ${had.part} read ${had.words} there.\n`;
}

function costText(card: CardView, currency: string): string {
  const money = card.money === 0 ? "" : `, ${card.money} ${currency}`;
  const { expectedMargin, repairProbability } = card.outlook;
  // the job file counts no minutes for some work, and none is not what it takes
  const minutes = card.minutes === 0 ? "" : `${card.minutes} min${money}. `;
  return `${minutes}From here: ${percent(repairProbability)} that it ends repaired, ${expectedMargin.toFixed(0)} ${currency} expected.`;
}

/** The checks that follow with the same set-up, in the order in which their readings may be typed. */
function rowText(card: CardView): string {
  if (card.row.length === 0) return "";
  const rows = card.rowWords.map((words) => `    ${words}\n`);
  return `  Then, with the same set-up (type the readings on one line):\n${rows.join("")}`;
}

function expectText(card: CardView): string {
  if (card.expect.length === 0) return "";
  const told = card.expect.filter(({ probability }) => probability >= RARE);
  const rare = card.expect.length - told.length;
  const rows = told.map(({ if: outcome, probability, means }) => [
    `    ${outcome.replace("lamp-", "lamp ").replace("fuse-", "fuse ")}`,
    percent(probability).padStart(6),
    means,
  ]);
  return `  If it shows:\n${table(rows)}${rare > 0 ? `    anything else: ${rare} rarer ${rare > 1 ? "outcomes" : "outcome"}\n` : ""}`;
}

function stakeText(card: CardView, currency: string): string {
  const { atStake } = card;
  if (atStake === null) return "";
  const risks = atStake.risks.map((risk) => [
    `    ${percent(risk.probability).padStart(6)}`,
    risk.what,
    risk.minutesToRuleOut === null ? "" : `${risk.minutesToRuleOut} min to rule out`,
  ]);
  const note = atStake.priceNote === null ? "" : ` (${atStake.priceNote})`;
  return `  BEFORE SPENDING ${atStake.money} ${currency}${note}, what could still waste it:\n${table(risks)}`;
}

function gateText({ gate, answers }: CardView): string {
  const keys =
    answers.length === 0 ? "" : `  Type ${answers.map(({ answer }) => answer).join(" | ")}, or the figure.\n`;
  return gate === null ? keys : `${keys}  To drive it unread: overrule ${gate} WHY\n`;
}

function forecastText(card: CardView, currency: string): string {
  const { forecast } = card;
  if (forecast === null) return "";
  const { breaks, feeds, lowers, ladder, spent, rung } = forecast;
  const amount = (money: number) => `${money.toFixed(money < 10 ? 1 : 0)} ${currency}`;
  const list = (head: string, rows: readonly (readonly string[])[]) =>
    rows.length === 0
      ? ""
      : `  ${head}\n${table(rows.map(([first = "", ...rest]) => [`    ${first}`, ...rest]))}`;
  const feedRows = feeds.map(({ what, anyBreaks, lossMoney, chosen }) => [
    `${percent(anyBreaks).padStart(6)}`,
    amount(lossMoney),
    `${what}${chosen ? " (this step)" : ""}`,
  ]);
  const rungRows = ladder.map(({ name, state, note }) => [RUNG_WORDS[state], name, note ?? ""]);
  return [
    list("If powered now, something breaks, and is lost on the average:", feedRows),
    spent === null
      ? ""
      : `  ${amount(spent.money)} spent so far; this shows it lost with ${percent(spent.probability)}.\n`,
    list(
      "Most likely:",
      breaks.map((item) => [percent(item.probability).padStart(6), item.part, item.because]),
    ),
    list(
      "Of that loss these would see beforehand:",
      lowers.map(({ what, minutes, share }) => [percent(share).padStart(6), `${minutes} min`, what]),
    ),
    `  ${forecast.advice}\n`,
    `  Go on when ${rung.goOn}. Stop when ${rung.stop}.\n`,
    list("The ladder:", rungRows),
  ].join("");
}

const RUNG_WORDS: Readonly<Record<NonNullable<CardView["forecast"]>["ladder"][number]["state"], string>> = {
  done: "done",
  now: "NOW",
  open: "left out",
  shut: "not yet",
};

/** What to watch once the switch is on: the bands of a good board, what lies outside of them, when to switch off, when to feel for heat. */
function firstMinuteText(card: CardView): string {
  const { firstMinute } = card;
  if (firstMinute === null) return "";
  const rows = firstMinute.rows.flatMap(({ what, good, clipped, otherwise }) => [
    [`    ${what}${clipped ? " (clipped)" : ""}`, good],
    ...otherwise.map((one) => ["", `else ${one.if}: ${one.means}`]),
  ]);
  const marks = firstMinute.marks.map(({ seconds, what }) => `${momentWords(seconds)}: ${what}`);
  return `  ${firstMinute.on ? "While it is on" : "The first minute"}, a good board shows:\n${table(rows)}  OFF AT ONCE: ${firstMinute.abort.join("; ")}.\n  By the clock: ${marks.join("; ")}.\n`;
}
