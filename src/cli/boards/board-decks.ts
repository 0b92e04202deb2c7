/** `board deck`, `from-deck`, `from-netlist` and `from-schematic`: boards as SPICE decks of their parts, and traced circuits as boards. */
import type { Command } from "commander";
import { readDeck } from "../../traced/read-deck.ts";
import { readNetlist } from "../../traced/read-netlist.ts";
import { readSchematic } from "../../traced/read-schematic.ts";
import type { MappedModel, TracedBoard, TraceOptions } from "../../traced/traced-part.ts";
import { writeDeck } from "../../traced/write-deck.ts";
import type { Parsed } from "../../units/outcome.ts";
import { DONE, type Finish, type Io, oneLine, refuse } from "../io.ts";
import { loadBoard } from "../load-job.ts";
import { readJson, readText } from "../read-file.ts";
import { writeNewBoard } from "./write-new-board.ts";

interface TracedOptions {
  readonly supply?: string;
  readonly zero?: string;
  readonly map?: string;
}

export function addDecks(board: Command, io: Io, finish: Finish): void {
  board
    .command("deck")
    .description(
      "a board as a SPICE deck of its parts, to trace and edit on; `from-deck` makes the board of it again",
    )
    .argument("<file>", "a board file")
    .action((file: string) => finish(() => deck(file, io)));
  for (const { from, of, reader, example } of SOURCES)
    board
      .command(`from-${from}`)
      .description(`make a board of ${of}; what is not understood is listed`)
      .argument("<traced>", of)
      .argument(
        "[file]",
        "where to write the board; a file that is there is left alone (left out: standard output)",
      )
      .option("--supply <words>", "what it runs on: ac,VOLTS,HZ,NET,NET or dc,VOLTS,NET,NET")
      .option("--zero <net>", "the net that rails are measured against")
      .option(
        "--map <file>",
        'JSON: its name for a model, symbol or part -> { "kind", "pins" in its order or "byPin", "value" }, or null',
      )
      .addHelpText(
        "after",
        `\nExample:\n  $ faultwright board from-${from} ${example} own.json --supply ac,230,50,L,N`,
      )
      .action((traced: string, file: string | undefined, options: TracedOptions) =>
        finish(() => fromTraced(reader, traced, file, options, io)),
      );
}

type Reader = (text: string, options: TraceOptions) => Parsed<TracedBoard>;

const SOURCES: readonly { from: string; of: string; reader: Reader; example: string }[] = [
  { from: "deck", of: "a traced SPICE deck (R C L D Q M X)", reader: readDeck, example: "traced.cir" },
  { from: "netlist", of: "a KiCad netlist (.net)", reader: readNetlist, example: "traced.net" },
  {
    from: "schematic",
    of: "a KiCad schematic of one sheet (.kicad_sch)",
    reader: readSchematic,
    example: "traced.kicad_sch",
  },
];

function deck(file: string, io: Io): number {
  const board = loadBoard(file);
  if (!board.ok) return refuse(io, board.problem);
  const content = readJson(file);
  if (!content.ok) return refuse(io, content.problem);
  io.out(writeDeck(content.value as Readonly<Record<string, unknown>>));
  return DONE;
}

function fromTraced(
  reader: Reader,
  from: string,
  file: string | undefined,
  options: TracedOptions,
  io: Io,
): number {
  const text = readText(from);
  if (!text.ok) return refuse(io, text.problem);
  const asked = traceOptions(options);
  if (!asked.ok) return refuse(io, asked.problem);
  const traced = reader(text.value, asked.value);
  if (!traced.ok) return refuse(io, `${from}: ${traced.problem}`);
  for (const { line, text: words, why } of traced.value.notUnderstood)
    io.err(`${from}:${line}: left out: ${oneLine(words)}: ${oneLine(why)}\n`);
  return writeNewBoard(file, traced.value.board, io);
}

function traceOptions({ supply, zero, map }: TracedOptions): Parsed<TraceOptions> {
  const mapping = map === undefined ? null : readMapping(map);
  if (mapping !== null && !mapping.ok) return mapping;
  const words = supply?.split(",") ?? [];
  const [kind, volts, ...rest] = words;
  const hz = kind === "ac" ? { hz: Number(rest[0]) } : {};
  return {
    ok: true,
    value: {
      ...(supply === undefined
        ? {}
        : { supply: { kind, volts: Number(volts), ...hz, at: kind === "ac" ? rest.slice(1) : rest } }),
      ...(zero === undefined ? {} : { zero }),
      ...(mapping === null ? {} : { models: mapping.value }),
    },
  };
}

function readMapping(file: string): Parsed<Readonly<Record<string, MappedModel | null>>> {
  const read = readJson(file);
  if (!read.ok) return read;
  const refused = (at: string, what: string) => ({ ok: false, problem: `${file}: ${at}${what}` }) as const;
  if (typeof read.value !== "object" || read.value === null || Array.isArray(read.value))
    return refused("", "expected an object of models");
  const models = Object.entries(read.value as Readonly<Record<string, Partial<MappedModel> | null>>);
  for (const [name, model] of models) {
    if (model === null) continue;
    if (typeof model?.kind !== "string")
      return refused(`${name}: `, 'expected { "kind": ..., "pins": [...] }');
    if (
      model.pins !== undefined &&
      !(Array.isArray(model.pins) && model.pins.every((pin) => typeof pin === "string"))
    )
      return refused(`${name}.pins: `, "expected a list of pin names, in the file's order");
    if (
      model.byPin !== undefined &&
      !Object.values(model.byPin ?? [0]).every((pin) => typeof pin === "string")
    )
      return refused(`${name}.byPin: `, 'expected { "its pin": "our pin", ... }');
  }
  return { ok: true, value: Object.fromEntries(models) as Readonly<Record<string, MappedModel | null>> };
}
