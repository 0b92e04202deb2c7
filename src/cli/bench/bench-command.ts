import { createInterface } from "node:readline";
import { type Command, InvalidArgumentError } from "commander";
import { beginCase, loadCase } from "../case-file.ts";
import { DONE, type Finish, type Io, refuse } from "../io.ts";
import { BENCH_HELP } from "./bench-help.ts";
import { BenchSession } from "./bench-session.ts";
import { JobFile } from "./job-file.ts";
import { PracticeBench } from "./practice-bench.ts";

export function addBench(program: Command, io: Io, finish: Finish): void {
  program
    .command("bench")
    .description(
      "work a job at the prompt: the next step in words, readings as you type them, everything kept in the file",
    )
    .argument("<job>", "a job file; what you enter is written back to it at once")
    .addHelpText("after", `\nExample:\n  $ faultwright bench examples/fan-drive.json\n\n${BENCH_HELP}`)
    .option(
      "--practice <seed>",
      "no board at hand: `ask` answers each step from faults that this number hides",
      parseSeed,
    )
    .option(
      "--case <file>",
      "a recorded case of `teach`: the job file is made blind where it is not there, `ask` answers as that board did",
    )
    .option(
      "--stock <catalogue>",
      "the shop's stock (CSV): what lies at hand is cheaper than what is ordered",
    )
    .action((file: string, options: { practice?: number; case?: string; stock?: string }) =>
      finish(() => {
        if (options.case === undefined) {
          const practice = options.practice === undefined ? null : new PracticeBench(options.practice);
          return bench(file, practice, options.stock, io);
        }
        const given = loadCase(options.case);
        if (!given.ok) return refuse(io, given.problem);
        const begun = beginCase(file, given.value);
        if (begun !== null) return refuse(io, begun);
        return bench(file, new PracticeBench(options.practice ?? 1, given.value), options.stock, io);
      }),
    );
}

/** Reads lines until `quit` or the end of input. Every line that was taken is in the file before the next is read. */
async function bench(
  file: string,
  practice: PracticeBench | null,
  stock: string | undefined,
  io: Io,
): Promise<number> {
  const opened = JobFile.open(file, practice?.seed, stock);
  if (!opened.ok) return refuse(io, opened.problem);
  const session = new BenchSession(opened.value, io, practice);
  let worst = session.show();
  const lines = createInterface({ input: io.input, terminal: false, crlfDelay: Number.POSITIVE_INFINITY });
  const prompt = () => {
    if (io.isTerminal) io.out("> ");
  };
  prompt();
  for await (const line of lines) {
    const answer = session.take(line);
    if (answer === "quit") break;
    worst = Math.max(worst, answer);
    prompt();
  }
  lines.close();
  // A person has seen and mended what was refused; a script is told at the end.
  return io.isTerminal ? DONE : worst;
}

function parseSeed(text: string): number {
  if (!/^\d{1,9}$/.test(text))
    throw new InvalidArgumentError("a seed is a whole number of up to nine digits");
  return Number(text);
}
