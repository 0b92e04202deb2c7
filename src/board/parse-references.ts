import { said } from "../messages/said.ts";
import { Fields, type Problems } from "../units/fields.ts";
import { quoted } from "../units/nearest.ts";
import type { CountedLog, Part, ReferenceMode, ReferenceReading } from "./board.ts";

export const REFERENCE_MODES: readonly ReferenceMode[] = ["diode", "ohms", "farads"];
const FIELDS = ["mode", "red", "black", "reading", "spread", "count"] as const;
/** More than any board has useful pairs of places. */
const MOST_REFERENCES = 2000;

/** The `references` of a board file; undefined where it has none. */
export function readReferences(
  file: Fields,
  nets: ReadonlyMap<string, unknown>,
  parts: readonly Part[],
  problems: Problems,
): readonly ReferenceReading[] | undefined {
  if (!file.has("references")) return undefined;
  const list = file.list("references");
  if (list.length > MOST_REFERENCES)
    file.complain("references", said`${list.length} are too many; the most is ${MOST_REFERENCES}`);
  const places = new Set([
    ...nets.keys(),
    ...parts.flatMap(({ ref, pins }) => [...pins.keys()].map((pin) => `${ref}.${pin}`)),
  ]);
  return list.slice(0, MOST_REFERENCES).map((item, at) => {
    const one = new Fields(problems, `${file.at("references")}[${at}]`, item);
    one.only(FIELDS, said`a reference reading`);
    one.require("mode", "red", "black", "reading", "count");
    const place = (key: "red" | "black"): string => {
      const text = one.text(key) ?? "";
      if (!places.has(text)) one.complain(key, said`there is no place ${quoted(text)}`);
      return text;
    };
    return {
      mode: one.word("mode", REFERENCE_MODES) ?? "ohms",
      red: place("red"),
      black: place("black"),
      reading: one.number("reading", { above: 0 }) ?? 1,
      spread: one.number("spread", { least: 0 }) ?? 0,
      count: one.number("count", { least: 1 }) ?? 1,
    };
  });
}

const SHA_256 = /^[0-9a-f]{64}$/;

/** The `referencesFrom` of a board file; undefined where it has none. */
export function readCountedLogs(file: Fields, problems: Problems): readonly CountedLog[] | undefined {
  if (!file.has("referencesFrom")) return undefined;
  return file.list("referencesFrom").map((item, at) => {
    const one = new Fields(problems, `${file.at("referencesFrom")}[${at}]`, item);
    one.only(["entries", "log"], "a log that was counted");
    one.require("entries", "log");
    const log = one.text("log") ?? "";
    if (!SHA_256.test(log)) one.complain("log", "expected 64 hexadecimal digits");
    return { entries: one.number("entries", { least: 1 }) ?? 1, log };
  });
}
