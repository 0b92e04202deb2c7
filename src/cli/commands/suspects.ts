import type { Command } from "commander";
import { suspectsAnswer } from "../../job/answers.ts";
import { AssessmentSession, beliefOf } from "../../job/assess.ts";
import { answerText } from "../answer-text.ts";
import { DONE, type Finish, type Io, oneLine, refuse, whileTold } from "../io.ts";
import { loadJob } from "../load-job.ts";
import { suspectsText } from "../suspects-text.ts";

export function addSuspects(program: Command, io: Io, finish: Finish): void {
  program
    .command("suspects")
    .description("how likely each part is faulty now, and which sets of faults explain the readings")
    .argument("<job>", "a job file")
    .option("--json", "one JSON object for a script, every part listed")
    .addHelpText(
      "after",
      `
Example:
  $ faultwright suspects examples/fan-drive.json
  $ faultwright suspects examples/fan-drive.json --json | jq '.suspects[:3]'`,
    )
    .action((file: string, options: { json?: true }) =>
      finish(() => suspects(file, options.json === true, io)),
    );
}

function suspects(file: string, json: boolean, io: Io): number {
  const loaded = loadJob(file);
  if (!loaded.ok) return refuse(io, loaded.problem);
  const { job } = loaded.value;
  const believed = whileTold(io, () => beliefOf(job, new AssessmentSession()));
  if (!believed.ok) return refuse(io, `${file}: ${believed.problem}`);
  io.out(json ? answerText(suspectsAnswer(believed.value)) : suspectsText(believed.value));
  for (const why of believed.value.belief.notSolved) io.err(`left out of the evidence: ${oneLine(why)}\n`);
  return DONE;
}
