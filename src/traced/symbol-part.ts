/** Symbols of a schematic or a netlist as parts of a board: what each is, its pins, its value; what was not understood is listed. */

import { KIND_NAMES, kindOf } from "../board/kinds.ts";
import { said } from "../messages/said.ts";
import { NAME } from "../units/fields.ts";
import { parseQuantity } from "../units/quantity.ts";
import { type SymbolKind, type SymbolPin, symbolKind } from "./symbol-kinds.ts";
import {
  type Content,
  type MappedModel,
  type NotUnderstood,
  partProblem,
  type Trace,
  type TraceOptions,
  unmappedByName,
} from "./traced-part.ts";

/** One symbol, all its units together. */
export interface TracedSymbol {
  readonly line: number;
  readonly ref: string;
  readonly value: string;
  /** its name in its library */
  readonly symbol: string;
  readonly description: string;
  /** false: drawn, and not on the board */
  readonly fitted: boolean;
  readonly pins: readonly (SymbolPin & { readonly net: string; readonly alone: boolean })[];
}

/** What the number in a symbol's value is, and the fields of further words by the letter they end in. */
const VALUE_FIELDS: Readonly<Record<string, string>> = {
  resistor: "ohms",
  capacitor: "farads",
  inductor: "henries",
  ntc: "ohms",
  ptc: "ohms",
  zener: "volts",
  fuse: "amps",
  varistor: "volts",
};
const FURTHER: readonly { readonly ends: RegExp; readonly field: string }[] = [
  { ends: /V(AC|DC)?$/i, field: "volts" },
  { ends: /W$/, field: "watts" },
  { ends: /A$/, field: "amps" },
  { ends: /%$/, field: "tolerance" },
];

type Left = (why: string) => void;

export interface PartsOfSymbols extends Pick<Trace, "unmapped" | "nets"> {
  readonly parts: ReadonlyMap<string, Content>;
  readonly left: readonly NotUnderstood[];
}

/** The parts of `symbols` by reference; `left` gets every symbol, pin and value that is not in them, with the reason. */
export function partsOf(symbols: readonly TracedSymbol[], { models = {} }: TraceOptions): PartsOfSymbols {
  const left: NotUnderstood[] = [];
  const unmapped: Parameters<typeof unmappedByName>[0][number][] = [];
  const parts = new Map<string, Content>();
  for (const symbol of symbols) {
    const say: Left = (why) => left.push({ line: symbol.line, text: symbol.ref, why });
    const ask: Left = (why) => {
      say(why);
      const pins = symbol.pins.map(({ number, name, net }) => ({ id: number, name, net }));
      unmapped.push({ name: symbol.symbol, ref: symbol.ref, why, pins });
    };
    const part = NAME.test(symbol.ref) ? partOf(symbol, models, { say, ask }) : null;
    if (!NAME.test(symbol.ref))
      say(said`is no reference (letters, digits, _ + - only): annotate the schematic`);
    else if (part !== null && parts.has(symbol.ref)) say(said`stands twice`);
    else if (part !== null) parts.set(symbol.ref, part);
  }
  const nets = symbols.flatMap(({ pins }) => pins.map(({ net }) => net));
  return { parts, left, unmapped: unmappedByName(unmapped), nets: [...new Set(nets)] };
}

/** `say` what is not in the board, `ask` what a mapping would bring into it. */
interface Told {
  readonly say: Left;
  readonly ask: Left;
}

function partOf(
  symbol: TracedSymbol,
  models: NonNullable<TraceOptions["models"]>,
  { say, ask }: Told,
): Content | null {
  const mapped = mappedModel(symbol, models);
  if (mapped === null) return nothing(say, said`left out, as the mapping says`);
  if (!symbol.fitted) return nothing(say, said`drawn as not fitted`);
  const known =
    mapped === undefined
      ? symbolKind(symbol.symbol, symbol.description, symbol.pins)
      : kindByMapping(symbol, mapped);
  if (known === null) return nothing(ask, said`nobody says what a ${symbol.symbol} is: map it`);
  if (known.assumed !== null) say(known.assumed);
  const pins = netsOfPins(symbol, known, { say, ask });
  if (pins === null) return null;
  const problem = partProblem(known.kind, pins);
  if (problem !== null) return nothing(ask, problem);
  const value = { ...known.value, ...typedValue(symbol, known.kind, say) };
  return {
    kind: known.kind,
    pins: Object.fromEntries(pins),
    ...(Object.keys(value).length === 0 ? {} : { value }),
  };
}

