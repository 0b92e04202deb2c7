/** One change to a board of one's own, as a page sends it; and the board as that page shows it. */
import type { ValueRule } from "../board/kinds.ts";
import { KIND_NAMES, kindOf } from "../board/kinds.ts";
import { parseBoard } from "../board/parse-board.ts";
import { said } from "../messages/said.ts";
import type { Parsed } from "../units/outcome.ts";
import { PREFIXES, parseQuantity } from "../units/quantity.ts";
import {
  addPart,
  type BoardContent,
  markAssumed,
  markSeen,
  removePart,
  rename,
  rewire,
  setValue,
} from "./edit-board.ts";

export type BoardChange =
  | { readonly do: "name"; readonly name: string }
  | { readonly do: "rename-part" | "rename-net"; readonly from: string; readonly to: string }
  | {
      readonly do: "add";
      readonly ref: string;
      readonly kind: string;
      readonly pins: Readonly<Record<string, string>>;
    }
  | { readonly do: "remove"; readonly ref: string }
  | { readonly do: "rewire"; readonly place: string; readonly net: string }
  | { readonly do: "seen"; readonly ref: string; readonly seen: boolean }
  /** `text` as typed, such as `4k7`; empty takes the field away */
  | { readonly do: "value"; readonly ref: string; readonly field: string; readonly text: string };

/** The board with the change, or one line why not. */
export function changedBoard(content: BoardContent, change: BoardChange): Parsed<BoardContent> {
  switch (change.do) {
    case "name":
      return named(content, change.name.trim());
    case "rename-part":
      return rename(content, change.from, change.to.trim());
    case "rename-net":
      return rename(content, change.from, change.to.trim(), "net");
    case "add":
      return addPart(content, change.ref.trim(), { kind: change.kind, pins: change.pins });
    case "remove":
      return removePart(content, change.ref);
    case "rewire":
      return rewire(content, change.place, change.net.trim());
    case "seen":
      return change.seen ? markSeen(content, change.ref) : markAssumed(content, change.ref);
    case "value":
      return valueChanged(content, change.ref, change.field, change.text.trim());
  }
}

/** Another name for the same board: it stays known by what it was known by. */
function named(content: BoardContent, name: string): Parsed<BoardContent> {
  if (name === "") return { ok: false, problem: said`a board needs a name` };
  if (name === content.name) return { ok: true, value: content };
  const { format, name: _, identity = content.name, ...rest } = content;
  return { ok: true, value: { format, name, identity, ...rest } };
}

function valueChanged(content: BoardContent, ref: string, field: string, text: string): Parsed<BoardContent> {
  if (text === "") return setValue(content, ref, field, null);
  const part = (content.parts as Readonly<Record<string, { readonly kind?: unknown }>>)[ref];
  const kind = KIND_NAMES.find((name) => name === part?.kind);
  const rule = kind === undefined ? undefined : kindOf(kind).value.get(field);
  if (rule?.reads === "flag") return setValue(content, ref, field, text === "true");
  if (rule?.reads !== "number") return setValue(content, ref, field, text);
  const percent = /^([\d.,]+)\s*%$/.exec(text)?.[1];
  const read = parseQuantity(percent === undefined ? text : `${percent}`);
  if (!read.ok || typeof read.value !== "number")
    return {
      ok: false,
      problem: said`${ref}: ${field}: "${text}" is no figure; write it as 4k7, 330u or 0.05`,
    };
  return setValue(content, ref, field, percent === undefined ? read.value : read.value / 100);
}

export interface ValueView {
  readonly field: string;
  /** as one would type it; empty: the kind's usual one counts */
  readonly text: string;
  /** empty where it is a figure */
  readonly words: readonly string[];
}

export interface PartView {
  readonly ref: string;
  readonly kind: string;
  readonly stage: string;
  readonly assumed: boolean;
  readonly pins: readonly { readonly pin: string; readonly net: string }[];
  readonly values: readonly ValueView[];
}

/** A board of one's own as the page lists it. Plain data, structured-clone safe. */
export interface OwnBoardView {
  readonly name: string;
  readonly parts: readonly PartView[];
  readonly nets: readonly { readonly name: string; readonly pins: number }[];
  /** what a part may be, with the pins that it must have */
  readonly kinds: readonly {
    readonly kind: string;
    readonly words: string;
    readonly pins: readonly string[];
  }[];
}

/** What the page shows of a board; a problem where it does not read as one. */
export function ownBoardView(content: BoardContent): Parsed<OwnBoardView> {
  const read = parseBoard(content);
  if (!read.ok) return read;
  const board = read.value;
  const pins = new Map<string, number>([...board.nets.keys()].map((net) => [net, 0]));
  for (const part of board.parts.values())
    for (const net of part.pins.values()) pins.set(net, (pins.get(net) ?? 0) + 1);
  const given = content.parts as Readonly<
    Record<string, { readonly value?: Readonly<Record<string, unknown>> }>
  >;
  return {
    ok: true,
    value: {
      name: board.name,
      parts: [...board.parts.values()].map((part) => ({
        ref: part.ref,
        kind: part.kind,
        stage: part.stage ?? "",
        assumed: part.assumed,
        pins: [...part.pins].map(([pin, net]) => ({ pin, net })),
        values: [...kindOf(part.kind).value].flatMap(([field, rule]) =>
          valueView(field, rule, given[part.ref]?.value?.[field]),
        ),
      })),
      nets: [...pins].map(([name, count]) => ({ name, pins: count })),
      kinds: KIND_NAMES.map((kind) => ({ kind, words: kindOf(kind).words, pins: kindOf(kind).pins })),
    },
  };
}

function valueView(field: string, rule: ValueRule, value: unknown): readonly ValueView[] {
  if (rule.reads === "windings" || rule.reads === "floating") return [];
  const words = rule.reads === "word" ? rule.words : rule.reads === "flag" ? ["true", "false"] : [];
  const text = typeof value === "number" ? typedFigure(value) : value === undefined ? "" : String(value);
  return [{ field, text, words }];
}

/** 4700 as `4.7k`, 330e-6 as `330u`: what a person types, and exactly the number, else all its digits. */
function typedFigure(value: number): string {
  const size = Math.abs(value);
  const [power, letter] = PREFIXES.find(([exponent]) => size >= 10 ** exponent * 0.9999999) ?? [0, ""];
  const text = `${Number((value / 10 ** power).toPrecision(12))}${letter}`;
  const read = parseQuantity(text);
  return read.ok && read.value === value ? text : String(value);
}
