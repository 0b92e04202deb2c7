/**
 * A KiCad schematic (`.kicad_sch`, the open format of KiCad 6 and later) of one flat sheet as a board: wires, labels, dots and pins
 * become nets by where they lie. What was not understood is listed.
 */
import { said } from "../messages/said.ts";
import type { Parsed } from "../units/outcome.ts";
import { boardContent } from "./read-netlist.ts";
import { type List, listsOf, readList, textOf } from "./s-expression.ts";
import { sheetNets } from "./sheet-nets.ts";
import { type PlacedSymbol, placedSymbols } from "./sheet-symbols.ts";
import { partsOf, type TracedSymbol } from "./symbol-part.ts";
import {
  boardOf,
  type NotUnderstood,
  netNames,
  type Trace,
  type TracedBoard,
  type TraceOptions,
  traceOf,
} from "./traced-part.ts";

/** What a sheet may hold that joins nets in ways that are not followed here. */
const NOT_FOLLOWED: Readonly<Record<string, string>> = {
  sheet: said`a sheet inside this one is not read: export the whole as a netlist and read that`,
  bus: said`a bus is not followed: label the wires, or export a netlist and read that`,
  bus_entry: said`an entry to a bus is not followed: label the wires, or export a netlist and read that`,
  bus_alias: said`a bus is not followed: label the wires, or export a netlist and read that`,
};

/** Reads a schematic as a board. A problem is one line: what would make a board of it. */
export function readSchematic(text: string, options: TraceOptions = {}): Parsed<TracedBoard> {
  return boardOf(traceSchematic(text, options));
}

export function traceSchematic(text: string, options: TraceOptions): Parsed<Trace> {
  const read = readList(text);
  if (!read.ok) return read;
  const sheet = read.value;
  if (sheet.items[0] !== "kicad_sch")
    return { ok: false, problem: said`no schematic; it begins with (kicad_sch where it is one` };
  const symbols = tracedSymbols(sheet);
  if (symbols.length === 0) return { ok: false, problem: said`no parts in it` };
  const { parts, left, ...found } = partsOf(symbols, options);
  const [block] = listsOf(sheet, "title_block");
  const title = (block === undefined ? null : textOf(block, "title")) ?? "";
  const content = boardContent(title, parts, options);
  return { ok: true, value: traceOf(content, [...left, ...notFollowed(sheet)], found) };
}

function notFollowed(sheet: List): readonly NotUnderstood[] {
  return Object.entries(NOT_FOLLOWED).flatMap(([word, why]) =>
    listsOf(sheet, word).map(({ line }) => ({ line, text: word, why })),
  );
}

/** Symbols by reference, their units together; one that is drawn twice stands there twice. */
function tracedSymbols(sheet: List): readonly TracedSymbol[] {
  const placed = placedSymbols(sheet);
  const nets = sheetNets(sheet, placed);
  const names = netNames(nets.map(({ name }) => name));
  const pinsOf = new Map<PlacedSymbol, TracedSymbol["pins"]>();
  for (const [index, { pins }] of nets.entries())
    for (const { symbol, pin } of pins)
      pinsOf.set(symbol, [
        ...(pinsOf.get(symbol) ?? []),
        { number: pin.number, name: pin.name, net: names[index] ?? "", alone: pins.length === 1 },
      ]);
  const drawn: { of: PlacedSymbol; units: Set<number>; pins: TracedSymbol["pins"] }[] = [];
  for (const symbol of placed) {
    if (symbol.ref.startsWith("#")) continue;
    const pins = pinsOf.get(symbol) ?? [];
    const same = drawn.find(({ of, units }) => of.ref === symbol.ref && !units.has(symbol.unit));
    if (same === undefined) drawn.push({ of: symbol, units: new Set([symbol.unit]), pins });
    else {
      same.units.add(symbol.unit);
      same.pins = [...same.pins, ...pins];
    }
  }
  return drawn.map(({ of: { line, ref, value, symbol, description, fitted }, pins }) => ({
    ...{ line, ref, value, symbol, description, fitted },
    pins,
  }));
}