function nothing(say: Left, why: string): null {
  say(why);
  return null;
}

/** By reference, symbol or value, in this order; null: it is to be left out; undefined: nobody mapped it. */
function mappedModel(
  { ref, symbol, value }: TracedSymbol,
  models: NonNullable<TraceOptions["models"]>,
): MappedModel | null | undefined {
  for (const name of [ref, symbol, value]) {
    const key = Object.keys(models).find((one) => one.toLowerCase() === name.toLowerCase());
    if (key !== undefined) return models[key];
  }
  return undefined;
}

/** Pins by the mapping: `byPin` (number or name), else the list in the order of numbers, else names that the kind knows too. */
function kindByMapping({ pins }: TracedSymbol, model: MappedModel): SymbolKind {
  const kind = KIND_NAMES.find((name) => name === model.kind);
  const row = kind === undefined ? null : kindOf(kind);
  const own = row === null ? [] : [...row.pins, ...row.mayLeaveOut];
  const pinOf = new Map<string, string>();
  for (const { number, name, net } of pins) {
    const given = model.byPin?.[number] ?? model.byPin?.[name] ?? model.pins?.[Number(number) - 1];
    const alike = own.find((pin) => pin.toLowerCase() === name.toLowerCase());
    // two comparators in one case have each a pin called "+": such pins go by their numbers
    const shared = pins.some((other) => other.name === name && other.net !== net);
    const named = shared ? number : plainName(name, number);
    const free = row?.otherPins === true && model.pins === undefined ? named : undefined;
    const pin = given ?? alike ?? free;
    if (pin !== undefined) pinOf.set(number, pin);
  }
  return { kind: model.kind, pinOf, value: model.value ?? {}, assumed: null };
}

/** `~{RESET}/PA0` as a pin's name. */
const plainName = (name: string, number: string) =>
  name.replace(/[^A-Za-z0-9_+-]+/g, "_").replace(/^_+|_+$/g, "") || number;

/** Pin of the board file -> net. Several pins of one name on one net are one; on two nets, nobody knows which counts. */
function netsOfPins(symbol: TracedSymbol, known: SymbolKind, { say, ask }: Told): Map<string, string> | null {
  const nets = new Map<string, string>();
  for (const { number, name, net, alone } of symbol.pins) {
    const called = name === "" ? number : `${number} (${name})`;
    const pin = known.pinOf.get(number);
    if (pin === undefined) {
      // a pin that is drawn as connected to nothing is no loss
      if (!alone) say(said`its pin ${called} on ${net} is left out: map it`);
      continue;
    }
    const there = nets.get(pin);
    if (there !== undefined && there !== net)
      return nothing(
        ask,
        said`its pin ${called} is a second ${pin}, on ${net} and not on ${there}: map its pins`,
      );
    nets.set(pin, net);
  }
  return nets;
}

/** `330uF/400V`, `10k 1%`: the kind's own number first, then what the letters behind further numbers tell. */
function typedValue({ value }: TracedSymbol, kind: string, say: Left): Content {
  const field = VALUE_FIELDS[kind];
  const [first = "", ...further] = value.split(/[/ ]+/).filter((word) => word !== "");
  if (field === undefined) {
    if (value !== "" && value !== "~")
      say(said`its type ${JSON.stringify(value)} has no place in a board file`);
    return {};
  }
  const number = numberIn(first.replace(/H$/, ""));
  if (number === null) say(said`its value ${JSON.stringify(first)} is not read: the kind's usual counts`);
  const read: Record<string, number> = number === null ? {} : { [field]: number };
  for (const word of further) {
    const ending = FURTHER.find(({ ends }) => ends.test(word));
    const figure = numberIn(word.replace(/(V)(AC|DC)$/i, "$1").replace(/[W%]$/, ""));
    const takes = kindOf(KIND_NAMES.find((name) => name === kind) ?? "link").value;
    if (ending === undefined || figure === null || !takes.has(ending.field))
      say(said`${JSON.stringify(word)} of its value is not read`);
    else read[ending.field] = ending.field === "tolerance" ? figure / 100 : figure;
  }
  return read;
}

function numberIn(text: string): number | null {
  const read = parseQuantity(text);
  return read.ok && typeof read.value === "number" ? read.value : null;
}
