import { faultName } from "../board/fault.ts";
import type { Sourced } from "../units/mark.ts";
import { CAUSE_FACTORS } from "./cause-factors.ts";
import type { PriorTable } from "./fault-prior.ts";
import { FEED_HARM_ROWS } from "./feed-harm.ts";
import { KIND_WEIGHTS, STAGE_SHARES } from "./kind-rates.ts";
import { KNOCK_ON_RULES, ruleWords } from "./knock-on-rules.ts";
import { LOAD_ENDS, LOAD_ENDS_MARK } from "./load-outcomes.ts";
import { FINDING_ROWS } from "./look-findings.ts";
import { MODE_SHARES } from "./mode-shares.ts";
import type { PowerEffect } from "./power-effects.ts";
import { OUTCOME_ROWS } from "./power-outcomes.ts";
import { FITTED_BAD_MARK } from "./prior-table.ts";
import { SYMPTOM_FACTORS } from "./symptom-factors.ts";

const percent = (share: number): string => `${(share * 100).toFixed(3).padStart(8)} %`;

/**
 * The whole table as text: faults with their rates on arrival (in root faults per hundred boards), likeliest part first, then
 * the knock-ons of each rule, then what power and fitting add.
 */
export function printPriors(table: PriorTable): string {
  const perPart = new Map<string, number>();
  for (const row of table.faults) perPart.set(row.part, (perPart.get(row.part) ?? 0) + row.rate);
  const order = [...perPart].sort(([a, p], [b, q]) => q - p || (a < b ? -1 : 1));
  const total = table.faults.reduce((sum, row) => sum + row.rate, 0);
  const lines = [`${table.faults.length} faults, ${total.toFixed(2)} root faults expected a board`];
  for (const [part, rate] of order) {
    lines.push(`${percent(rate)}  ${part}`);
    for (const row of table.faults)
      if (row.part === part) lines.push(`${percent(row.rate)}      ${faultName(row.fault)}`);
  }
  const byRule = new Map<string, string[]>();
  for (const { parent, child, rate, rule } of table.knockOns) {
    const [from, to] = [table.faults[parent], table.faults[child]];
    if (from === undefined || to === undefined) continue;
    const line = `${rate.toFixed(3).padStart(8)}    ${faultName(from.fault)} -> ${faultName(to.fault)}`;
    byRule.set(rule, [...(byRule.get(rule) ?? []), line]);
  }
  lines.push("", `${table.knockOns.length} knock-ons (rate of the child given the parent)`);
  for (const [rule, rows] of byRule) lines.push(`${rule}: ${ruleWords(rule)}`, ...rows);
  const atPower = table.breaksAtPower.reduce((sum, rate) => sum + rate, 0);
  const { new: fresh, used, fittedWrong } = table.fittedBad;
  lines.push(
    "",
    `faults added by one mains power-up of a board with nothing else wrong: ${atPower.toFixed(3)}`,
    `fitted part bad: new ${fresh}, used ${used}, put in wrong ${fittedWrong} (${FITTED_BAD_MARK})`,
  );
  return `${lines.join("\n")}\n`;
}

/** Every rule table behind the priors, a line a row: id, figure, mark, words. */
export function printRules(): string {
  const line = (row: Sourced, figure: string): string =>
    `${row.id.padEnd(34)} ${figure.padEnd(44)} [${row.mark}] ${row.words}`;
  const shares = (of: Readonly<Record<string, number | undefined>>): string =>
    Object.entries(of)
      .map(([name, share]) => `${name} ${share}`)
      .join(", ");
  const tables: readonly (readonly [string, readonly string[]])[] = [
    ["Shares of modes", Object.values(MODE_SHARES).map((row) => line(row, shares(row.shares)))],
    ["First faults by stage", Object.values(STAGE_SHARES).map((row) => line(row, String(row.share)))],
    ["Weights by kind", Object.values(KIND_WEIGHTS).map((row) => line(row, String(row.weight)))],
    ["Factors by cause", CAUSE_FACTORS.map((row) => line(row, `x ${row.factor}`))],
    ["Factors by symptom", SYMPTOM_FACTORS.map((row) => line(row, `x ${row.factor}`))],
    ["Knock-ons", KNOCK_ON_RULES.map((row) => line(row, String(row.strength)))],
    ["What a look finds", FINDING_ROWS.map((row) => line(row, shares(row.shares)))],
    ["What a feed still breaks", Object.values(FEED_HARM_ROWS).map((row) => line(row, String(row.figure)))],
    ["What mains power shows", Object.values(OUTCOME_ROWS).map((row) => line(row, shares(row.mains)))],
    [
      "How a run under load ends",
      Object.values(OUTCOME_ROWS).map(({ id, words }) => {
        const effect = id.slice("O-".length) as PowerEffect;
        return line({ id: `E-${effect}`, mark: LOAD_ENDS_MARK, words }, shares(LOAD_ENDS[effect]));
      }),
    ],
    ["What lamp power shows", Object.values(OUTCOME_ROWS).map((row) => line(row, shares(row.lamp)))],
  ];
  return tables.map(([title, rows]) => `${title}\n${rows.join("\n")}\n`).join("\n");
}
