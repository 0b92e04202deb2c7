import { expect, test } from "vitest";
import { parseBoard } from "../board/parse-board.ts";
import { caseFigures } from "./case-figure.ts";
import { namedWays } from "./side-by-side.ts";

const board = (() => {
  const parsed = parseBoard({
    format: "faultwright-board/1",
    name: "rail",
    family: "rail",
    supply: { kind: "dc", volts: 24, at: ["VIN", "GND"] },
    zero: "GND",
    parts: {
      F1: { kind: "fuse", pins: { "1": "VIN", "2": "V15" } },
      R1: { kind: "resistor", pins: { "1": "V15", "2": "GND" } },
    },
  });
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
})();
const pad = (place: string, x: number, y: number) => ({ place, side: "top" as const, x, y });
// 100 x 50 mm: a figure of 1000 x 500
const picture = {
  width: 100,
  height: 50,
  faces: [{ side: "top" as const, svg: '<svg xmlns="http://www.w3.org/2000/svg"><path/></svg>' }],
  pads: [
    pad("F1.1", 0.1, 0.2),
    pad("F1.2", 0.3, 0.2),
    pad("R1.1", 0.5, 0.5),
    // seen from beneath, so that left is right
    { place: "R1.2", side: "bottom" as const, x: 0.4, y: 0.9 },
  ],
};
const step = (...places: string[]) => ({ words: "", minutes: 1, money: 0, why: "", places });

test("a figure for each way numbers its steps at pins, at the middle of a part and at a pad of a net, and rings what was found", () => {
  const ways = namedWays([
    ["recorded", [step("F1.1", "GND"), step("R1.1"), step("F1.1"), step("F1"), step("J9.1")]],
    ["proposed", [step("R1.2")]],
  ]);
  const [recorded = "", proposed = "", ...rest] = caseFigures(picture, board, ["F1"], ways);
  expect(rest).toEqual([]);
  const spots = [
    ...recorded.matchAll(/<g class="at"><circle cx="(\d+)" cy="(\d+)"[^>]*\/><text[^>]*>([^<]*)</g),
  ];
  expect(spots.map(([, x, y, steps]) => [x, y, steps])).toEqual([
    ["100", "100", "1 3"],
    ["600", "450", "1"],
    ["500", "250", "2"],
    ["200", "100", "4"],
  ]);
  for (const figure of [recorded, proposed]) {
    expect(figure).toMatch(/class="found" cx="200" cy="100"/);
    expect(figure).not.toContain("http");
  }
  expect(proposed).toContain(">1</text>");
});

test("many steps at one place are a few numbers and how many more", () => {
  const [way = ""] = caseFigures(
    picture,
    board,
    [],
    namedWays([["yours", Array.from({ length: 7 }, () => step("R1.1"))]]),
  );
  expect(way).toContain(">1 2 3 4 +3</text>");
});
