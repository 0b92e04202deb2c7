/**
 * A traced circuit as a board: the R C L D Q M X of a SPICE deck. Kinds that a letter does not tell (what an X is, whether a D is a
 * zener) come from the deck's own `.subckt` and `.model` lines or from a mapping; what was not understood is listed, never dropped.
 */

import { said } from "../messages/said.ts";
import { NAME } from "../units/fields.ts";
import type { Parsed } from "../units/outcome.ts";
import { type DeckLine, deckLines } from "./deck-lines.ts";
import { spiceNumber } from "./spice-number.ts";
import {
  boardOf,
  type Content,
  type MappedModel,
  type NotUnderstood,
  netNames,
  partProblem,
  type Trace,
  type TracedBoard,
  type TraceOptions,
  traceOf,
  unmappedByName,
} from "./traced-part.ts";

/** Letters with a fixed kind, the pins in SPICE's order, and the field that the number behind them fills. */
const PASSIVE: Readonly<Record<string, { kind: string; pins: readonly string[]; field: string }>> = {
  R: { kind: "resistor", pins: ["1", "2"], field: "ohms" },
  C: { kind: "capacitor", pins: ["plus", "minus"], field: "farads" },
  L: { kind: "inductor", pins: ["1", "2"], field: "henries" },
};
/** Letters whose kind hangs on the model; `nets` is how many there are before its name. A bulk net is left out. */
const MODELLED: Readonly<Record<string, { nets: readonly number[]; pins: readonly string[] }>> = {
  D: { nets: [2], pins: ["a", "k"] },
  Q: { nets: [3, 4], pins: ["c", "b", "e"] },
  M: { nets: [4, 3], pins: ["d", "g", "s"] },
};

/** What SPICE's own model types are. */
const MODEL_TYPES: Readonly<Record<string, MappedModel>> = {
  d: { kind: "diode" },
  npn: { kind: "bjt", value: { polarity: "npn" } },
  pnp: { kind: "bjt", value: { polarity: "pnp" } },
  nmos: { kind: "mosfet", value: { channel: "n" } },
  pmos: { kind: "mosfet", value: { channel: "p" } },
  vdmos: { kind: "mosfet", value: { channel: "n" } },
};

interface ReadPart {
  readonly ref: string;
  readonly part: Content;
}

/** Reads a deck as a board. A problem is one line: what would make a board of it. */
export function readDeck(text: string, options: TraceOptions = {}): Parsed<TracedBoard> {
  return boardOf(traceDeck(text, options));
}

export function traceDeck(text: string, options: TraceOptions): Parsed<Trace> {
  const { title, statements, notes } = deckLines(text);
  const notUnderstood: NotUnderstood[] = [];
  const known = modelsOf(statements, options.models ?? {});
  const told = notesOf(notes, notUnderstood);
  const unmapped: Asked[] = [];
  const parts = new Map<string, Content>();
  for (const statement of known.elements) {
    const read = readElement(statement.text, known.models, told.parts, (asked) => unmapped.push(asked));
    const why = typeof read === "string" ? read : parts.has(read.ref) ? said`${read.ref} stands twice` : null;
    if (why !== null) notUnderstood.push({ ...statement, why });
    else if (typeof read !== "string") parts.set(read.ref, read.part);
  }
  const named = withNetNames(parts);
  const found = { unmapped: unmappedByName(unmapped), nets: netsIn(named) };
  const supply = options.supply ?? told.head.supply;
  if (supply === undefined) return { ok: true, value: traceOf(null, notUnderstood, found) };
  const head = {
    format: "faultwright-board/1",
    name: title === "" ? "traced board" : title,
    family: "traced",
    supply,
    zero: "0",
    ...told.head,
    ...(options.supply === undefined ? {} : { supply }),
    ...(options.zero === undefined ? {} : { zero: options.zero }),
  };
  const { rails, points, ...before } = head as Content;
  const board = {
    ...before,
    parts: named,
    ...(rails === undefined ? {} : { rails }),
    ...(points === undefined ? {} : { points }),
  };
  return { ok: true, value: traceOf(board, notUnderstood, found) };
}

