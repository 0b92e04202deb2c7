import { said } from "../messages/said.ts";
import { type Fields, found, NAME, type Problems, present, readNumber } from "../units/fields.ts";
import { FrozenMap } from "../units/frozen.ts";
import { quoted, suggestion } from "../units/nearest.ts";
import { barePart } from "./bare-part.ts";
import type { Part, PartKind, PartMinutes, PartValue, Winding } from "./board.ts";
import { aKind, KIND_NAMES, type Kind, kindOf } from "./kinds.ts";
import { fillWindings } from "./windings.ts";

const PART_FIELDS = [
  "kind",
  "pins",
  "value",
  "stage",
  "role",
  "price",
  "minutes",
  "obtainable",
  "plugged",
  "assumed",
] as const;
const MINUTE_FIELDS = ["lift", "refit", "remove", "restore", "replace"] as const;

function readPins(fields: Fields, kind: PartKind, row: Kind): ReadonlyMap<string, string> {
  const pins = fields.object("pins");
  const known = [...row.pins, ...row.mayLeaveOut];
  const read: [string, string][] = [];
  for (const pin of pins.keys) {
    if (!NAME.test(pin))
      pins.complain(pin, said`${quoted(pin)} is not a pin name (letters, digits, _ + - only)`);
    else if (!row.otherPins && !known.includes(pin))
      pins.complain(pin, `${said`${aKind(kind)} has no such pin`}${suggestion(pin, known)}`);
    read.push([pin, pins.name(pin) ?? ""]);
  }
  const missing = row.pins.filter((pin) => !pins.has(pin));
  if (missing.length > 0)
    pins.complain(missing[0] ?? "", said`is missing; ${aKind(kind)} needs the pins ${row.pins.join(" ")}`);
  if (kind === "module") checkModuleReturns(pins);
  if (kind === "transformer" && read.length < 2)
    fields.complain("pins", said`a transformer needs two pins or more`);
  return new FrozenMap(read);
}

/** The three lower emitters come out one by one (`nu nv nw`), or as one pin `n` that stands for all three. */
function checkModuleReturns(pins: Fields): void {
  const apart = ["nu", "nv", "nw"].filter((pin) => pins.has(pin));
  if (pins.has("n") && apart.length > 0)
    pins.complain("n", said`stands for nu nv nw together, so ${apart.join(" ")} cannot stand beside it`);
  if (!pins.has("n") && apart.length < 3)
    pins.complain("n", said`is missing; a module needs n, or all of nu nv nw`);
}

function readWindings(value: Fields, problems: Problems): Readonly<Record<string, Winding>> {
  const windings = value.object("windings");
  const read: Record<string, Winding> = Object.create(null);
  for (const name of windings.keys) {
    if (!NAME.test(name)) windings.complain(name, said`is not a winding name (letters, digits, _ + - only)`);
    const one = windings.object(name);
    one.only(["pins", "ohms"], said`a winding`);
    const [from, to] = pairOf(problems, one.at("pins"), one.raw("pins"), "pins");
    const ohms = one.number("ohms", { least: 0 });
    read[name] = ohms === undefined ? { pins: [from, to] } : { pins: [from, to], ohms };
  }
  if (windings.keys.length === 0) value.complain("windings", said`is empty; name at least one winding`);
  return read;
}

/** Two different... or equal texts in a list: places, pins, nets. */
function pairOf(problems: Problems, path: string, input: unknown, what: string): readonly [string, string] {
  if (Array.isArray(input) && input.length === 2) {
    const [from, to]: unknown[] = input;
    if (typeof from === "string" && typeof to === "string") return [from, to];
  }
  problems.add(path, said`expected a list of two ${what}, found ${found(input)}`);
  return ["", ""];
}

function readFloating(value: Fields, problems: Problems): readonly (readonly [string, string])[] {
  return value
    .list("floating")
    .map((pair, index) =>
      pairOf(problems, `${value.at("floating")}[${index}]`, pair, said`pins: [pin, its ground pin]`),
    );
}

function readValue(fields: Fields, kind: PartKind, row: Kind, problems: Problems): PartValue {
  if (!fields.has("value")) return {};
  const value = fields.object("value");
  value.only([...row.value.keys()], said`the value of ${aKind(kind)}`);
  const read: Record<string, unknown> = {};
  for (const [key, rule] of row.value) {
    if (!value.has(key)) continue;
    if (rule.reads === "number") read[key] = value.number(key, rule.bounds);
    else if (rule.reads === "word") read[key] = value.word(key, rule.words);
    else if (rule.reads === "flag") read[key] = value.flag(key);
    else if (rule.reads === "windings") read[key] = readWindings(value, problems);
    else read[key] = readFloating(value, problems);
  }
  return read as PartValue;
}

function checkFloating(part: Fields, pins: ReadonlyMap<string, string>, value: PartValue): void {
  const seen = new Set<string>();
  for (const [pin, ground] of value.floating ?? []) {
    for (const name of [pin, ground]) {
      if (name === "vcc" || name === "gnd")
        part.complain("value.floating", said`${name} cannot float: a floating pin has no path to vcc or gnd`);
      else if (!pins.has(name))
        part.complain(
          "value.floating",
          `${said`there is no pin ${quoted(name)}`}${suggestion(name, [...pins.keys()])}`,
        );
    }
    if (seen.has(pin)) part.complain("value.floating", said`the pin ${quoted(pin)} stands twice`);
    seen.add(pin);
  }
}

function readMinutes(fields: Fields): PartMinutes {
  if (!fields.has("minutes")) return {};
  const minutes = fields.object("minutes");
  minutes.only(MINUTE_FIELDS, "minutes");
  return present<PartMinutes>({
    lift: minutes.number("lift", { least: 0 }),
    refit: minutes.number("refit", { least: 0 }),
    remove: minutes.number("remove", { least: 0 }),
    restore: minutes.number("restore", { least: 0 }),
    replace: minutes.number("replace", { least: 0 }),
  });
}

/** One part of a board file; `parts` are the fields of the file's `parts`. Problems go to `problems`. */
export function readPart(parts: Fields, ref: string, problems: Problems): Part {
  if (!NAME.test(ref))
    parts.complain(ref, said`${quoted(ref)} is not a reference (letters, digits, _ + - only)`);
  const fields = parts.object(ref);
  fields.only(PART_FIELDS, said`a part`);
  fields.require("kind", "pins");
  const kind = fields.word("kind", KIND_NAMES) ?? "link";
  const row = kindOf(kind);
  if (problems.first !== null) return placeholder(ref);
  const pins = readPins(fields, kind, row);
  const given = readValue(fields, kind, row, problems);
  const value = kind === "transformer" && problems.first === null ? fillWindings(fields, pins, given) : given;
  if (kind === "ic") checkFloating(fields, pins, value);
  return {
    ref,
    kind,
    pins,
    value,
    stage: fields.text("stage") ?? null,
    role: fields.text("role") ?? null,
    price: fields.has("price")
      ? readNumber(problems, fields.at("price"), fields.raw("price"), { least: 0 })
      : null,
    minutes: readMinutes(fields),
    obtainable: fields.flag("obtainable") ?? null,
    plugged: fields.flag("plugged") ?? false,
    assumed: fields.flag("assumed") ?? false,
  };
}

/** Stands in for a part that could not be read; the board is refused, so nobody sees it. */
function placeholder(ref: string): Part {
  return barePart(ref, "link", new FrozenMap([]));
}
