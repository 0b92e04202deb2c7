/** Where to probe: on the picture where the place is pinned, and on one side of the board where that can be. */
import { describe, expect, it } from "vitest";
import { plain } from "../../messages/said.ts";
import type { BoardPin, BoardSide } from "../../wire/job-api.ts";
import { pairOf, pinsInWords, spotsOf } from "./spots.ts";
import { pointShownAt, shownPoint, shownSize, turnTransform } from "./turned.ts";

const pin = (place: string, side: BoardSide = "top", x = 0.5): BoardPin => ({ place, side, x, y: 0.5 });
const NETS = new Map([
  ["C5.plus", "PBUS"],
  ["Q1.c", "PBUS"],
  ["C5.minus", "NBUS"],
  ["Q1.e", "U"],
]);
const whole = { nets: NETS, lifted: new Set<string>(), off: new Set<string>() };

describe("a place on the picture", () => {
  it("is the pin itself, or for a net every pin of it that sits on its pad", () => {
    const pins = [pin("PBUS", "top", 0.1), pin("C5.plus"), pin("Q1.c"), pin("Q1.e")];
    expect(spotsOf(pins, "Q1.c", whole)).toEqual([pin("Q1.c")]);
    expect(spotsOf(pins, "PBUS", whole).map(({ place }) => place)).toEqual(["PBUS", "C5.plus", "Q1.c"]);
    const lifted = { ...whole, lifted: new Set(["Q1.c"]) };
    expect(spotsOf(pins, "PBUS", lifted).map(({ place }) => place)).toEqual(["PBUS", "C5.plus"]);
    expect(spotsOf(pins, "NBUS", whole)).toEqual([]);
  });

  it("is nowhere for a pin of a part that is off the board, whose pads still carry the net", () => {
    const off = { ...whole, off: new Set(["Q1"]) };
    expect(spotsOf([pin("Q1.c")], "Q1.c", off)).toEqual([]);
    expect(spotsOf([pin("Q1.c")], "PBUS", off)).toEqual([pin("Q1.c")]);
  });

  it("that nobody has pinned is told by part and pin", () => {
    expect(pinsInWords("PBUS", whole)).toBe("C5 plus, Q1 c");
    expect(plain(pinsInWords("PBUS", whole, 1))).toBe("C5 plus and 1 more");
    expect(pinsInWords("PBUS", { ...whole, off: new Set(["Q1"]) })).toBe("C5 plus");
  });
});

describe("the two probes", () => {
  it("go on one side of the board, even where each has an easier spot on another", () => {
    const red = [pin("C5.plus", "bottom"), pin("Q1.c", "top")];
    const black = [pin("Q1.e", "top")];
    expect(pairOf(red, black)).toEqual({ red: pin("Q1.c", "top"), black: pin("Q1.e", "top") });
  });

  it("go on the easiest spots where both sides would do", () => {
    const red = [pin("C5.plus", "bottom"), pin("Q1.c", "top")];
    const black = [pin("C5.minus", "bottom"), pin("Q1.e", "top")];
    expect(pairOf(red, black).red?.side).toBe("bottom");
  });

  it("go on two sides where nothing else is left, and one alone where the other is not pinned", () => {
    const [red, black] = [[pin("C5.plus", "bottom")], [pin("Q1.e", "top")]];
    expect(pairOf(red, black)).toEqual({ red: red[0], black: black[0] });
    expect(pairOf(red, [])).toEqual({ red: red[0], black: null });
  });
});

describe("a turned picture", () => {
  it.each([0, 90, 180, 270] as const)(
    "by %i degrees shows every spot within itself, and finds it again",
    (turn) => {
      const face = { width: 40, height: 30, turn };
      const size = shownSize(face);
      for (const spot of [
        { x: 0.1, y: 0.2 },
        { x: 1, y: 0 },
      ]) {
        const shown = shownPoint(face, spot);
        expect(shown.x >= 0 && shown.x <= size.width && shown.y >= 0 && shown.y <= size.height).toBe(true);
        const back = pointShownAt(face, shown);
        expect(back.x).toBeCloseTo(spot.x, 9);
        expect(back.y).toBeCloseTo(spot.y, 9);
      }
    },
  );

  it("by a quarter has its upper left corner at the upper right, as SVG turns it", () => {
    const face = { width: 40, height: 30, turn: 90 } as const;
    expect(shownPoint(face, { x: 0, y: 0 })).toEqual({ x: 30, y: 0 });
    expect(turnTransform(face)).toBe("translate(30 0) rotate(90)");
  });
});