/** The parts with nets by names that a board file takes: `/OUT` of an export is `OUT`. */
function withNetNames(parts: ReadonlyMap<string, Content>): Content {
  const netsOf = (part: Content) => Object.entries(part.pins as Readonly<Record<string, string>>);
  const written = [...new Set([...parts.values()].flatMap((part) => netsOf(part).map(([, net]) => net)))];
  const names = netNames(written);
  const nameOf = new Map(written.map((net, i) => [net, names[i] ?? net]));
  const renamed = (part: Content) => ({
    ...part,
    pins: Object.fromEntries(netsOf(part).map(([pin, net]) => [pin, nameOf.get(net) ?? net])),
  });
  return Object.fromEntries([...parts].map(([ref, part]) => [ref, renamed(part)]));
}

function netsIn(parts: Content): readonly string[] {
  const ofParts = Object.values(
    parts as Readonly<Record<string, { readonly pins: Readonly<Record<string, string>> }>>,
  );
  return [...new Set(ofParts.flatMap(({ pins }) => Object.values(pins)))];
}

/** The notes: one on the board, one a part that has more to say than its element. */
function notesOf(notes: readonly DeckLine[], notUnderstood: NotUnderstood[]) {
  let head: Content = {};
  const parts = new Map<string, { readonly ref: string; readonly part: Content }>();
  for (const note of notes) {
    const [word = "", json = ""] = splitOnce(note.text, " ");
    let content: Content;
    try {
      content = JSON.parse(json) as Content;
    } catch {
      notUnderstood.push({ ...note, why: said`no JSON behind the name` });
      continue;
    }
    const [element = "", ref = element] = word.split("=");
    if (word === "board") head = content;
    else parts.set(element, { ref, part: content });
  }
  return { head, parts };
}

function splitOnce(text: string, at: string): readonly [string, string] {
  const index = text.indexOf(at);
  return index < 0 ? [text, ""] : [text.slice(0, index), text.slice(index + 1)];
}

/** `.model` and `.subckt` lines with the mapping over them; the elements, those inside subcircuits left to them. */
function modelsOf(statements: readonly DeckLine[], mapping: NonNullable<TraceOptions["models"]>) {
  const models = new Map<string, MappedModel>();
  const elements: DeckLine[] = [];
  let inside = false;
  for (const statement of statements) {
    const [word = "", name = "", ...rest] = statement.text.split(/[\s()]+/);
    const command = word.toLowerCase();
    if (command === ".ends") inside = false;
    else if (command === ".subckt") {
      inside = true;
      const pins = rest.filter((pin) => !pin.includes("=") && !/^params:$/i.test(pin));
      models.set(name.toLowerCase(), { kind: name.toLowerCase().replace(/__\d+$/, ""), pins });
    } else if (command === ".model") {
      const model = MODEL_TYPES[(rest[0] ?? "").toLowerCase()];
      const breakdown = /\bbv\s*=\s*(\S+?)[)\s]/i.exec(`${statement.text} `)?.[1];
      const volts = breakdown === undefined ? null : spiceNumber(breakdown);
      if (model !== undefined) models.set(name.toLowerCase(), zenerOr(model, volts));
    } else if (!inside) elements.push(statement);
  }
  for (const [name, entry] of Object.entries(mapping)) {
    if (entry === null) models.delete(name.toLowerCase());
    if (entry === null) continue;
    const { pins, ...mapped } = entry;
    const own = pins ?? models.get(name.toLowerCase())?.pins;
    models.set(name.toLowerCase(), own === undefined ? mapped : { ...mapped, pins: own });
  }
  return { models, elements };
}

/** A diode made to break down below this is there for it. Common practice: zeners end at 200 V. */
const ZENER_VOLTS = 200;

function zenerOr(model: MappedModel, volts: number | null): MappedModel {
  return model.kind === "diode" && volts !== null && volts <= ZENER_VOLTS
    ? { kind: "zener", value: { volts } }
    : model;
}

