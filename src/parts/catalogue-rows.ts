/** A catalogue file's rows made into lines of stock: every row is read or refused with all its reasons, never half of it. */

import type { PartKind } from "../board/board.ts";
import { KIND_NAMES } from "../board/kinds.ts";
import { said } from "../messages/said.ts";
import type { CsvRow } from "../units/csv-text.ts";
import { nearest, quoted } from "../units/nearest.ts";
import type { Parsed } from "../units/outcome.ts";
import { type CatalogueType, type StockLine, stockKey } from "./catalogue.ts";
import { ratingCell, readRating } from "./rating-text.ts";
import { RATINGS, type RatingName, type Ratings } from "./ratings.ts";

/** Columns that are not ratings, in the order in which a file is written. */
const OWN_COLUMNS = ["name", "kind", "count", "place", "price", "supplier", "used", "donor"] as const;
type OwnColumn = (typeof OWN_COLUMNS)[number];
export type Column = OwnColumn | RatingName;

/** Every column that a catalogue file may have. */
export const COLUMNS: readonly Column[] = [...OWN_COLUMNS, ...RATINGS.keys()];

export interface RefusedRow {
  readonly line: number;
  readonly name: string;
  readonly reasons: readonly string[];
}

export interface ReadCatalogue {
  readonly lines: readonly { readonly line: number; readonly stock: StockLine }[];
  readonly refused: readonly RefusedRow[];
}

const MOST_NAME = 80;

/** `Hot Amps`, `hot_amps` and `hotAmps` are one column. */
const bare = (header: string) => header.toLowerCase().replace(/[\s_-]+/g, "");
const BY_BARE: ReadonlyMap<string, Column> = new Map(COLUMNS.map((name) => [bare(name), name]));

/** The names of the header line as columns. A column that is not known, or twice there, refuses the whole file: half of a file would go unread. */
export function readHeader(names: readonly string[]): Parsed<readonly Column[]> {
  const columns: Column[] = [];
  for (const cell of names) {
    const column = BY_BARE.get(bare(cell));
    const close = nearest(bare(cell), BY_BARE.keys());
    if (column === undefined) return { ok: false, problem: strangeColumn(cell, close) };
    if (columns.includes(column))
      return { ok: false, problem: said`the column ${quoted(column)} stands twice` };
    columns.push(column);
  }
  if (!columns.includes("name"))
    return {
      ok: false,
      problem: said`there is no column "name"; the first line names the columns`,
    };
  return { ok: true, value: columns };
}

function strangeColumn(cell: string, close: string | null): string {
  return close === null
    ? said`${quoted(cell)} is no column of a catalogue`
    : said`${quoted(cell)} is no column of a catalogue; did you mean ${quoted(BY_BARE.get(close) ?? "")}?`;
}

type Cells = ReadonlyMap<OwnColumn | RatingName, string>;

/** Collects what is wrong with one row. */
class Row {
  readonly reasons: string[] = [];
  readonly #cells: Cells;

  constructor(cells: Cells) {
    this.#cells = cells;
  }

  text(column: OwnColumn): string | null {
    const text = this.#cells.get(column) ?? "";
    return text === "" ? null : text;
  }

  number(column: "count" | "price", whole: boolean): number | null {
    const text = this.text(column);
    if (text === null) return null;
    const value = Number(text.replace(",", "."));
    const thousands = /,\d{3}$/.test(text);
    const fine = /^\d+([.,]\d+)?$/.test(text) && !thousands && (!whole || Number.isSafeInteger(value));
    if (fine) return value;
    if (thousands) {
      this.reasons.push(said`${column}: ${quoted(text)}: a thousand or a fraction? Write 1200, or 1.2`);
      return null;
    }
    this.reasons.push(
      whole
        ? said`${column}: ${quoted(text)}: expected a whole number of 0 or more`
        : said`${column}: ${quoted(text)}: expected an amount of 0 or more`,
    );
    return null;
  }

  flag(column: "used"): boolean {
    const text = this.text(column)?.toLowerCase() ?? "no";
    if (["yes", "y", "true", "1", "x"].includes(text)) return true;
    if (!["no", "n", "false", "0"].includes(text))
      this.reasons.push(said`${column}: ${quoted(text)}: expected yes or no`);
    return false;
  }

  ratings(): Ratings {
    const ratings: Record<string, unknown> = {};
    for (const [column, text] of this.#cells) {
      if (text === "" || !RATINGS.has(column as RatingName)) continue;
      const read = readRating(text, column as RatingName);
      if (read.ok) ratings[column] = read.value;
      else this.reasons.push(said`${column}: ${read.problem}`);
    }
    return ratings;
  }
}

/** The kind a row names, or that of the same name before it. */
function kindOfRow(row: Row, before: CatalogueType | undefined): PartKind | null {
  const text = row.text("kind");
  if (text === null) {
    if (before !== undefined) return before.kind;
    row.reasons.push(said`kind: is missing, and no row above and no standard type has this name`);
    return null;
  }
  const kind = KIND_NAMES.find((one) => one === text.toLowerCase());
  const close = kind === undefined ? nearest(text, KIND_NAMES) : null;
  if (kind === undefined)
    row.reasons.push(
      close === null
        ? said`kind: ${quoted(text)} is no kind of part`
        : said`kind: ${quoted(text)} is no kind of part; did you mean ${quoted(close)}?`,
    );
  else if (before !== undefined && before.kind !== kind)
    row.reasons.push(said`kind: ${quoted(text)}, but the ${before.name} known before is a ${before.kind}`);
  return kind ?? null;
}

