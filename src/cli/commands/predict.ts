import type { Command } from "commander";
import { liveOfLog } from "../../live/live-of-log.ts";
import { type LiveCheck, liveReading } from "../../live/live-reading.ts";
import type { LiveState } from "../../live/live-state.ts";
import type { ColdCheck, Prediction } from "../../meter/prediction.ts";
import { makePredictor } from "../../meter/predictor.ts";
import { answerText, table } from "../answer-text.ts";
import { askedOfJob } from "../asked-of-job.ts";
import { parseChecks } from "../checks.ts";
import { DONE, type Finish, type Io, NOT_SOLVED, oneLine, refuse } from "../io.ts";
import { isLiveCheck, powerAnswer, powerText } from "../live-job.ts";
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

Where the log leaves the board powered, dcv, acv, amps and temperature are answered as well, from that feed, with what would be seen.
A check that has no answer is null, with a line on standard error and exit code 3.`,
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
  const live = liveOfLog(job.board, timeline, faults);
  const failures: string[] = [];
  const readings = checks.value.map((check, index) => {
    const { reading, why } = isLiveCheck(check)
      ? liveAnswer(live, check)
      : coldAnswer(predictor.predict(check, faults));
    if (reading === null) failures.push(`${options.checks}: checks[${index}]: no answer: ${why}`);
    return reading;
  });
  const asksLive = live !== null && checks.value.some(isLiveCheck);
  io.out(
    options.json === true
      ? answerText(asksLive ? { readings, power: powerAnswer(live) } : { readings })
      : readingsText(checks.value, readings) + (asksLive ? powerText(live) : ""),
  );
  for (const failure of failures) io.err(`${oneLine(failure)}\n`);
  if (timeline.now.powered && !checks.value.every(isLiveCheck))
    io.err("note: the log leaves the board powered; its cold readings are those unpowered\n");
  return failures.length === 0 ? DONE : NOT_SOLVED;
}

interface Answered {
  readonly reading: number | "OL" | "beep" | "silent" | null;
  readonly why: string;
}

function coldAnswer(prediction: Prediction): Answered {
  return prediction.solved ? { reading: prediction.shown, why: "" } : { reading: null, why: prediction.why };
}

function liveAnswer(live: LiveState | null, check: LiveCheck): Answered {
  const reading = live === null ? null : liveReading(live, check);
  return { reading: reading?.value ?? null, why: "nobody can tell from the board file" };
}

const UNIT = {
  diode: "V",
  continuity: "ohm",
  ohms: "ohm",
  farads: "F",
  dcv: "V",
  acv: "V",
  amps: "A",
  temperature: "degC",
} as const;

/** What was asked, after its reading. */
function checkText(check: ColdCheck | LiveCheck): string {
  if (isLiveCheck(check) && check.part !== undefined)
    return `${check.mode} of ${check.part}, ${check.by ?? "contact"}`;
  const when = "seconds" in check ? ` after ${check.seconds} s` : "";
  return `${check.mode}, red on ${check.red}, black on ${check.black}${when}`;
}

function readingsText(
  checks: readonly (ColdCheck | LiveCheck)[],
  readings: readonly (number | string | null)[],
): string {
  return table(
    checks.map((check, index) => {
      const reading = readings[index] ?? "no answer";
      const shown =
        typeof reading === "number" ? `${Number(reading.toPrecision(4))} ${UNIT[check.mode]}` : reading;
      return [shown, checkText(check)];
    }),
  );
}
