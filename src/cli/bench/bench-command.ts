import { createInterface } from "node:readline";
import { type Command, InvalidArgumentError } from "commander";
import { BenchMeter } from "../../hookup/bench-meter.ts";
import { parseMeterWord } from "../../instrument/meter-setting.ts";
import type { Parsed } from "../../units/outcome.ts";
import { beginCase, loadCase } from "../case-file.ts";
import { DONE, type Finish, type Io, refuse } from "../io.ts";
import { BENCH_HELP } from "./bench-help.ts";
import { BenchSession } from "./bench-session.ts";
import { JobFile } from "./job-file.ts";
import { PracticeBench } from "./practice-bench.ts";

interface Options {
  readonly practice?: number;
  readonly case?: string;
  readonly stock?: string;
  readonly meter?: string;
}

/** What lies on the bench beside the board. */
interface Tools {
  readonly stock: string | undefined;
  readonly meter: BenchMeter | null;
}

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
    .option(
      "--meter <meter>",
      "a meter on the wire (scpi:HOST:PORT or sigrok:DRIVER): `read` takes what it shows",
    )
    .action((file: string, options: Options) =>
      finish(() => {
        const meter = options.meter === undefined ? null : wiredMeter(options.meter);
        if (meter?.ok === false) return refuse(io, `--meter: ${meter.problem}`);
        const tools = { stock: options.stock, meter: meter?.value ?? null };
        if (options.case === undefined) {
          const practice = options.practice === undefined ? null : new PracticeBench(options.practice);
          return bench(file, practice, tools, io);
        }
        const given = loadCase(options.case);
        if (!given.ok) return refuse(io, given.problem);
        const begun = beginCase(file, given.value);
        if (begun !== null) return refuse(io, begun);
        return bench(file, new PracticeBench(options.practice ?? 1, given.value), tools, io);
      }),
    );
}

/** Reads lines until `quit` or the end of input. Every line that was taken is in the file before the next is read. */
async function bench(
  file: string,
  practice: PracticeBench | null,
  { stock, meter }: Tools,
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
    const answer = line.trim() === "read" ? await session.read(meter) : session.take(line);
    if (answer === "quit") break;
    worst = Math.max(worst, answer);
    prompt();
  }
  lines.close();
  meter?.stop();
  // A person has seen and mended what was refused; a script is told at the end.
  return io.isTerminal ? DONE : worst;
}

function wiredMeter(word: string): Parsed<BenchMeter> {
  const setting = parseMeterWord(word);
  if (!setting.ok) return setting;
  return { ok: true, value: new BenchMeter({ read: () => setting.value, write: () => undefined }) };
}

function parseSeed(text: string): number {
  if (!/^\d{1,9}$/.test(text))
    throw new InvalidArgumentError("a seed is a whole number of up to nine digits");
  return Number(text);
}
