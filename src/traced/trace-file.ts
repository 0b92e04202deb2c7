/** A traced circuit by what stands in its file, and what a page says of it while it becomes a board. */
import { KIND_NAMES, kindOf } from "../board/kinds.ts";
import type { Parsed } from "../units/outcome.ts";
import { traceDeck } from "./read-deck.ts";
import { traceNetlist } from "./read-netlist.ts";
import { traceSchematic } from "./read-schematic.ts";
import type { Content, MappedModel, NotUnderstood, Trace, TraceOptions, Unmapped } from "./traced-part.ts";

/** A mapping as a table of pins: the file's pin (a number, in a deck its place in the order) -> the pin of the board file. */
export interface MappedPins {
  readonly kind: string;
  readonly pins: Readonly<Record<string, string>>;
}

export interface TraceAnswers {
  readonly name: string;
  readonly supply: Content | null;
  readonly zero: string;
  /** by the file's own name; null: left out */
  readonly mapped: Readonly<Record<string, MappedPins | null>>;
}

export interface TracedFile {
  /** null: no board yet, and `problem` says why */
  readonly content: Content | null;
  readonly problem: string | null;
  readonly name: string;
  readonly parts: number;
  readonly nets: readonly string[];
  /** what somebody has to say, the mapped that still do not fit among them */
  readonly unmapped: readonly Unmapped[];
  readonly notUnderstood: readonly NotUnderstood[];
  readonly kinds: readonly {
    readonly kind: string;
    readonly words: string;
    readonly pins: readonly string[];
    readonly otherPins: boolean;
  }[];
}

const isSchematic = (text: string) => /^\s*\(kicad_sch\b/.test(text);
const isNetlist = (text: string) => /^\s*\(export\b/.test(text);

function traced(text: string, options: TraceOptions): Parsed<Trace> {
  if (isSchematic(text)) return traceSchematic(text, options);
  return isNetlist(text) ? traceNetlist(text, options) : traceDeck(text, options);
}

/** The file with the answers given so far; one line where it is none of the three. */
export function traceFile(text: string, answers: TraceAnswers): Parsed<TracedFile> {
  const { name, supply, zero, mapped } = answers;
  const inOrder = !isSchematic(text) && !isNetlist(text);
  const models = Object.entries(mapped).map(([of, one]): [string, MappedModel | null] => [
    of,
    one === null ? null : modelOf(one, inOrder),
  ]);
  const read = traced(text, {
    ...(supply === null ? {} : { supply }),
    ...(zero === "" ? {} : { zero }),
    models: Object.fromEntries(models),
  });
  if (!read.ok) return read;
  const { board, notUnderstood, unmapped, nets } = read.value;
  const content = board.ok ? { ...board.value, ...(name === "" ? {} : { name }) } : null;
  return {
    ok: true,
    value: {
      content,
      problem: board.ok ? null : board.problem,
      name: String(content?.name ?? name),
      parts: Object.keys((content as Content | null)?.parts ?? {}).length,
      nets,
      unmapped,
      notUnderstood,
      kinds: KIND_NAMES.map((kind) => {
        const { words, pins, mayLeaveOut, otherPins } = kindOf(kind);
        return { kind, words, pins: [...pins, ...mayLeaveOut], otherPins };
      }),
    },
  };
}

function modelOf({ kind, pins }: MappedPins, inOrder: boolean): MappedModel {
  const said = Object.entries(pins).filter(([, pin]) => pin !== "");
  if (!inOrder) return { kind, byPin: Object.fromEntries(said) };
  const order = said.sort(([a], [b]) => Number(a) - Number(b)).map(([, pin]) => pin);
  return { kind, ...(order.length === 0 ? {} : { pins: order }) };
}
