/** The answer to "which part will do", for a person at a terminal. */

import { createColors } from "picocolors";
import { plain } from "../messages/said.ts";
import type {
  FindingAnswer,
  FitAnswer,
  IncomingAnswer,
  KnownRating,
  OfferAnswer,
} from "../parts/fit-answer.ts";
import { ratingWords } from "../parts/ratings.ts";
import { sideBySide } from "../parts/side-by-side.ts";
import { table } from "./answer-text.ts";

/** Parts that will not do are counted, and as many are named. */
const MOST_BARRED = 5;
const MOST_OFFERS = 10;

export function fitText(answer: FitAnswer, candidate: OfferAnswer | null, color: boolean): string {
  const paint = createColors(color);
  const { part, kind, role, original, ratings } = answer;
  const known =
    ratings.length === 0 ? "nothing" : ratings.map(({ words, text }) => `${words} ${text}`).join(", ");
  const head = [
    `${paint.bold(`${part}: ${role}`)} (${kind})${original === null ? "" : `, ${original}`}\n`,
    `  Known of the original: ${known}.\n`,
    answer.parallel.length === 0 ? "" : `  Shares its current with ${answer.parallel.join(" ")}.\n`,
    answer.alike.length === 0 ? "" : `  One of a set with ${answer.alike.join(" ")}.\n`,
  ].join("");
  if (candidate !== null) return `${head}${comparedText(answer, candidate)}`;
  return `${head}${rulesText(answer)}${offersText(answer)}${besideText(answer)}${incomingText("Before any part goes in, two minutes", answer.incoming, answer.baseline)}`;
}

function rulesText({ rules }: FitAnswer): string {
  const rows = rules.map(({ wants, why, mark, source }) => [
    `    ${wants}`,
    `${why} (${mark}${source === null ? "" : `: ${source}`})`,
  ]);
  return `  What it must hold to here:\n${table(rows)}`;
}

function whereText(offer: OfferAnswer): string {
  const where = offer.inHouse ? `${offer.count} in ${offer.place ?? "the house"}` : "none in the house";
  const from = offer.donor === null ? "" : ` off ${offer.donor}`;
  const price = offer.price === null ? "" : `, ${offer.price}`;
  return `${where}${offer.used ? ", pulled" : ""}${from}${price}`;
}

/** What objects, in a line each, and what has to be looked up in one. */
function findingLines(findings: readonly FindingAnswer[], indent: string): string {
  const told = findings.filter(({ says }) => says === "bars" || says === "asks" || says === "notes");
  const open = findings.filter(({ says }) => says === "open");
  const lines = told.map(({ says, rule, words, why, custom }) => {
    const sign = says === "bars" ? "NO " : says === "asks" ? "if " : "nb ";
    return `${indent}${sign}${rule}: ${words}; ${why}${custom === null ? "" : `. Said: "${custom}": it is wrong`}\n`;
  });
  const of = (whose: FindingAnswer["unknown"]) =>
    open
      .filter(({ unknown }) => unknown === whose)
      .map(({ about, words }) => (about === undefined ? words : ratingWords(about)));
  const lookUp = ([undefined, "original", "candidate", "both"] as const).flatMap((whose) => {
    const names = of(whose);
    const sheet = whose === undefined ? "" : whose === "both" ? " for both" : ` for the ${whose}`;
    return names.length === 0 ? [] : [`${indent}?  look up${sheet}: ${names.join(", ")}\n`];
  });
  return `${lines.join("")}${lookUp.join("")}`;
}

function offersText({ offers }: FitAnswer): string {
  const usable = offers.filter(({ fits }) => plain(fits) !== "no");
  const barred = offers.filter(({ fits }) => plain(fits) === "no");
  const shown = usable.slice(0, MOST_OFFERS);
  const each = shown.map(
    (offer, at) =>
      `    ${at + 1}. ${offer.name}: ${offer.fits}; ${whereText(offer)}\n${findingLines(offer.findings, "       ")}`,
  );
  const more = usable.length > shown.length ? `    and ${usable.length - shown.length} more\n` : "";
  const not = barred.slice(0, MOST_BARRED).map(({ name, findings }) => {
    const first = findings.find(({ says }) => says === "bars");
    return `    ${name}: ${first?.words ?? "no"}\n`;
  });
  const notMore =
    barred.length > not.length ? `    and ${barred.length - not.length} more of this kind\n` : "";
  return [
    usable.length === 0
      ? "  Nothing in the catalogue will do.\n"
      : `  What will do, best first:\n${each.join("")}${more}`,
    barred.length === 0 ? "" : `  What will not:\n${not.join("")}${notMore}`,
  ].join("");
}

const AGAINST = { bars: "NO ", asks: "if ", open: "?  " } as const;

/** The first few beside the original, rating by rating; what stands against a figure before it. */
function besideText({ original, ratings, offers }: FitAnswer): string {
  const own = offers.filter(({ inHouse }) => inHouse);
  const compared = sideBySide(ratings, [...own, ...offers]);
  if (compared === null) return "";
  const rows = compared.rows.map(({ words, was, cells }) => [
    `    ${words}`,
    was ?? "?",
    ...cells.map(({ text, against }) => `${against === null ? "" : AGAINST[against]}${text ?? "not known"}`),
  ]);
  const heads = ["    ", original ?? "original", ...compared.columns.map(({ name }) => name)];
  return `  Side by side (NO: it bars; if: a condition; ?: look it up):\n${table([heads, ...rows])}`;
}

function incomingText(head: string, steps: readonly IncomingAnswer[], baseline: string): string {
  const rows = steps.map((step) => [
    `    ${step.do}${step.pulledOnly ? " (pulled parts)" : ""}`,
    `${step.expect} (${step.mark}${step.source === null ? "" : `: ${step.source}`})`,
  ]);
  return `  ${head}:\n${table(rows)}  ${baseline}\n`;
}

function comparedText(answer: FitAnswer, candidate: OfferAnswer): string {
  const names = [...new Set([...answer.ratings, ...candidate.ratings].map(({ name }) => name))];
  const of = (ratings: readonly KnownRating[], name: string) => ratings.find((one) => one.name === name);
  const rows = names.map((name) => {
    const [had, has] = [of(answer.ratings, name), of(candidate.ratings, name)];
    return [`    ${had?.words ?? has?.words ?? name}`, had?.text ?? "?", has?.text ?? "?"];
  });
  const met = candidate.findings.filter(({ says }) => says === "meets").map(({ rule }) => rule);
  return [
    `  ${candidate.name}: ${candidate.fits}; ${whereText(candidate)}\n`,
    table([["    ", answer.original ?? "original", candidate.name], ...rows]),
    findingLines(candidate.findings, "    "),
    met.length === 0 ? "" : `    kept: ${met.join(", ")}\n`,
    incomingText("Before it goes in, two minutes", candidate.incoming, answer.baseline),
  ].join("");
}
