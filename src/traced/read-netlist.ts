/**
 * A KiCad netlist (the `.net` export, an s-expression) as a board. Kinds come from the symbols of its general library, else from a
 * mapping; what was not understood is listed.
 */
import type { Parsed } from "../units/outcome.ts";
import { parseQuantity } from "../units/quantity.ts";
import { type List, listsOf, readList, textOf } from "./s-expression.ts";
import {
  type Content,
  type MappedModel,
  NO_SUPPLY,
  type NotUnderstood,
  partProblem,
  type TracedBoard,
  type TraceOptions,
  tracedBoard,
} from "./traced-part.ts";

/** The format's own words. */
const WORDS = { parts: "components", part: "comp", nets: "nets", net: "net", pin: "node" } as const;

/** Symbols of the general library, pins by number; a family is the symbol's name up to its first `_`. From memory. */
const SYMBOLS: Readonly<Record<string, MappedModel>> = {
  R: { kind: "resistor", pins: ["1", "2"] },
  C: { kind: "capacitor", pins: ["plus", "minus"] },
  L: { kind: "inductor", pins: ["1", "2"] },
  D: { kind: "diode", pins: ["k", "a"] },
  D_Zener: { kind: "zener", pins: ["k", "a"] },
  D_Schottky: { kind: "diode", pins: ["k", "a"], value: { type: "schottky" } },
  D_TVS: { kind: "zener", pins: ["k", "a"] },
  LED: { kind: "led", pins: ["k", "a"] },
  Fuse: { kind: "fuse", pins: ["1", "2"] },
  Varistor: { kind: "varistor", pins: ["1", "2"] },
  Thermistor_NTC: { kind: "ntc", pins: ["1", "2"] },
  Thermistor_PTC: { kind: "ptc", pins: ["1", "2"] },
};
/** Transistors say in their last letters which pin is which: `Q_NPN_BCE`, `Q_NMOS_GDS`, `Q_NIGBT_GCE`. From memory. */
const TRANSISTOR = /^Q_(NPN|PNP|NMOS|PMOS|NIGBT)_([BCEGDS]{3})$/;
const TRANSISTORS: Readonly<Record<string, MappedModel>> = {
  NPN: { kind: "bjt", value: { polarity: "npn" } },
  PNP: { kind: "bjt", value: { polarity: "pnp" } },
  NMOS: { kind: "mosfet", value: { channel: "n" } },
  PMOS: { kind: "mosfet", value: { channel: "p" } },
  NIGBT: { kind: "igbt" },
};
/** The field that a symbol's value is, where it is a number. */
const VALUE_FIELDS: Readonly<Record<string, string>> = {
  resistor: "ohms",
  capacitor: "farads",
  inductor: "henries",
  ntc: "ohms",
  ptc: "ohms",
  zener: "volts",
  fuse: "amps",
};

/** Reads a netlist. A problem is one line: what would make a board of it. */
export function readNetlist(text: string, options: TraceOptions = {}): Parsed<TracedBoard> {
  const netlist = readList(text);
  if (!netlist.ok) return netlist;
  const all = (group: string, one: string) =>
    listsOf(netlist.value, group).flatMap((list) => listsOf(list, one));
  const symbols = all(WORDS.parts, WORDS.part);
  if (symbols.length === 0)
    return { ok: false, problem: "no parts in it; export it as a KiCad netlist (.net)" };
  if (options.supply === undefined) return NO_SUPPLY;
  const pins = pinsByPart(all(WORDS.nets, WORDS.net));
  const notUnderstood: NotUnderstood[] = [];
  const parts = new Map<string, Content>();
  for (const symbol of symbols) {
    const ref = textOf(symbol, "ref") ?? "";
    const left = (why: string) => notUnderstood.push({ line: symbol.line, text: ref, why });
    const model = modelOf(symbol, options.models ?? {});
    if (model === null) left(`nobody says what a ${symbolOf(symbol)} is: map it`);
    else if (parts.has(ref)) left("stands twice");
    else {
      const part = partOf(symbol, model, pins.get(ref) ?? new Map(), left);
      if (part !== null) parts.set(ref, part);
    }
  }
  const board = {
    format: "faultwright-board/1",
    name: textOf(listsOf(netlist.value, "design")[0] ?? netlist.value, "source") ?? "traced board",
    family: "traced",
    supply: options.supply,
    zero: options.zero ?? "GND",
    parts: Object.fromEntries(parts),
  };
  return tracedBoard(board, notUnderstood);
}

