/**
 * What the symbols of KiCad's general library are. Names and pins checked against the library of KiCad 9.0.8; a symbol whose pins
 * are not exactly the ones here is not guessed: somebody has to map it.
 */
import { said } from "../messages/said.ts";
import type { Content, MappedModel } from "./traced-part.ts";

/** A pin of a symbol: its number, and its name, empty where it has none (`~`). */
export interface SymbolPin {
  readonly number: string;
  readonly name: string;
}

/** What a symbol is, and the number of its pin -> the pin of the board file. */
export interface SymbolKind {
  readonly kind: string;
  readonly pinOf: ReadonlyMap<string, string>;
  readonly value: Content;
  /** what was assumed of it, for the list; null where nothing was */
  readonly assumed: string | null;
}

/** By name, the pins in the order of their numbers. A family is the symbol's name up to a `_`. */
const FAMILIES: Readonly<Record<string, MappedModel & { readonly pins: readonly string[] }>> = {
  R: { kind: "resistor", pins: ["1", "2"] },
  C: { kind: "capacitor", pins: ["plus", "minus"] },
  L: { kind: "inductor", pins: ["1", "2"] },
  FerriteBead: { kind: "inductor", pins: ["1", "2"] },
  D: { kind: "diode", pins: ["k", "a"] },
  D_Zener: { kind: "zener", pins: ["k", "a"] },
  D_Schottky: { kind: "diode", pins: ["k", "a"], value: { type: "schottky" } },
  D_TVS: { kind: "zener", pins: ["k", "a"] },
  LED: { kind: "led", pins: ["k", "a"] },
  Fuse: { kind: "fuse", pins: ["1", "2"] },
  Polyfuse: { kind: "ptc", pins: ["1", "2"] },
  Varistor: { kind: "varistor", pins: ["1", "2"] },
  Thermistor_NTC: { kind: "ntc", pins: ["1", "2"] },
  Thermistor_PTC: { kind: "ptc", pins: ["1", "2"] },
  SolderJumper_2_Bridged: { kind: "link", pins: ["1", "2"] },
  NetTie_2: { kind: "link", pins: ["1", "2"] },
  Transformer_1P_1S: { kind: "transformer", pins: ["AA", "AB", "SA", "SB"] },
};
/** Of these families, symbols that are something else with as many pins. */
const OTHERWISE = /Photo|Laser|SiPM|Variable|Trim|Memristor/;

/** By the names of the pins. `*` stands for pins without a name, in the order of their numbers. */
const BY_PIN_NAMES: readonly {
  readonly kind: string;
  readonly names: Readonly<Record<string, string>>;
  readonly bare?: readonly string[];
}[] = [
  { kind: "bjt", names: { B: "b", C: "c", E: "e" } },
  { kind: "mosfet", names: { G: "g", D: "d", S: "s" } },
  { kind: "igbt", names: { G: "g", C: "c", E: "e" } },
  { kind: "thyristor", names: { G: "g", A: "a", K: "k" } },
  { kind: "triac", names: { G: "g", A1: "1", A2: "2" } },
  { kind: "shuntref", names: { REF: "ref", K: "k", A: "a" } },
  { kind: "bridge", names: { "+": "plus", "-": "minus" }, bare: ["ac1", "ac2"] },
  { kind: "regulator", names: { IN: "in", OUT: "out", GND: "gnd" } },
  { kind: "regulator", names: { VI: "in", VO: "out", GND: "gnd" } },
];
/** Transistors tell in their last letters which pin is which, where a netlist does not name them: `Q_NPN_BCE`. */
const LETTERS = /^Q_[A-Z]+_([BCEGDSAK]{3,4})$/;

/** What `symbol` is by the library's own names, or null: then somebody has to say. */
export function symbolKind(
  symbol: string,
  description: string,
  pins: readonly SymbolPin[],
): SymbolKind | null {
  return byFamily(symbol, pins) ?? byPinNames(symbol, description, namedByLetters(symbol, pins));
}

function byFamily(symbol: string, pins: readonly SymbolPin[]): SymbolKind | null {
  const [key] = Object.keys(FAMILIES)
    .filter((family) => symbol === family || symbol.startsWith(`${family}_`))
    .sort((a, b) => b.length - a.length);
  const family = key === undefined ? undefined : FAMILIES[key];
  if (family === undefined || OTHERWISE.test(symbol)) return null;
  const numbers = family.pins.map((_, i) => `${i + 1}`);
  if (pins.length !== numbers.length || pins.some(({ number }) => !numbers.includes(number))) return null;
  return {
    kind: family.kind,
    pinOf: new Map(family.pins.map((pin, i) => [`${i + 1}`, pin])),
    value: family.value ?? {},
    assumed: null,
  };
}

function namedByLetters(symbol: string, pins: readonly SymbolPin[]): readonly SymbolPin[] {
  const letters = LETTERS.exec(symbol)?.[1] ?? "";
  return pins.map((pin) => (pin.name === "" ? { ...pin, name: letters[Number(pin.number) - 1] ?? "" } : pin));
}

function byPinNames(symbol: string, description: string, pins: readonly SymbolPin[]): SymbolKind | null {
  const bare = pins.filter(({ name }) => name === "").map(({ number }) => number);
  bare.sort((a, b) => Number(a) - Number(b));
  const row = BY_PIN_NAMES.find(
    ({ names, bare: wanted = [] }) =>
      Object.keys(names).every((name) => pins.some((pin) => pin.name === name)) &&
      pins.every(({ name }) => name === "" || name in names) &&
      bare.length === wanted.length,
  );
  if (row === undefined) return null;
  const pinOf = new Map(
    pins.map(({ number, name }) => [number, row.names[name] ?? row.bare?.[bare.indexOf(number)] ?? ""]),
  );
  return { kind: row.kind, pinOf, ...polarityOf(row.kind, `${symbol} ${description}`) };
}

/** Which way a transistor goes stands in its name or its description. */
function polarityOf(kind: string, words: string): Pick<SymbolKind, "value" | "assumed"> {
  if (kind === "bjt") {
    if (/PNP/i.test(words)) return { value: { polarity: "pnp" }, assumed: null };
    return {
      value: { polarity: "npn" },
      assumed: /NPN/i.test(words) ? null : said`nothing says so: taken as NPN`,
    };
  }
  if (kind === "mosfet") {
    if (/PMOS|P-Channel|P-MOS/i.test(words)) return { value: { channel: "p" }, assumed: null };
    const told = /NMOS|N-Channel|N-MOS/i.test(words);
    return { value: { channel: "n" }, assumed: told ? null : said`nothing says so: taken as N-channel` };
  }
  return { value: {}, assumed: null };
}
