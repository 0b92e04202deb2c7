import type { Command } from "commander";
import { nextAnswer } from "../../job/answers.ts";
import { assess } from "../../job/assess.ts";
import { benchView } from "../../job/bench-view.ts";
import { answerText } from "../answer-text.ts";
import { beforeItGoesIn } from "../before-it-goes-in.ts";
import { cardText } from "../card-text.ts";
import { DONE, type Finish, type Io, refuse, whileTold } from "../io.ts";
import { loadJobWithStock } from "../load-job.ts";

export function addNext(program: Command, io: Io, finish: Finish): void {
  program
    .command("next")
    .description("what to do next: a check, a repair, power, or stopping; with minutes, money and the reason")
    .argument("<job>", "a job file")
    .option("--json", "one JSON object for a script")
    .addHelpText(
      "after",
      `
Example:
  $ faultwright next examples/fan-drive.json
  $ faultwright next examples/fan-drive.json --stock drawer.csv
  $ faultwright next examples/fan-drive.json --json | jq .action`,
    )
    .option(
      "--stock <catalogue>",
      "the shop's stock (CSV): what lies at hand is cheaper than what is ordered",
    )
    .action((file: string, options: { json?: true; stock?: string }) =>
      finish(() => next(file, options.stock, options.json === true, io)),
    );
}

function next(file: string, stock: string | undefined, json: boolean, io: Io): number {
  const loaded = loadJobWithStock(file, stock);
  if (!loaded.ok) return refuse(io, loaded.problem);
  const { job } = loaded.value;
  const assessed = whileTold(io, () => assess(job));
  if (!assessed.ok) return refuse(io, `${file}: ${assessed.problem}`);
  if (json) io.out(answerText(nextAnswer(assessed.value)));
  else {
    const { timeline, proposal } = assessed.value;
    const goesIn = beforeItGoesIn(job.board, timeline, proposal.action);
    io.out(cardText(benchView(assessed.value), io.color, goesIn));
  }
  return DONE;
}
