import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plain } from "../messages/said.ts";
import { csvRows, csvText } from "./csv-text.ts";

const cellsOf = (text: string) => csvRows(text).map(({ line, cells }) => [line, ...cells]);

describe("comma-separated text", () => {
  it("is read with the line of each row, quotes and line breaks within them", () => {
    expect(cellsOf('\ufeffname,place\r\n"a, ""b""","x\ny"\r\n\r\nlast,')).toEqual([
      [1, "name", "place"],
      [2, 'a, "b"', "x\ny"],
      [5, "last", ""],
    ]);
  });

  it("may be parted by semicolons, as where commas are decimal", () => {
    expect(cellsOf("name;price\n1N4007;0,05\n")).toEqual([
      [1, "name", "price"],
      [2, "1N4007", "0,05"],
    ]);
  });

  it("loses one row to a broken quote, not those after it", () => {
    const rows = csvRows('a,b\n1,"open\n2,3\n"x"y,4\n5,6 inch"\n7,8');
    expect(rows.map(({ line, problem }) => [line, problem === null ? null : plain(problem)])).toEqual([
      [1, null],
      [2, "a quote ends in the middle of a cell"],
      [3, null],
      [4, "a quote ends in the middle of a cell"],
      [5, null],
      [6, null],
    ]);
    expect(plain(csvRows('a\n"never\nb').at(1)?.problem ?? "")).toBe("a quote is opened and not closed");
    expect(csvRows('a\n"never\nb').at(2)?.cells).toEqual(["b"]);
  });

  it("is read back as it was written, whatever stands in the cells", () => {
    const cell = fc.string({ unit: fc.constantFrom("a", "0", ",", ";", '"', "\n", "\r\n", " ", "\u00b5") });
    const readBack = fc.property(
      fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), { minLength: 1, maxLength: 6 }),
      (rows) => {
        const headed = [["name", "place"], ...rows];
        const kept = headed.filter((row) => row.some((one) => one.trim() !== ""));
        expect(csvRows(csvText(headed)).map(({ cells }) => cells)).toEqual(kept);
      },
    );
    fc.assert(readBack, { seed: 5, numRuns: 300 });
  });

  it("never makes the reader throw or stop, whatever the text", () => {
    const ends = fc.property(fc.string({ unit: fc.constantFrom('"', ",", "\n", "\r", "x") }), (text) => {
      const rows = csvRows(text);
      expect(rows.map(({ line }) => line)).toEqual([...rows.map(({ line }) => line)].sort((a, b) => a - b));
    });
    fc.assert(ends, { seed: 6, numRuns: 500 });
  });
});
