import { said } from "../messages/said.ts";
import { quoted } from "./nearest.ts";
import type { Parsed } from "./outcome.ts";

/** The largest board or job file that is read: five million characters, over a hundred times the largest shipped board. */
export const MOST_CHARACTERS = 5_000_000;
const MOST_DEPTH = 64;
const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const PLAIN_TEXT = /[ !#-[\]-\uffff]*/y;
const SPACE = /[ \t\n\r]*/y;
const ESCAPES: ReadonlyMap<string, string> = new Map([
  ['"', '"'],
  ["\\", "\\"],
  ["/", "/"],
  ["b", "\b"],
  ["f", "\f"],
  ["n", "\n"],
  ["r", "\r"],
  ["t", "\t"],
]);

/** Thrown inside this file only and turned into a value at its door. */
class NotJson extends Error {
  readonly at: number;
  constructor(at: number, what: string) {
    super(what);
    this.at = at;
  }
}

/**
 * RFC 8259, with three refusals that the built-in parser does not make: a field written twice in one object, nesting
 * deeper than any board needs, and never an error without its line.
 */
class Reader {
  readonly #text: string;
  #at = 0;

  constructor(text: string) {
    this.#text = text;
  }

  whole(): unknown {
    const value = this.#value(0);
    this.#space();
    if (this.#at < this.#text.length) throw this.#unexpected(said`after the end of the value`);
    return value;
  }

  #match(pattern: RegExp): string {
    pattern.lastIndex = this.#at;
    const matched = pattern.exec(this.#text)?.[0] ?? "";
    this.#at += matched.length;
    return matched;
  }

  #space(): void {
    this.#match(SPACE);
  }

  #unexpected(where: string): NotJson {
    const next = this.#text.slice(this.#at, this.#at + 1);
    return new NotJson(
      this.#at,
      next === "" ? said`the text ends ${where}` : said`unexpected ${quoted(next)} ${where}`,
    );
  }

  #value(depth: number): unknown {
    if (depth > MOST_DEPTH) throw new NotJson(this.#at, said`nested deeper than ${MOST_DEPTH}`);
    this.#space();
    const first = this.#text[this.#at];
    if (first === "{") return this.#object(depth);
    if (first === "[") return this.#list(depth);
    if (first === '"') return this.#string();
    for (const [word, value] of [
      ["true", true],
      ["false", false],
      ["null", null],
    ] as const) {
      if (this.#text.startsWith(word, this.#at)) {
        this.#at += word.length;
        return value;
      }
    }
    const digits = this.#match(NUMBER);
    if (digits === "") throw this.#unexpected(said`where a value should be`);
    return Number(digits);
  }

  #object(depth: number): unknown {
    const fields: Record<string, unknown> = {};
    this.#at++;
    this.#space();
    if (this.#text[this.#at] === "}") {
      this.#at++;
      return fields;
    }
    for (;;) {
      this.#space();
      const start = this.#at;
      if (this.#text[this.#at] !== '"') throw this.#unexpected(said`where a field name in quotes should be`);
      const key = this.#string();
      if (Object.hasOwn(fields, key))
        throw new NotJson(start, said`the field ${quoted(key)} stands twice in one object`);
      this.#space();
      if (this.#text[this.#at] !== ":")
        throw this.#unexpected(said`where the colon after ${quoted(key)} should be`);
      this.#at++;
      const value = this.#value(depth + 1);
      // An own property whatever its name: `__proto__` must not reach the prototype.
      Object.defineProperty(fields, key, { value, writable: true, enumerable: true, configurable: true });
      this.#space();
      const next = this.#text[this.#at];
      if (next !== "," && next !== "}") throw this.#unexpected(said`where a comma or } should be`);
      this.#at++;
      if (next === "}") return fields;
    }
  }

  #list(depth: number): unknown {
    const items: unknown[] = [];
    this.#at++;
    this.#space();
    if (this.#text[this.#at] === "]") {
      this.#at++;
      return items;
    }
    for (;;) {
      items.push(this.#value(depth + 1));
      this.#space();
      const next = this.#text[this.#at];
      if (next !== "," && next !== "]") throw this.#unexpected(said`where a comma or ] should be`);
      this.#at++;
      if (next === "]") return items;
    }
  }

  #string(): string {
    let out = "";
    this.#at++;
    for (;;) {
      out += this.#match(PLAIN_TEXT);
      const next = this.#text[this.#at];
      if (next === '"') {
        this.#at++;
        return out;
      }
      if (next !== "\\") throw this.#unexpected(said`inside a text in quotes`);
      out += this.#escape();
    }
  }

  #escape(): string {
    const letter = this.#text[this.#at + 1] ?? "";
    if (letter === "u") {
      const hex = this.#text.slice(this.#at + 2, this.#at + 6);
      if (!/^[0-9a-fA-F]{4}$/.test(hex))
        throw new NotJson(this.#at, said`${"\\u"} needs four hexadecimal digits`);
      this.#at += 6;
      return String.fromCharCode(Number.parseInt(hex, 16));
    }
    const plain = ESCAPES.get(letter);
    if (plain === undefined)
      throw new NotJson(this.#at, said`${quoted(`\\${letter}`)} is no escape that JSON knows`);
    this.#at += 2;
    return plain;
  }
}

/**
 * Reads the text of a board, job or checks file. A problem is one line: `FILE: line 12: what is wrong`. Numbers too large to
 * hold come through as infinities, so that the field's own reader can name the field.
 */
export function parseJsonText(text: string, fileName: string): Parsed<unknown> {
  if (text.length > MOST_CHARACTERS) {
    const size = (text.length / 1e6).toFixed(1);
    return {
      ok: false,
      problem: said`${fileName}: ${size} MB is too large; a board or job file stays under 5 MB`,
    };
  }
  const body = text.startsWith("\ufeff") ? text.slice(1) : text;
  try {
    return { ok: true, value: new Reader(body).whole() };
  } catch (error) {
    if (!(error instanceof NotJson)) throw error;
    const line = body.slice(0, error.at).split("\n").length;
    return { ok: false, problem: said`${fileName}: line ${line}: not JSON: ${error.message}` };
  }
}