/** What is known of types while a file is read. */
interface Types {
  /** with what the rows so far have said */
  readonly now: Map<string, CatalogueType>;
  /** ratings that no row may contradict */
  readonly fixed: ReadonlyMap<string, Ratings>;
  /** what rows of this file have said */
  readonly told: Map<string, Ratings>;
}

/** One name is one type: what two rows say of it must agree, and what is fixed stays; what was only counted before may be corrected. */
function joined(row: Row, name: string, ratings: Ratings, { now, fixed, told }: Types): Ratings {
  const [firm, before] = [fixed.get(name) ?? {}, told.get(name) ?? {}];
  for (const [rating, value] of Object.entries(ratings) as [RatingName, NonNullable<Ratings[RatingName]>][]) {
    const rule = RATINGS.get(rating);
    if (rule === undefined) continue;
    const other = (had: Ratings) => {
      const there = had[rating];
      return there === undefined || there === value ? null : ratingCell(there, rule);
    };
    const [earlier, known] = [other(before), other(firm)];
    const cell = ratingCell(value, rule);
    if (earlier !== null) row.reasons.push(said`${rating}: ${cell}, but ${name} was given ${earlier} before`);
    else if (known !== null)
      row.reasons.push(
        said`${rating}: ${cell}, but ${name} is known with ${known}; a part of other figures needs a name of its own`,
      );
  }
  return { ...now.get(name)?.ratings, ...ratings };
}

/** What one row says, and what it adds to the types known; with any reason against it, neither. */
function readRow(
  cells: Cells,
  tooMany: readonly string[],
  types: Types,
): { readonly reasons: readonly string[]; readonly stock: StockLine | null } {
  const row = new Row(cells);
  row.reasons.push(...tooMany);
  const name = row.text("name");
  if (name === null) row.reasons.push(said`name: is missing`);
  if (name !== null && name.length > MOST_NAME)
    row.reasons.push(said`name: longer than ${MOST_NAME} characters`);
  const before = name === null ? undefined : types.now.get(name);
  const kind = kindOfRow(row, before);
  const own = row.ratings();
  const ratings = name === null ? own : joined(row, name, own, types);
  const stock = {
    count: row.number("count", true),
    place: row.text("place"),
    price: row.number("price", false),
    supplier: row.text("supplier"),
    used: row.flag("used"),
    donor: row.text("donor"),
  };
  if (row.reasons.length > 0 || name === null || kind === null) return { reasons: row.reasons, stock: null };
  const type: CatalogueType = { name, kind, ratings, source: before?.source ?? null };
  types.now.set(name, type);
  types.told.set(name, { ...types.told.get(name), ...own });
  return { reasons: [], stock: { type, ...stock, used: stock.used || stock.donor !== null } };
}

/**
 * Every row below the header, one after another. A name that is known needs neither kind nor ratings. What a row refused says of a
 * name does not count for the rows after it.
 */
export class CatalogueReader {
  readonly #columns: readonly Column[];
  readonly #types: Types;
  readonly #lines: { line: number; stock: StockLine }[] = [];
  readonly #lineOf = new Map<string, number>();
  readonly #refused: RefusedRow[] = [];

  /**
   * @param known - types that no row may contradict
   * @param counted - types whose ratings a row may correct
   */
  constructor(
    columns: readonly Column[],
    known: readonly CatalogueType[],
    counted: readonly CatalogueType[] = [],
  ) {
    this.#columns = columns;
    this.#types = {
      now: new Map([...known, ...counted].map((type) => [type.name, type])),
      fixed: new Map(known.map(({ name, ratings }) => [name, ratings])),
      told: new Map(),
    };
  }

  add({ line, cells, problem }: CsvRow): void {
    const columns = this.#columns;
    const named: Cells = new Map(columns.map((column, at) => [column, (cells[at] ?? "").trim()]));
    const refuse = (reasons: readonly string[]) =>
      this.#refused.push({ line, name: named.get("name") ?? "", reasons });
    if (problem !== null) {
      refuse([problem]);
      return;
    }
    const tooMany =
      cells.length > columns.length ? [said`${cells.length} cells under ${columns.length} columns`] : [];
    const { reasons, stock } = readRow(named, tooMany, this.#types);
    const twice = stock === null ? undefined : this.#lineOf.get(stockKey(stock));
    if (twice !== undefined) refuse([said`stands in line ${twice} already, in the same place`]);
    else if (stock === null) refuse(reasons);
    else {
      this.#lineOf.set(stockKey(stock), line);
      this.#lines.push({ line, stock });
    }
  }

  read(): ReadCatalogue {
    // A later row may have told more of a type than an earlier one knew.
    const whole = ({ line, stock }: ReadCatalogue["lines"][number]) => ({
      line,
      stock: { ...stock, type: this.#types.now.get(stock.type.name) ?? stock.type },
    });
    return { lines: this.#lines.map(whole), refused: this.#refused };
  }
}

/** Lines of stock as a file has them: the columns that any line uses, then one row a line. */
export function catalogueCells(lines: readonly StockLine[]): readonly (readonly string[])[] {
  const own = (line: StockLine, column: OwnColumn): string => {
    if (column === "name" || column === "kind") return line.type[column];
    if (column === "used") return line.used ? "yes" : "";
    const value = line[column];
    return value === null ? "" : String(value);
  };
  const cell = (line: StockLine, column: Column): string => {
    const rule = RATINGS.get(column as RatingName);
    if (rule === undefined) return own(line, column as OwnColumn);
    const value = line.type.ratings[column as RatingName];
    return value === undefined ? "" : ratingCell(value, rule);
  };
  const used = COLUMNS.filter(
    (column) => column === "name" || lines.some((line) => cell(line, column) !== ""),
  );
  return [used, ...lines.map((line) => used.map((column) => cell(line, column)))];
}