/** `/power/PBUS` and `Net-(R1-Pad2)` as names of a board file. */
const netName = (name: string) => name.replace(/^\//, "").replace(/[^A-Za-z0-9_+-]+/g, "_");

/** Part -> number of its pin -> net. Nets whose names become one are told apart by a number. */
function pinsByPart(nets: readonly List[]): ReadonlyMap<string, ReadonlyMap<string, string>> {
  const found = new Map<string, Map<string, string>>();
  const names = new Set<string>();
  for (const net of nets) {
    const plain = netName(textOf(net, "name") ?? "");
    let name = plain;
    for (let n = 2; names.has(name); n++) name = `${plain}_${n}`;
    names.add(name);
    for (const pin of listsOf(net, WORDS.pin)) {
      const ref = textOf(pin, "ref") ?? "";
      const own = found.get(ref) ?? new Map<string, string>();
      found.set(ref, own.set(textOf(pin, "pin") ?? "", name));
    }
  }
  return found;
}

function symbolOf(symbol: List): string {
  const [source] = listsOf(symbol, "libsource");
  return (source === undefined ? null : textOf(source, "part")) ?? textOf(symbol, "value") ?? "?";
}

/** By the mapping (symbol or value), the symbol, its transistor letters, its family. */
function modelOf(symbol: List, mapping: NonNullable<TraceOptions["models"]>): MappedModel | null {
  const name = symbolOf(symbol);
  const value = textOf(symbol, "value") ?? "";
  const mapped = Object.entries(mapping).find(([key]) =>
    [name.toLowerCase(), value.toLowerCase()].includes(key.toLowerCase()),
  );
  if (mapped !== undefined) return mapped[1];
  const [, sort = "", letters = ""] = TRANSISTOR.exec(name) ?? [];
  const transistor = TRANSISTORS[sort];
  if (transistor !== undefined) return { ...transistor, pins: [...letters.toLowerCase()] };
  const family = Object.keys(SYMBOLS)
    .filter((key) => name === key || name.startsWith(`${key}_`))
    .sort((a, b) => b.length - a.length)[0];
  return family === undefined ? null : (SYMBOLS[family] ?? null);
}

function partOf(
  symbol: List,
  model: MappedModel,
  numbered: ReadonlyMap<string, string>,
  left: (why: string) => void,
): Content | null {
  const pins = new Map<string, string>();
  for (const [index, pin] of (model.pins ?? []).entries()) {
    const net = numbered.get(`${index + 1}`);
    if (net !== undefined) pins.set(pin, net);
  }
  const problem = partProblem(model.kind, pins);
  if (problem !== null) {
    left(problem);
    return null;
  }
  const field = VALUE_FIELDS[model.kind];
  const typed = (textOf(symbol, "value") ?? "").split(/[/ ]/)[0] ?? "";
  const read = parseQuantity(typed.replace(/H$/, ""));
  const number = read.ok && typeof read.value === "number" ? read.value : null;
  const value = { ...model.value, ...(field !== undefined && number !== null ? { [field]: number } : {}) };
  // The part stays; its value is not known.
  if (field !== undefined && number === null)
    left(`its value ${JSON.stringify(typed)} is not read: the kind's usual counts`);
  return {
    kind: model.kind,
    pins: Object.fromEntries(pins),
    ...(Object.keys(value).length === 0 ? {} : { value }),
  };
}
