import { type Command, Option } from "commander";
import { CAUSES, type Cause, SYMPTOMS, type Symptom } from "../../priors/cause.ts";
import { printPriors } from "../../priors/print.ts";
import { priorTable } from "../../priors/prior-table.ts";
import { DONE, type Finish, type Io, refuse } from "../io.ts";
import { loadBoard } from "../load-job.ts";

export function addPriors(program: Command, io: Io, finish: Finish): void {
  program
    .command("priors")
    .description(
      "what is believed of a board before the first reading: every fault, its rate, and what it breaks",
    )
    .argument("<board>", "a board file")
    .addOption(new Option("--cause <cause>", "what happened to it").choices([...CAUSES]).default("unknown"))
    .addOption(new Option("--symptom <symptom>", "what it does").choices([...SYMPTOMS]).default("dead"))
    .addHelpText(
      "after",
      `
Example:
  $ faultwright priors boards/greenhouse-fan-drive.json --cause surge | less`,
    )
    .action((file: string, options: { cause: Cause; symptom: Symptom }) =>
      finish(() => {
        const board = loadBoard(file);
        if (!board.ok) return refuse(io, board.problem);
        io.out(printPriors(priorTable(board.value, options.cause, options.symptom)));
        return DONE;
      }),
    );
}
