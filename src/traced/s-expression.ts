/** The bracketed text that KiCad writes: lists of words and lists, each list with the line it begins on. */
import { said } from "../messages/said.ts";
import type { Parsed } from "../units/outcome.ts";

export interface List {
  readonly line: number;
  readonly items: readonly (string | List)[];
}

const TOKEN = /"((?:[^"\\]|\\.)*)"|[()]|[^\s()"]+/g;
/** No netlist nests deeper; a hostile file does. */
const DEEPEST = 100;

/** The first list of a text. A problem is one line that says where. */
export function readList(text: string): Parsed<List> {
  const open: { line: number; items: (string | List)[] }[] = [];
  let line = 1;
  let at = 0;
  for (const token of text.matchAll(TOKEN)) {
    for (; at < token.index; at++) if (text[at] === "\n") line++;
    const [word, quoted] = token;
    if (word === "(") {
      if (open.length >= DEEPEST) return { ok: false, problem: said`line ${line}: brackets nest too deep` };
      open.push({ line, items: [] });
    } else if (word === ")") {
      const closed = open.pop();
      if (closed === undefined)
        return { ok: false, problem: said`line ${line}: a bracket closes that was not opened` };
      const around = open.at(-1);
      if (around === undefined) return { ok: true, value: closed };
      around.items.push(closed);
    } else {
      const around = open.at(-1);
      if (around === undefined)
        return { ok: false, problem: said`line ${line}: expected ( at the beginning` };
      around.items.push(quoted === undefined ? word : quoted.replace(/\\(.)/g, "$1"));
    }
  }
  const left = open.at(-1);
  return {
    ok: false,
    problem: left === undefined ? said`nothing in it` : said`line ${left.line}: this bracket is not closed`,
  };
}

/** The lists in `list` that begin with `word`. */
export function listsOf(list: List, word: string): readonly List[] {
  return list.items.filter((item): item is List => typeof item !== "string" && item.items[0] === word);
}

/** The text behind `word`: `(ref "R1")` gives `R1`; null where there is none. */
export function textOf(list: List, word: string): string | null {
  const found = listsOf(list, word)[0]?.items[1];
  return typeof found === "string" ? found : null;
}
