/**
 * Changes by hand to a board file's content: names as the silkscreen has them, single parts in and out, a pin on another net. What
 * comes out reads as a board, or the change is refused in one line. The order of the file is kept.
 */
import { parseBoard } from "../board/parse-board.ts";
import { said } from "../messages/said.ts";
import { NAME } from "../units/fields.ts";
import { quoted, suggestion } from "../units/nearest.ts";
import type { Parsed } from "../units/outcome.ts";

export type BoardContent = Readonly<Record<string, unknown>>;
type Entries = Readonly<Record<string, Record<string, unknown>>>;

const refused = (problem: string) => ({ ok: false, problem }) as const;

/** A board file's tables of parts, rails and points; what the file leaves out is empty. */
function table(content: BoardContent, key: "parts" | "nets" | "rails" | "points"): Entries {
  return (content[key] ?? {}) as Entries;
}

function netsOf(content: BoardContent): readonly string[] {
  const onPins = Object.values(table(content, "parts")).flatMap((part) => Object.values(part.pins as object));
  return [...new Set([...Object.keys(table(content, "nets")), ...(onPins as string[])])];
}

interface Reference {
  readonly red: string;
  readonly black: string;
}

const referencesOf = (content: BoardContent) => (content.references ?? []) as readonly Reference[];

/** What good ones read, at the places as they are called now. */
function readAt(content: BoardContent, place: (old: string) => string): readonly Reference[] {
  return referencesOf(content).map((one) => ({ ...one, red: place(one.red), black: place(one.black) }));
}

/** What good ones read between places that are still there. */
function stillThere(content: BoardContent): readonly Reference[] {
  const pins = Object.entries(table(content, "parts")).flatMap(([ref, part]) =>
    Object.keys(part.pins as object).map((pin) => `${ref}.${pin}`),
  );
  const places = new Set([...netsOf(content), ...pins]);
  return referencesOf(content).filter(({ red, black }) => places.has(red) && places.has(black));
}

/** The changed content, if it reads; tables that were not there and are empty stay away. */
function checked(content: BoardContent, changes: BoardContent): Parsed<BoardContent> {
  const given = Object.entries(changes).filter(
    ([key, value]) => key in content || Object.keys(value as object).length > 0,
  );
  const merged = { ...content, ...Object.fromEntries(given) };
  const changed = "references" in merged ? { ...merged, references: stillThere(merged) } : merged;
  const board = parseBoard(changed);
  return board.ok ? { ok: true, value: changed } : board;
}

function renamedKeys(entries: Entries, from: string, to: string): Entries {
  return Object.fromEntries(Object.entries(entries).map(([key, value]) => [key === from ? to : key, value]));
}

/** Every entry with the fields in `fields` that say `from` saying `to`. */
function pointedTo(entries: Entries, fields: readonly string[], from: string, to: string): Entries {
  const changed = (entry: Record<string, unknown>) =>
    Object.fromEntries(
      Object.entries(entry).map(([field, value]) => [
        field,
        fields.includes(field) && value === from ? to : value,
      ]),
    );
  return Object.fromEntries(Object.entries(entries).map(([key, entry]) => [key, changed(entry)]));
}

/** Gives a part, or else a net, another name. A name that both bear is the part's; `net` asks for the net. */
export function rename(
  content: BoardContent,
  from: string,
  to: string,
  what: "either" | "net" = "either",
): Parsed<BoardContent> {
  if (!NAME.test(to)) return refused(said`${quoted(to)} is not a name (letters, digits, _ + - only)`);
  const refs = Object.keys(table(content, "parts"));
  const nets = netsOf(content);
  if (what === "either" && refs.includes(from)) {
    if (refs.includes(to)) return refused(said`there is a part ${quoted(to)} already`);
    return checked(content, {
      parts: renamedKeys(table(content, "parts"), from, to),
      rails: pointedTo(table(content, "rails"), ["from"], from, to),
      references: readAt(content, (place) =>
        place.startsWith(`${from}.`) ? `${to}${place.slice(from.length)}` : place,
      ),
    });
  }
  if (!nets.includes(from))
    return refused(said`there is no part or net ${quoted(from)}${suggestion(from, [...refs, ...nets])}`);
  if (nets.includes(to))
    return refused(
      said`there is a net ${quoted(to)} already; to join two nets, put the pins on it one by one`,
    );
  const renamed = (value: unknown) => (value === from ? to : value);
  const supply = content.supply as Record<string, unknown>;
  const parts = Object.entries(table(content, "parts")).map(([ref, part]) => [
    ref,
    {
      ...part,
      pins: Object.fromEntries(Object.entries(part.pins as object).map(([pin, net]) => [pin, renamed(net)])),
    },
  ]);
  return checked(content, {
    supply: { ...supply, at: (supply.at as unknown[]).map(renamed) },
    zero: renamed(content.zero),
    nets: renamedKeys(table(content, "nets"), from, to),
    parts: Object.fromEntries(parts),
    rails: pointedTo(table(content, "rails"), ["net", "against"], from, to),
    points: pointedTo(table(content, "points"), ["net"], from, to),
    references: readAt(content, (place) => (place === from ? to : place)),
  });
}

