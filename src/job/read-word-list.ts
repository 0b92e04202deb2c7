import { said } from "../messages/said.ts";
import { type Fields, found, type Problems } from "../units/fields.ts";
import { quoted } from "../units/nearest.ts";

/** A list of texts without repeats, each held against `problemOf`; empty where the field is left out. */
export function readWordList(
  problems: Problems,
  fields: Fields,
  key: string,
  problemOf: (word: string) => string | null,
): readonly string[] {
  if (!fields.has(key)) return [];
  const words: string[] = [];
  for (const [index, word] of fields.list(key).entries()) {
    const path = `${fields.at(key)}[${index}]`;
    if (typeof word !== "string") {
      problems.add(path, said`expected text, found ${found(word)}`);
      continue;
    }
    const problem = words.includes(word) ? said`${quoted(word)} stands twice` : problemOf(word);
    if (problem !== null) problems.add(path, problem);
    words.push(word);
  }
  return words;
}
