import type { Command } from "commander";
import type { ColdCheck } from "../../meter/prediction.ts";
import { makePredictor } from "../../meter/predictor.ts";
import { answerText, table } from "../answer-text.ts";
import { askedOfJob } from "../asked-of-job.ts";
import { parseChecks } from "../checks.ts";
import { DONE, type Finish, type Io, NOT_SOLVED, oneLine, refuse } from "../io.ts";
import { readJson } from "../read-file.ts";

interface PredictOptions {
  readonly checks: string;
  readonly faults: string;
  readonly json?: true;
}

export function addPredict(program: Command, io: Io, finish: Finish): void {
  program
    .command("predict")
    .description(
      "what a meter would show on a nominal board with just these faults, as the log leaves the board",
    )
    .argument("<job>", "a job file")
    .requiredOption(
      "--checks <file>",
      "a JSON array of measure events without reading; `seconds` asks for a moment",
    )
    .option("--faults <list>", "faults with commas between, or a JSON array", "")
    .option("--json", "one JSON object for a script")
    .addHelpText(
      "after",
      `
Example, with checks.json holding [{"do":"measure","mode":"diode","red":"PBUS","black":"NBUS"}]:
  $ faultwright predict examples/fan-drive.json --checks checks.json
  $ faultwright predict examples/fan-drive.json --checks checks.json --faults C1:short,R7:drift@33000 --json

A check whose solve does not converge is null, with a line on standard error and exit code 3.`,
    )
    .action((file: string, options: PredictOptions) => finish(() => predict(file, options, io)));
}

function predict(file: string, options: PredictOptions, io: Io): number {
  const asked = askedOfJob(file, options.faults);
  if (!asked.ok) return refuse(io, asked.problem);
  const { job, timeline, bench, faults } = asked.value;
  const content = readJson(options.checks);
  if (!content.ok) return refuse(io, content.problem);
  const checks = parseChecks(content.value, job, timeline);
  if (!checks.ok) return refuse(io, `${options.checks}: ${checks.problem}`);

  const predictor = makePredictor(job.board, bench, job.meter);
  const failures: string[] = [];
  const readings = checks.value.map((check, index) => {
    const prediction = predictor.predict(check, faults);
    if (prediction.solved) return prediction.shown;
    failures.push(`${options.checks}: checks[${index}]: no answer: ${prediction.why}`);
    return null;
  });
  io.out(options.json === true ? answerText({ readings }) : readingsText(checks.value, readings));
  for (const failure of failures) io.err(`${oneLine(failure)}\n`);
  if (timeline.now.powered)
    io.err("note: the log leaves the board powered; these are its readings unpowered\n");
  return failures.length === 0 ? DONE : NOT_SOLVED;
}

const UNIT = { diode: "V", continuity: "ohm", ohms: "ohm", farads: "F" } as const;

function readingsText(checks: readonly ColdCheck[], readings: readonly (number | string | null)[]): string {
  return table(
    checks.map((check, index) => {
      const reading = readings[index] ?? "no answer";
      const shown =
        typeof reading === "number" ? `${Number(reading.toPrecision(4))} ${UNIT[check.mode]}` : reading;
      const when = check.seconds === undefined ? "" : ` after ${check.seconds} s`;
      return [shown, `${check.mode}, red on ${check.red}, black on ${check.black}${when}`];
    }),
  );
}
