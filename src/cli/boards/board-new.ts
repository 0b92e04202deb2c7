import type { Command } from "commander";
import { type Answers, stillNeeded, UNSURE } from "../../compose/answers.ts";
import { composeBoard, type Heading } from "../../compose/compose-board.ts";
import { QUESTIONS, type Question } from "../../compose/questions.ts";
import { plain } from "../../messages/said.ts";
import { DONE, type Finish, type Io, refuse } from "../io.ts";
import { askQuestions } from "./board-questions.ts";
import { writeNewBoard } from "./write-new-board.ts";

type Options = Heading & { readonly ask?: true } & Readonly<Record<string, unknown>>;

/** `busMicrofarads` -> `bus-microfarads`. */
const optionOf = ({ id }: Question) => id.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

function answersTo(question: Question): string {
  return question.kind === "choice"
    ? question.choices.map(({ value }) => value).join(" | ")
    : `${question.least} to ${question.most} ${plain(question.unit)}`;
}

export function addNew(board: Command, io: Io, finish: Finish): void {
  const command = board
    .command("new")
    .description(
      "make a board file from its stages; what is not answered gets the trade's usual, its parts marked as not seen",
    )
    .argument("[file]", "where to write it; a file that is there is left alone (left out: standard output)")
    .option(
      "--ask",
      "ask at the prompt for what the options leave open (done by itself where there are none)",
    )
    .option("--name <text>", "what to call the board")
    .option("--family <word>", "what its outcomes are pooled by");
  for (const question of QUESTIONS)
    command.option(`--${optionOf(question)} <answer>`, `${plain(question.title)}: ${answersTo(question)}`);
  command
    .addHelpText(
      "after",
      `
"${UNSURE}" is an answer to any question. The first four (${QUESTIONS.filter(({ first }) => first)
        .map(({ id }) => id)
        .join(", ")}) make a board that can be worked on.

Example:
  $ faultwright board new own.json --supply 230-1 --boost none --switches module --rails 15,5`,
    )
    .action((file: string | undefined, options: Options) => finish(() => makeNew(file, options, io)));
}

async function makeNew(file: string | undefined, options: Options, io: Io): Promise<number> {
  const given: Record<string, string> = {};
  for (const { id } of QUESTIONS) if (typeof options[id] === "string") given[id] = options[id];
  const heading: Heading = {
    ...(options.name === undefined ? {} : { name: options.name }),
    ...(options.family === undefined ? {} : { family: options.family }),
  };
  const first = composeBoard(given, heading);
  if (!first.ok) return refuse(io, `board new: ${optionProblem(plain(first.problem))}`);
  const ask = options.ask === true || (io.isTerminal && Object.keys(given).length === 0);
  const answers: Answers = ask ? await askQuestions(given, io) : given;
  const made = composeBoard(answers, heading);
  if (!made.ok) return refuse(io, `board new: ${optionProblem(plain(made.problem))}`);
  const { board, settled } = made.value;
  const code = writeNewBoard(file, board, io);
  const open = stillNeeded(settled);
  if (code === DONE && open.length > 0) io.err(`not answered yet, taken as usual: ${open.join(", ")}\n`);
  return code;
}

/** `busCount: ...` of an answer is `--bus-count: ...` of an option. */
function optionProblem(problem: string): string {
  const question = QUESTIONS.find(({ id }) => problem.startsWith(`${id}: `));
  return question === undefined ? problem : `--${optionOf(question)}${problem.slice(question.id.length)}`;
}
