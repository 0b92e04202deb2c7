/** A file that somebody gave: a packed board or a bare board file, and what keeping it would change. */

import { parseBoard } from "../board/parse-board.ts";
import { said } from "../messages/said.ts";
import { parseJsonText } from "../units/json-text.ts";
import type { Parsed } from "../units/outcome.ts";
import { boardChanges, changesInWords } from "./board-changes.ts";
import { type Pack, readPack } from "./pack.ts";
import { picturesInWords } from "./packed-pictures.ts";

export interface Brought extends Pack {
  readonly title: string;
  /** one line each */
  readonly changes: readonly string[];
}

/** Reads the file; `before` is the board that it would change, null where it would be a new one. */
export function bring(text: string, fileName: string, before: Pack["board"] | null): Parsed<Brought> {
  const json = parseJsonText(text, fileName);
  if (!json.ok) return json;
  const packed = (json.value as { readonly format?: unknown } | null)?.format !== "faultwright-board/1";
  const read = packed ? readPack(json.value) : bareBoard(json.value);
  if (!read.ok) return { ok: false, problem: said`${fileName}: ${read.problem}` };
  const { board } = read.value;
  const { pictures } = read.value;
  const changes = [
    ...changesInWords(boardChanges(before, board)),
    ...(pictures === undefined ? [] : [picturesInWords(pictures)]),
  ];
  return { ok: true, value: { ...read.value, title: String(board.name), changes } };
}

function bareBoard(content: unknown): Parsed<Pack> {
  const board = parseBoard(content);
  return board.ok ? { ok: true, value: { board: content as Pack["board"], outcomes: {} } } : board;
}