/** One element as a part, or why not. */
function readElement(
  text: string,
  models: ReadonlyMap<string, MappedModel>,
  notes: ReadonlyMap<string, ReadPart>,
  ask: (asked: Asked) => void,
): ReadPart | string {
  const [element = "", ...words] = text.split(/\s+/);
  const letter = element.charAt(0).toUpperCase();
  if (letter === ".") return said`a command, not a part`;
  const note = notes.get(element);
  const ref = note?.ref ?? (/^X[A-Za-z]/i.test(element) ? element.slice(1) : element);
  if (!NAME.test(ref)) return said`${element} is not a reference (letters, digits, _ + - only)`;
  const passive = PASSIVE[letter];
  if (passive !== undefined) {
    // SPICE lets any unit be; a varistor exported as an R is no resistor of 275 ohms
    if (/\d[VA]$/i.test(words[2] ?? ""))
      return said`${words[2]} is no ${passive.field}: map or remove ${element}`;
    const value = spiceNumber(words[2] ?? "");
    if (value === null) return said`no number behind the two nets of ${element}`;
    return madePart(ref, passive.kind, passive.pins, words, { [passive.field]: value }, note?.part);
  }
  const plain = words.filter((word) => !word.includes("="));
  if (letter === "X") {
    const name = plain.at(-1) ?? "";
    const model = models.get(name.toLowerCase());
    const asked = (why: string) => askedOf(name, ref, plain.slice(0, -1), why, ask);
    if (model?.pins === undefined) return asked(said`nobody says which pins ${name} has: map it`);
    if (model.pins.length !== plain.length - 1)
      return asked(said`${name} has ${model.pins.length} pins, ${element} ${plain.length - 1} nets`);
    const made = madePart(ref, model.kind, model.pins, plain, modelValue(model, note), note?.part);
    return typeof made === "string" ? asked(made) : made;
  }
  const modelled = MODELLED[letter];
  if (modelled === undefined) return said`no part of a board is written with ${letter}`;
  const count = modelled.nets.find((nets) => models.has((plain[nets] ?? "").toLowerCase()));
  const model = count === undefined ? undefined : models.get((plain[count] ?? "").toLowerCase());
  if (model === undefined) {
    const count = modelled.pins.length;
    const why = said`no .model says what ${element} is: map its model`;
    return askedOf(plain[count] ?? "", ref, plain.slice(0, count), why, ask, modelled.pins);
  }
  return madePart(ref, model.kind, model.pins ?? modelled.pins, plain, modelValue(model, note), note?.part);
}

type Asked = Parameters<typeof unmappedByName>[0][number];

/** Asks what a model is, and gives the reason back. */
function askedOf(
  name: string,
  ref: string,
  nets: readonly string[],
  why: string,
  ask: (asked: Asked) => void,
  pins: readonly string[] = [],
): string {
  if (name !== "")
    ask({ name, ref, why, pins: nets.map((net, i) => ({ id: `${i + 1}`, name: pins[i] ?? "", net })) });
  return why;
}

/** A note says more than a model. */
const modelValue = (model: MappedModel, note: ReadPart | undefined): Content =>
  note === undefined ? (model.value ?? {}) : {};

function madePart(
  ref: string,
  kind: string,
  pins: readonly string[],
  nets: readonly string[],
  value: Content,
  note: Content | undefined,
): ReadPart | string {
  const joined = new Map(pins.map((pin, i) => [pin, nets[i] ?? ""]));
  const problem = partProblem(kind, joined);
  if (problem !== null) return problem;
  const { pins: order, value: given, ...rest } = note ?? {};
  const sorted =
    Array.isArray(order) && order.length === joined.size ? (order as string[]) : [...joined.keys()];
  const values = { ...(given as object | undefined), ...value };
  const part = {
    kind,
    pins: Object.fromEntries(sorted.map((pin) => [pin, joined.get(pin) ?? ""])),
    ...(Object.keys(values).length === 0 && given === undefined ? {} : { value: values }),
    ...rest,
  };
  return { ref, part };
}
