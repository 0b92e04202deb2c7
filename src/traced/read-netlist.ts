/** A KiCad netlist (the `.net` export, an s-expression) as a board; what was not understood is listed. */
import { said } from "../messages/said.ts";
import type { Parsed } from "../units/outcome.ts";
import { type List, listsOf, readList, textOf } from "./s-expression.ts";
import { partsOf, type TracedSymbol } from "./symbol-part.ts";
import {
  boardOf,
  netNames,
  type Trace,
  type TracedBoard,
  type TraceOptions,
  traceOf,
} from "./traced-part.ts";

/** The format's own words. */
const WORDS = { parts: "components", part: "comp", nets: "nets", net: "net", pin: "node" } as const;

/** Reads a netlist as a board. A problem is one line: what would make a board of it. */
export function readNetlist(text: string, options: TraceOptions = {}): Parsed<TracedBoard> {
  return boardOf(traceNetlist(text, options));
}

export function traceNetlist(text: string, options: TraceOptions): Parsed<Trace> {
  const netlist = readList(text);
  if (!netlist.ok) return netlist;
  const all = (group: string, one: string) =>
    listsOf(netlist.value, group).flatMap((list) => listsOf(list, one));
  const symbols = all(WORDS.parts, WORDS.part);
  if (symbols.length === 0)
    return { ok: false, problem: said`no parts in it; export it as a KiCad netlist (.net)` };
  const pins = pinsByPart(all(WORDS.nets, WORDS.net));
  const { parts, left, ...found } = partsOf(
    symbols.map((symbol) => symbolOf(symbol, pins)),
    options,
  );
  const content = boardContent(titleOf(netlist.value), parts, options);
  return { ok: true, value: traceOf(content, left, found) };
}

/** What every schematic becomes: its parts, under the name it gives itself; null where nobody said what it runs on. */
export function boardContent(
  name: string,
  parts: ReadonlyMap<string, unknown>,
  { supply, zero = "GND" }: TraceOptions,
): Readonly<Record<string, unknown>> | null {
  if (supply === undefined) return null;
  return {
    format: "faultwright-board/1",
    name: name === "" ? "traced board" : name,
    family: "traced",
    supply,
    zero,
    parts: Object.fromEntries(parts),
  };
}

/** The sheet's title, else the schematic's file name: never the folder it lay in. */
function titleOf(netlist: List): string {
  const [design] = listsOf(netlist, "design");
  const [block] =
    design === undefined ? [] : listsOf(design, "sheet").flatMap((s) => listsOf(s, "title_block"));
  const title = block === undefined ? null : textOf(block, "title");
  const source = (design === undefined ? null : textOf(design, "source")) ?? "";
  return title ?? (source.split(/[/\\]/).at(-1) ?? "").replace(/\.kicad_sch$/, "");
}

type Pins = TracedSymbol["pins"];

/** Part -> its pins. */
function pinsByPart(nets: readonly List[]): ReadonlyMap<string, Pins> {
  const found = new Map<string, Pins>();
  const names = netNames(nets.map((net) => textOf(net, "name") ?? ""));
  for (const [index, net] of nets.entries()) {
    const pins = listsOf(net, WORDS.pin);
    for (const pin of pins) {
      const ref = textOf(pin, "ref") ?? "";
      const one = {
        number: textOf(pin, "pin") ?? "",
        name: bareName(textOf(pin, "pinfunction") ?? ""),
        net: names[index] ?? "",
        alone: pins.length === 1,
      };
      found.set(ref, [...(found.get(ref) ?? []), one]);
    }
  }
  return found;
}

/** A pin without a name bears a `~` in some files. */
export const bareName = (name: string) => (name === "~" ? "" : name);

function symbolOf(symbol: List, pins: ReadonlyMap<string, Pins>): TracedSymbol {
  const [source] = listsOf(symbol, "libsource");
  const ref = textOf(symbol, "ref") ?? "";
  const value = textOf(symbol, "value") ?? "";
  const given = source === undefined ? null : textOf(source, "description");
  const marks = listsOf(symbol, "property").map((property) => textOf(property, "name"));
  return {
    line: symbol.line,
    ref,
    value,
    symbol: (source === undefined ? null : textOf(source, "part")) ?? value,
    description: given ?? textOf(symbol, "description") ?? "",
    fitted: !marks.includes("dnp"),
    pins: pins.get(ref) ?? [],
  };
}
