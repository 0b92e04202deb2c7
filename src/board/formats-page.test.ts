import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { plain } from "../messages/said.ts";
import { KINDS } from "./kinds.ts";
import { parseBoard } from "./parse-board.ts";
import { KNOWN_STAGES } from "./stages.ts";

const PAGE = readFileSync(new URL("../../docs/formats.md", import.meta.url), "utf8");

/** The words in backquotes of one cell of a table. */
function wordsOf(cell: string): readonly string[] {
  return [...cell.matchAll(/`([^`]*)`/g)].flatMap((match) => (match[1] ?? "").split(" "));
}

describe("the page of the file formats", () => {
  it.each([...KINDS.entries()])("gives the pins and values of a %s as the reader knows them", (kind, row) => {
    const line = PAGE.split("\n").find(
      (one) => one.startsWith(`| \`${kind}\` `) && one.split("|").length === 5,
    );
    const [, , pins = "", value = ""] = (line ?? "").split("|");
    const shown = new Set(wordsOf(pins));
    for (const pin of [...row.pins, ...row.mayLeaveOut]) expect(shown).toContain(pin);
    expect(shown.size).toBe(row.pins.length + row.mayLeaveOut.length);
    const values = wordsOf(value);
    for (const field of row.value.keys()) expect(values).toContain(field);
  });

  it("names the known stages", () => {
    expect(PAGE).toContain(`\`${KNOWN_STAGES.join(" ")}\``);
  });

  it("shows a board that can be read", () => {
    const example = /```json\n(\{\n {2}"format": "faultwright-board\/1"[\s\S]*?)```/.exec(PAGE)?.[1] ?? "";
    const parsed = parseBoard(JSON.parse(example));
    expect(parsed.ok ? "read" : plain(parsed.problem)).toBe("read");
  });
});
