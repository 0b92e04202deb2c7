/**
 * Prints the prior table of a board file: `npx tsx evaluate/print-priors.ts BOARD.json [cause] [symptom]`. Every rate, then
 * every knock-on, then every rule table with its marks.
 */
import { readFileSync } from "node:fs";
import { parseBoard } from "../src/board/parse-board.ts";
import { CAUSES, SYMPTOMS } from "../src/priors/cause.ts";
import { printPriors, printRules } from "../src/priors/print.ts";
import { priorTable } from "../src/priors/prior-table.ts";

function main(args: readonly string[]): string {
  const [path, causeWord = "unknown", symptomWord = "dead"] = args;
  if (path === undefined)
    return `usage: print-priors BOARD.json [${CAUSES.join(" | ")}] [${SYMPTOMS.join(" | ")}]\n`;
  const cause = CAUSES.find((one) => one === causeWord);
  const symptom = SYMPTOMS.find((one) => one === symptomWord);
  if (cause === undefined) throw new Error(`${causeWord} is no cause; one of ${CAUSES.join(" ")}`);
  if (symptom === undefined) throw new Error(`${symptomWord} is no symptom; one of ${SYMPTOMS.join(" ")}`);
  const board = parseBoard(JSON.parse(readFileSync(path, "utf8")));
  if (!board.ok) throw new Error(`${path}: ${board.problem}`);
  return `${printPriors(priorTable(board.value, cause, symptom))}\n${printRules()}`;
}

process.stdout.write(main(process.argv.slice(2)));
