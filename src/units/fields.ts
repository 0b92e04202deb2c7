/**
 * Reading fields out of a value that came from outside. Every reader takes the path it stands at and reports the first
 * thing that is wrong there; after a problem the values returned are placeholders that the caller throws away.
 */
import { said } from "../messages/said.ts";
import { quoted, suggestion } from "./nearest.ts";
import type { Parsed } from "./outcome.ts";

/** References, net, pin, winding, rail and point names. */
export const NAME = /^[A-Za-z0-9_+-]+$/;

/** Holds the first problem found, as `path: what is wrong and what would be right`. */
export class Problems {
  #first: string | null = null;

  add(path: string, what: string): void {
    this.#first ??= path === "" ? what : `${path}: ${what}`;
  }

  get first(): string | null {
    return this.#first;
  }

  /** The value, unless a problem was reported while it was read. */
  outcome<T>(value: T): Parsed<T> {
    return this.#first === null ? { ok: true, value } : { ok: false, problem: this.#first };
  }
}

/** `parts` and `BR1` make `parts.BR1`; a key that is no name is quoted, so that an error stays one short line. */
function below(path: string, key: string): string {
  const shown = key.split(".").every((name) => NAME.test(name)) && key.length <= 100 ? key : quoted(key);
  return path === "" ? shown : `${path}.${shown}`;
}

/** What a value is, for "expected a number, found ...". */
export function found(input: unknown): string {
  if (input === undefined) return "nothing";
  if (input === null) return "null";
  if (Array.isArray(input)) return said`a list of ${input.length}`;
  if (typeof input === "object") return said`an object`;
  if (typeof input === "string") return quoted(input);
  if (typeof input === "function") return said`a function`;
  return String(input);
}

/** The own fields of one object, with its path. Names such as `__proto__` are keys like any other. */
export class Fields {
  readonly path: string;
  readonly #problems: Problems;
  readonly #own: ReadonlyMap<string, unknown>;

  constructor(problems: Problems, path: string, input: unknown) {
    this.path = path;
    this.#problems = problems;
    const plain = typeof input === "object" && input !== null && !Array.isArray(input);
    if (!plain) problems.add(path, said`expected an object, found ${found(input)}`);
    this.#own = new Map(plain ? Object.entries(input) : []);
  }

  get keys(): readonly string[] {
    return [...this.#own.keys()];
  }

  at(key: string): string {
    return below(this.path, key);
  }

  has(key: string): boolean {
    return this.#own.has(key);
  }

  raw(key: string): unknown {
    return this.#own.get(key);
  }

  complain(key: string, what: string): void {
    this.#problems.add(this.at(key), what);
  }

  /** Refuses every field that is not in `known`, naming it and the nearest that is. */
  only(known: readonly string[], of: string): void {
    for (const key of this.#own.keys()) {
      if (!known.includes(key))
        this.complain(key, `${said`unknown field of ${of}`}${suggestion(key, known)}`);
    }
  }

  /** Refuses the object where one of these fields is missing. */
  require(...keys: readonly string[]): void {
    for (const key of keys) if (!this.#own.has(key)) this.complain(key, said`is missing`);
  }

  object(key: string): Fields {
    return new Fields(this.#problems, this.at(key), this.#own.get(key));
  }

  list(key: string): readonly unknown[] {
    const input = this.#own.get(key);
    if (Array.isArray(input)) return input;
    this.complain(key, said`expected a list, found ${found(input)}`);
    return [];
  }

  text(key: string): string | undefined {
    if (!this.#own.has(key)) return undefined;
    const input = this.#own.get(key);
    if (typeof input === "string") return input;
    this.complain(key, said`expected text, found ${found(input)}`);
    return "";
  }

  flag(key: string): boolean | undefined {
    if (!this.#own.has(key)) return undefined;
    const input = this.#own.get(key);
    if (typeof input === "boolean") return input;
    this.complain(key, said`expected true or false, found ${found(input)}`);
    return false;
  }

  /** A field that says something only by being `true`. */
  mark(key: string): true | undefined {
    if (!this.#own.has(key)) return undefined;
    if (this.#own.get(key) !== true)
      this.complain(key, said`expected true, or no such field, found ${found(this.#own.get(key))}`);
    return true;
  }

  /** One of a closed list of words. */
  word<W extends string>(key: string, words: readonly W[]): W | undefined {
    if (!this.#own.has(key)) return undefined;
    const input = this.#own.get(key);
    const word = words.find((known) => known === input);
    if (word !== undefined) return word;
    const why = typeof input === "string" ? suggestion(input, words) : said`; known: ${words.join(" ")}`;
    this.complain(key, said`${found(input)} is not known here${why}`);
    return words[0];
  }

  name(key: string): string | undefined {
    const text = this.text(key);
    if (text !== undefined && !NAME.test(text))
      this.complain(key, said`${quoted(text)} is not a name (letters, digits, _ + - only)`);
    return text;
  }

  /** A finite number within the bounds; -0 is read as 0. */
  number(key: string, bounds: Bounds = {}): number | undefined {
    if (!this.#own.has(key)) return undefined;
    return readNumber(this.#problems, this.at(key), this.#own.get(key), bounds);
  }
}

export interface Bounds {
  readonly above?: number;
  readonly least?: number;
  readonly most?: number;
  readonly below?: number;
}

/** A finite number within the bounds, -0 read as 0; a placeholder 1 where it is none. */
export function readNumber(problems: Problems, path: string, input: unknown, bounds: Bounds = {}): number {
  if (typeof input !== "number") {
    problems.add(path, said`expected a number, found ${found(input)}`);
    return 1;
  }
  if (!Number.isFinite(input)) {
    problems.add(
      path,
      said`expected a number that can be held, found ${Number.isNaN(input) ? "NaN" : said`one that is too large`}`,
    );
    return 1;
  }
  const { above, least, most, below: under } = bounds;
  if (above !== undefined && !(input > above))
    problems.add(path, said`must be above ${above}, found ${input}`);
  if (least !== undefined && !(input >= least))
    problems.add(path, said`must be ${least} or more, found ${input}`);
  if (most !== undefined && !(input <= most))
    problems.add(path, said`must be ${most} or less, found ${input}`);
  if (under !== undefined && !(input < under))
    problems.add(path, said`must be below ${under}, found ${input}`);
  return input === 0 ? 0 : input;
}

/** The given fields without those that are undefined, as exact optional properties want it. */
export function present<T extends object>(fields: { [K in keyof T]: T[K] | undefined }): T {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as T;
}
