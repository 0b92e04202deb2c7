/**
 * A board to give away, `faultwright-pack/1`: the board file as it is, references and all, and counts of what jobs on it came to.
 * The same content makes the same bytes, and what is read and written again is the same file.
 */

import { VERDICTS } from "../bench/words.ts";
import type { Board } from "../board/board.ts";
import { parseBoard } from "../board/parse-board.ts";
import { said } from "../messages/said.ts";
import { CAUSES, SYMPTOMS } from "../priors/cause.ts";
import { Fields, NAME, Problems } from "../units/fields.ts";
import { quoted } from "../units/nearest.ts";
import type { Parsed } from "../units/outcome.ts";
import type { Outcomes, PooledOutcomes } from "./outcomes.ts";
import { type PackedPictures, readPictures } from "./packed-pictures.ts";

const PACK_FORMAT = "faultwright-pack/1";
/** No shop sees more boards of one type than this; the bound keeps nonsense out of the counts. */
const MOST_JOBS = 1_000_000;

export interface Pack {
  /** a board file's content */
  readonly board: Readonly<Record<string, unknown>>;
  readonly outcomes: PooledOutcomes;
  /** left out: none were chosen */
  readonly pictures?: PackedPictures;
}

/** The file's text. Fields stand in the order of the board file, for the order of pins can mean something there. */
export function packText({ board, outcomes, pictures }: Pack): string {
  const chosen = pictures === undefined ? {} : { pictures };
  return `${JSON.stringify({ format: PACK_FORMAT, board, outcomes, ...chosen }, null, 1)}\n`;
}

/** A file's value (already JSON) as a pack; one line where it is none. */
export function readPack(input: unknown): Parsed<Pack> {
  const problems = new Problems();
  const file = new Fields(problems, "", input);
  if (problems.first === null && file.raw("format") !== PACK_FORMAT)
    file.complain("format", said`expected ${quoted(PACK_FORMAT)}; a board file is brought as it is`);
  file.only(["format", "board", "outcomes", "pictures"], said`a packed board`);
  file.require("board", "outcomes");
  if (problems.first !== null) return { ok: false, problem: problems.first };
  const board = parseBoard(file.raw("board"));
  if (!board.ok) return { ok: false, problem: said`board: ${board.problem}` };
  const shops = file.object("outcomes");
  const outcomes = shops.keys.map((shop): [string, Outcomes] => {
    if (!NAME.test(shop)) shops.complain(shop, said`a shop's word is made of letters, digits, _ + and -`);
    return [shop, readOutcomes(shops.object(shop), [...board.value.parts.keys()])];
  });
  // The board's own value is handed on, and what was read of the counts: both in the order of the file.
  const content = file.raw("board") as Pack["board"];
  const pictures = file.has("pictures")
    ? { pictures: readPictures(file.object("pictures"), placesOf(board.value), problems) }
    : {};
  return problems.outcome({ board: content, outcomes: Object.fromEntries(outcomes), ...pictures });
}

function placesOf({ nets, parts }: Board): ReadonlySet<string> {
  const pins = [...parts.values()].flatMap((part) =>
    [...part.pins.keys()].map((pin) => `${part.ref}.${pin}`),
  );
  return new Set([...nets.keys(), ...pins]);
}

function readOutcomes(fields: Fields, refs: readonly string[]): Outcomes {
  fields.only(["jobs", "verdicts", "causes", "symptoms", "replaced"], said`counts of jobs`);
  fields.require("jobs", "verdicts", "causes", "symptoms", "replaced");
  const counts = (key: string, words: readonly string[]) => {
    const given = fields.object(key);
    given.only(words, said`counts of ${key}`);
    return Object.fromEntries(given.keys.map((word) => [word, countIn(given, word)]));
  };
  return {
    jobs: countIn(fields, "jobs"),
    verdicts: counts("verdicts", VERDICTS),
    causes: counts("causes", CAUSES),
    symptoms: counts("symptoms", SYMPTOMS),
    replaced: counts("replaced", refs),
  };
}

function countIn(fields: Fields, key: string): number {
  const count = fields.number(key, { least: 0, most: MOST_JOBS }) ?? 0;
  if (!Number.isInteger(count)) fields.complain(key, said`expected a whole number`);
  return count;
}