/** Adds a part at the end of the file. `part` is what a board file says of it. */
export function addPart(content: BoardContent, ref: string, part: BoardContent): Parsed<BoardContent> {
  const parts = table(content, "parts");
  if (Object.hasOwn(parts, ref)) return refused(said`there is a part ${quoted(ref)} already`);
  return checked(content, { parts: { ...parts, [ref]: part } });
}

/** Takes a part off the board; labels, points and the source of a rail that it leaves behind go with it. */
export function removePart(content: BoardContent, ref: string): Parsed<BoardContent> {
  const parts = table(content, "parts");
  if (!Object.hasOwn(parts, ref)) return refused(noPart(ref, parts));
  const { [ref]: _, ...left } = parts;
  const nets = new Set(netsOf({ parts: left }));
  const { at } = content.supply as { readonly at: readonly string[] };
  const held = [...at, String(content.zero)].find((net) => !nets.has(net));
  if (held !== undefined) {
    return refused(
      held === content.zero
        ? said`${ref} holds the net ${quoted(held)}, against which rails are measured; put another part on it first`
        : said`${ref} holds the net ${quoted(held)}, on which the supply comes in; put another part on it first`,
    );
  }
  const keep = (entries: Entries, stays: (key: string, entry: Record<string, unknown>) => boolean) =>
    Object.fromEntries(Object.entries(entries).filter(([key, entry]) => stays(key, entry)));
  const rails = Object.entries(table(content, "rails")).map(([name, rail]) => {
    const { from, ...rest } = rail;
    return [name, from === ref ? rest : rail];
  });
  return checked(content, {
    parts: left,
    nets: keep(table(content, "nets"), (net) => nets.has(net)),
    points: keep(table(content, "points"), (_name, point) => nets.has(String(point.net))),
    rails: Object.fromEntries(rails),
  });
}

/** Puts one pin (`Q1.g`) on another net, which is made where it is new. */
export function rewire(content: BoardContent, place: string, net: string): Parsed<BoardContent> {
  const parts = table(content, "parts");
  const dot = place.indexOf(".");
  const [ref, pin] = [place.slice(0, dot), place.slice(dot + 1)];
  if (dot < 1) return refused(said`${quoted(place)} is no pin; write it as Q1.g`);
  if (!Object.hasOwn(parts, ref)) return refused(noPart(ref, parts));
  const pins = parts[ref].pins as Record<string, string>;
  if (!Object.hasOwn(pins, pin))
    return refused(said`${ref} has no pin ${quoted(pin)}${suggestion(pin, Object.keys(pins))}`);
  return checked(content, { parts: { ...parts, [ref]: { ...parts[ref], pins: { ...pins, [pin]: net } } } });
}

/** Somebody has looked at the part and it is as drawn: it is no longer assumed. */
export function markSeen(content: BoardContent, ref: string): Parsed<BoardContent> {
  const parts = table(content, "parts");
  if (!Object.hasOwn(parts, ref)) return refused(noPart(ref, parts));
  const { assumed: _, ...seen } = parts[ref];
  return checked(content, { parts: { ...parts, [ref]: seen } });
}

/** Nobody has looked at the part, or not at this board's: a reading through it may be further off. */
export function markAssumed(content: BoardContent, ref: string): Parsed<BoardContent> {
  const parts = table(content, "parts");
  if (!Object.hasOwn(parts, ref)) return refused(noPart(ref, parts));
  return checked(content, { parts: { ...parts, [ref]: { ...parts[ref], assumed: true } } });
}

/** Gives a field of a part's value another value; null takes it away, so that the kind's usual one counts. */
export function setValue(
  content: BoardContent,
  ref: string,
  field: string,
  value: number | string | boolean | null,
): Parsed<BoardContent> {
  const parts = table(content, "parts");
  if (!Object.hasOwn(parts, ref)) return refused(noPart(ref, parts));
  const { value: before, ...part } = parts[ref];
  const { [field]: _, ...rest } = (before ?? {}) as Record<string, unknown>;
  const fields = value === null ? rest : { ...(before as object | undefined), [field]: value };
  const changed = Object.keys(fields).length === 0 ? part : { ...parts[ref], value: fields };
  return checked(content, { parts: { ...parts, [ref]: changed } });
}

const noPart = (ref: string, parts: Entries) =>
  said`there is no part ${quoted(ref)}${suggestion(ref, Object.keys(parts))}`;
