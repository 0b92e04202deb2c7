import type { Command } from "commander";
import { spiceDeck } from "../../meter/deck.ts";
import { parseJsonText } from "../../units/json-text.ts";
import { askedOfJob } from "../asked-of-job.ts";
import { parseCheck } from "../checks.ts";
import { DONE, type Finish, type Io, NOT_SOLVED, oneLine, refuse } from "../io.ts";

interface DeckOptions {
  readonly check: string;
  readonly faults: string;
}

export function addDeck(program: Command, io: Io, finish: Finish): void {
  program
    .command("deck")
    .description(
      "the circuit behind one predicted reading, meter included, as a SPICE deck that ngspice runs as it is",
    )
    .argument("<job>", "a job file")
    .requiredOption("--check <json>", "a measure event without its reading; `seconds` asks for a moment")
    .option("--faults <list>", "faults with commas between, or a JSON array", "")
    .addHelpText(
      "after",
      `
Example:
  $ faultwright deck examples/fan-drive.json --faults C1:short \\
      --check '{"do":"measure","mode":"diode","red":"PBUS","black":"NBUS"}' > bus.cir
  $ ngspice -b bus.cir`,
    )
    .action((file: string, options: DeckOptions) => finish(() => deck(file, options, io)));
}

function deck(file: string, options: DeckOptions, io: Io): number {
  const asked = askedOfJob(file, options.faults);
  if (!asked.ok) return refuse(io, asked.problem);
  const { job, timeline, bench, faults } = asked.value;
  const content = parseJsonText(options.check, "--check");
  if (!content.ok) return refuse(io, content.problem);
  const check = parseCheck(content.value, "--check", job, timeline);
  if (!check.ok) return refuse(io, check.problem);
  const text = spiceDeck(job.board, bench, job.meter, check.value, faults);
  if (typeof text !== "string") {
    io.err(`--check: no deck: ${oneLine(text.why)}\n`);
    return NOT_SOLVED;
  }
  io.out(text);
  return DONE;
}
