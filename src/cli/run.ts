import { Command, CommanderError } from "commander";
import { plain } from "../messages/said.ts";
import { addBench } from "./bench/bench-command.ts";
import { addBoard } from "./boards/board-command.ts";
import { addBill } from "./commands/bill.ts";
import { addCatalogue } from "./commands/catalogue.ts";
import { addCool } from "./commands/cool.ts";
import { addDeck } from "./commands/deck.ts";
import { addEarlier } from "./commands/earlier.ts";
import { addFit } from "./commands/fit.ts";
import { addLearned } from "./commands/learned.ts";
import { addMeter } from "./commands/meter.ts";
import { addNext } from "./commands/next.ts";
import { addPapers } from "./commands/papers.ts";
import { addPredict } from "./commands/predict.ts";
import { addPriors } from "./commands/priors.ts";
import { addQuote } from "./commands/quote.ts";
import { addServe } from "./commands/serve.ts";
import { addShop } from "./commands/shop.ts";
import { addSum } from "./commands/sum.ts";
import { addSuspects } from "./commands/suspects.ts";
import { addTeach } from "./commands/teach.ts";
import { addValues } from "./commands/values.ts";
import { BAD_INPUT, BROKEN, DONE, type Finish, type Io, oneLine } from "./io.ts";
import { version } from "./version.ts";

const HELP = `
A first look, with a job that comes with the program:
  $ faultwright next examples/fan-drive.json       what to do next, and why
  $ faultwright bench examples/fan-drive.json      work it at the prompt
  $ faultwright serve --open                       the same in the browser

Exit codes:
  0  done
  1  the program itself failed
  2  bad input: one line on standard error names the file, the field and what is wrong
  3  a circuit could not be solved: that reading is null, the others stand

Mains and charged capacitors kill. What is proposed here never replaces local codes and licensed practice.`;

/** The whole program: the words after its name in, its exit code out. */
export async function run(argv: readonly string[], world: Io): Promise<number> {
  // what the engine says is printed as it reads in English
  const io: Io = {
    ...world,
    out: (text) => world.out(plain(text)),
    err: (text) => world.err(plain(text)),
  };
  let exitCode = DONE;
  const finish: Finish = async (work) => {
    exitCode = await work();
  };
  const program = makeProgram(io, finish);
  try {
    await program.parseAsync([...argv], { from: "user" });
    return exitCode;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? DONE : BAD_INPUT;
    io.err(`faultwright failed: ${oneLine(error instanceof Error ? error.message : String(error))}\n`);
    return BROKEN;
  }
}

function makeProgram(io: Io, finish: Finish): Command {
  const program = new Command("faultwright")
    .description(
      "Finds the faults of dead power-electronics boards: which check next, what it means, when to stop.",
    )
    .version(version(), "--version", "print the version")
    .addHelpText("after", HELP)
    .exitOverride()
    .configureOutput({
      writeOut: (text) => io.out(text),
      writeErr: (text) => io.err(text),
      // One line, as for every other bad input; the suggestion that may follow belongs to it.
      outputError: (text, write) => write(`${oneLine(text)}\n`),
      getOutHasColors: () => io.color,
      getErrHasColors: () => io.color,
    });
  for (const add of [
    addBench,
    addServe,
    addNext,
    addSuspects,
    addPredict,
    addDeck,
    addBoard,
    addPriors,
    addFit,
    addCatalogue,
    addCool,
    addValues,
    addSum,
    addMeter,
    addLearned,
    addEarlier,
    addTeach,
    addQuote,
    addBill,
    addShop,
    addPapers,
  ]) {
    add(program, io, finish);
  }
  return program;
}
