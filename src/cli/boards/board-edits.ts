/** `board rename`, `add-part`, `remove-part`, `rewire`, `seen`: one change to a board file, written back whole or not at all. */
import { realpathSync } from "node:fs";
import type { Command } from "commander";
import {
  addPart,
  type BoardContent,
  markSeen,
  removePart,
  rename,
  rewire,
} from "../../compose/edit-board.ts";
import type { Parsed } from "../../units/outcome.ts";
import { parseQuantity } from "../../units/quantity.ts";
import { DONE, type Finish, type Io, refuse } from "../io.ts";
import { loadBoard } from "../load-job.ts";
import { readJson } from "../read-file.ts";
import { replaceFile } from "../replace-file.ts";

const FILE = "a board file; it is changed in place";

export function addEdits(board: Command, io: Io, finish: Finish): void {
  const change = (file: string, by: (content: BoardContent) => Parsed<BoardContent>) =>
    finish(() => changeFile(file, io, by));
  board
    .command("rename")
    .description("give a part or a net the name that the silkscreen has")
    .argument("<file>", FILE)
    .argument("<name>", "a part's reference or a net's name")
    .argument("<new>", "the new name")
    .option("--net", "the net, where a part has the same name")
    .addHelpText("after", "\nExample:\n  $ faultwright board rename own.json U1 IC301")
    .action((file: string, from: string, to: string, { net }: { net?: true }) =>
      change(file, (content) => rename(content, from, to, net === true ? "net" : "either")),
    );
  board
    .command("add-part")
    .description("add one part")
    .argument("<file>", FILE)
    .argument("<ref>", "its reference")
    .argument("<kind>", "its kind, as docs/formats.md lists them")
    .argument("<pins...>", "pin=NET for each pin")
    .option("--value <fields>", "field=value, with commas between: ohms=4k7,watts=0.5")
    .option("--stage <word>", "the stage it belongs to")
    .option("--assumed", "nobody has seen it")
    .addHelpText(
      "after",
      "\nExample:\n  $ faultwright board add-part own.json R90 resistor 1=PBUS 2=NBUS --value ohms=220k",
    )
    .action((file: string, ref: string, kind: string, pins: string[], options: PartOptions) =>
      change(file, (content) => {
        const part = typedPart(kind, pins, options);
        return part.ok ? addPart(content, ref, part.value) : part;
      }),
    );
  board
    .command("remove-part")
    .description("take one part out")
    .argument("<file>", FILE)
    .argument("<ref>", "its reference")
    .action((file: string, ref: string) => change(file, (content) => removePart(content, ref)));
  board
    .command("rewire")
    .description("put one pin on another net")
    .argument("<file>", FILE)
    .argument("<pin>", "such as Q1.g")
    .argument("<net>", "a net; a new name makes a new one")
    .action((file: string, pin: string, net: string) => change(file, (content) => rewire(content, pin, net)));
  board
    .command("seen")
    .description("say that parts have been looked at and are as drawn: they are no longer assumed")
    .argument("<file>", FILE)
    .argument("<refs...>", "their references")
    .action((file: string, refs: string[]) =>
      change(file, (content) =>
        refs.reduce<Parsed<BoardContent>>(
          (before, ref) => (before.ok ? markSeen(before.value, ref) : before),
          { ok: true, value: content },
        ),
      ),
    );
}

function changeFile(file: string, io: Io, by: (content: BoardContent) => Parsed<BoardContent>): number {
  const board = loadBoard(file);
  if (!board.ok) return refuse(io, board.problem);
  const content = readJson(file);
  if (!content.ok) return refuse(io, content.problem);
  const changed = by(content.value as BoardContent);
  if (!changed.ok) return refuse(io, `${file}: not changed: ${changed.problem}`);
  try {
    replaceFile(realpathSync(file), `${JSON.stringify(changed.value, null, 2)}\n`);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return refuse(io, `${file}: not written, the file is as it was: ${why}`);
  }
  return DONE;
}

interface PartOptions {
  readonly value?: string;
  readonly stage?: string;
  readonly assumed?: true;
}

/** `name=text` pairs; a problem names the one that is none. */
function pairs(texts: readonly string[], what: string): Parsed<readonly (readonly [string, string])[]> {
  const bad = texts.find((text) => !/^[^=]+=.+$/.test(text));
  if (bad !== undefined) return { ok: false, problem: `"${bad}" is no ${what}; write it as ${what}` };
  const at = (text: string) => text.indexOf("=");
  return {
    ok: true,
    value: texts.map((text) => [text.slice(0, at(text)), text.slice(at(text) + 1)] as const),
  };
}

function typedPart(kind: string, pins: readonly string[], options: PartOptions): Parsed<BoardContent> {
  const nets = pairs(pins, "pin=NET");
  if (!nets.ok) return nets;
  const fields = pairs(options.value?.split(",") ?? [], "field=value");
  if (!fields.ok) return fields;
  const value = fields.value.map(([field, text]) => [field, typedValue(text)] as const);
  return {
    ok: true,
    value: {
      kind,
      pins: Object.fromEntries(nets.value),
      ...(value.length === 0 ? {} : { value: Object.fromEntries(value) }),
      ...(options.stage === undefined ? {} : { stage: options.stage }),
      ...(options.assumed === true ? { assumed: true } : {}),
    },
  };
}

/** A quantity as typed (`4k7`), `true` or `false`, or a word such as `electrolytic`. */
function typedValue(text: string): number | boolean | string {
  if (text === "true" || text === "false") return text === "true";
  const quantity = parseQuantity(text);
  return quantity.ok && typeof quantity.value === "number" ? quantity.value : text;
}
