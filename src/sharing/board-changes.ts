/** What bringing a board would change in the one that is there. */

import { canonicalJson } from "../job/same-content.ts";
import { said } from "../messages/said.ts";

type Content = Readonly<Record<string, unknown>>;

export interface BoardChanges {
  readonly added: readonly string[];
  readonly removed: readonly string[];
  /** part, and the fields of it that differ, old and new */
  readonly changed: readonly { readonly part: string; readonly words: string }[];
  /** fields of the board itself that differ, such as its name or a rail */
  readonly fields: readonly string[];
}

/** `before` null: there is no such board yet, and every part is new. Both read as boards. */
export function boardChanges(before: Content | null, after: Content): BoardChanges {
  const [old, now] = [partsOf(before ?? {}), partsOf(after)];
  const differs = (a: unknown, b: unknown) => canonicalJson(a ?? null) !== canonicalJson(b ?? null);
  const keys = [...new Set([...Object.keys(before ?? {}), ...Object.keys(after)])];
  return {
    added: Object.keys(now).filter((ref) => !Object.hasOwn(old, ref)),
    removed: Object.keys(old).filter((ref) => !Object.hasOwn(now, ref)),
    changed: Object.keys(now)
      .filter((ref) => Object.hasOwn(old, ref) && differs(old[ref], now[ref]))
      .map((part) => ({ part, words: fieldWords(old[part] ?? {}, now[part] ?? {}, differs) })),
    fields: before === null ? [] : keys.filter((key) => key !== "parts" && differs(before[key], after[key])),
  };
}

const FIELD_NAMES: Readonly<Record<string, string>> = {
  identity: said`what it is known by, whatever its name`,
  references: said`what good ones read`,
  referencesFrom: said`which logs that was taken from`,
};
const fieldName = (field: string): string => FIELD_NAMES[field] ?? field;

const partsOf = (board: Content) => (board.parts ?? {}) as Readonly<Record<string, Content>>;

function fieldWords(old: Content, now: Content, differs: (a: unknown, b: unknown) => boolean): string {
  const keys = [...new Set([...Object.keys(old), ...Object.keys(now)])];
  const shown = (value: unknown) => (value === undefined ? said`nothing` : JSON.stringify(value));
  return keys
    .filter((key) => differs(old[key], now[key]))
    .map((key) => said`${key} ${shown(old[key])} -> ${shown(now[key])}`)
    .join(", ");
}

/** The changes in words, one line each; what is alike is one line. */
export function changesInWords({ added, removed, changed, fields }: BoardChanges): readonly string[] {
  const lines = [
    ...(added.length === 0 ? [] : [said`new parts: ${added.join(" ")}`]),
    ...(removed.length === 0 ? [] : [said`parts that go: ${removed.join(" ")}`]),
    ...changed.map(({ part, words }) => said`${part}: ${words}`),
    ...(fields.length === 0 ? [] : [said`of the board itself: ${fields.map(fieldName).join(", ")}`]),
  ];
  return lines.length === 0 ? [said`nothing: it is the same board`] : lines;
}
