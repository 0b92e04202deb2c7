import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plain } from "../messages/said.ts";
import { parseJsonText } from "./json-text.ts";

function problemOf(text: string): string {
  const parsed = parseJsonText(text, "board.json");
  return parsed.ok ? "none" : plain(parsed.problem);
}

describe("the text of a board or job file", () => {
  it("is read as the built-in parser reads it, whatever the value", () => {
    const sameAsBuiltIn = fc.property(fc.json(), (text) => {
      const parsed = parseJsonText(text, "any.json");
      expect(parsed.ok && JSON.stringify(parsed.value)).toBe(JSON.stringify(JSON.parse(text)));
    });
    fc.assert(sameAsBuiltIn, { seed: 7, numRuns: 300 });
  });

  it("never makes the reader throw, whatever stands in it", () => {
    const neverThrows = fc.property(fc.string({ unit: "binary" }), (text) => {
      const parsed = parseJsonText(text, "any.json");
      if (!parsed.ok) expect(parsed.problem.startsWith("any.json: line ")).toBe(true);
    });
    fc.assert(neverThrows, { seed: 8, numRuns: 500 });
  });

  it("names the line of a mistake", () => {
    expect(problemOf('{\n "a": 1,\n "b": }')).toBe(
      'board.json: line 3: not JSON: unexpected "}" where a value should be',
    );
    expect(problemOf('{"a": 1')).toBe(
      "board.json: line 1: not JSON: the text ends where a comma or } should be",
    );
    expect(problemOf("")).toBe("board.json: line 1: not JSON: the text ends where a value should be");
    expect(problemOf('{"a": 1} x')).toContain('unexpected "x" after the end');
    expect(problemOf('{"a": "\\q"}')).toContain("no escape that JSON knows");
    expect(problemOf('{"a": "x\ny"}')).toContain("inside a text in quotes");
  });

  it("refuses a field that stands twice, which would otherwise silently lose one", () => {
    expect(problemOf('{"C1": 1,\n"C1": 2}')).toBe(
      'board.json: line 2: not JSON: the field "C1" stands twice in one object',
    );
  });

  it("refuses NaN, which is no JSON", () => {
    expect(problemOf('{"reading": NaN}')).toContain('unexpected "N"');
  });

  it("refuses 50 MB at once, and nesting that no board needs", () => {
    expect(problemOf(" ".repeat(50_000_000))).toBe(
      "board.json: 50.0 MB is too large; a board or job file stays under 5 MB",
    );
    expect(problemOf("[".repeat(4_000_000))).toContain("nested deeper than 64");
    expect(problemOf('{"a":'.repeat(500_000))).toContain("nested deeper than 64");
  });

  it("keeps __proto__ as a name like any other", () => {
    const parsed = parseJsonText('{"__proto__": {"polluted": true}}', "x.json");
    expect(parsed.ok && Object.keys(parsed.value as object)).toEqual(["__proto__"]);
    expect(parsed.ok && (parsed.value as { polluted?: boolean }).polluted).toBeUndefined();
  });

  it("lets a byte order mark stand at the head", () => {
    expect(parseJsonText('\ufeff{"a": 1}', "x.json")).toEqual({ ok: true, value: { a: 1 } });
  });
});
