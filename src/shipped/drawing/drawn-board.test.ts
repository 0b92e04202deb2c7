/** The drawn pictures of the shipped boards: whatever a check asks for can be found on them. */
import { describe, expect, it } from "vitest";
import { parseBoard } from "../../board/parse-board.ts";
import { SHIPPED } from "../shipped.ts";
import { drawnBoard, ownDrawing } from "./drawn-board.ts";
import { layOut } from "./layout.ts";

/** Sums of widths are off by the last bits of a number, millimetres. */
const ROUNDING = 1e-9;

describe.each(SHIPPED)("the picture of the $id", (shipped) => {
  const parsed = parseBoard(shipped.board);
  if (!parsed.ok) throw new Error(parsed.problem);
  const board = parsed.value;
  const drawn = drawnBoard(board);

  it("has every pin of every part, within the picture", () => {
    const there = new Set(drawn.pads.map(({ place }) => place));
    const pins = [...board.parts.values()].flatMap(({ ref, pins: names }) =>
      [...names.keys()].map((pin) => `${ref}.${pin}`),
    );
    expect(pins.filter((pin) => !there.has(pin))).toEqual([]);
    expect(drawn.pads.filter(({ x, y }) => x <= 0 || x >= 1 || y <= 0 || y >= 1)).toEqual([]);
  });

  it("puts no part on another", () => {
    const { placed, width, height } = layOut(board);
    const over = placed.flatMap((a, index) =>
      placed
        .slice(index + 1)
        .filter(
          (b) =>
            a.x + ROUNDING < b.x + b.footprint.width &&
            b.x + ROUNDING < a.x + a.footprint.width &&
            a.y + ROUNDING < b.y + b.footprint.height &&
            b.y + ROUNDING < a.y + a.footprint.height,
        )
        .map((b) => `${a.ref} on ${b.ref}`),
    );
    expect(over).toEqual([]);
    const off = placed.filter(
      ({ x, y, footprint }) => x + footprint.width > width || y + footprint.height > height,
    );
    expect(off.map(({ ref }) => ref)).toEqual([]);
  });

  it("has its test points where the board file says, on pins of their nets", () => {
    expect(drawn.named.map(({ point }) => point)).toEqual(board.points.map(({ name }) => name));
    for (const { point, net, place, xy } of drawn.named) {
      const [ref = "", pin = ""] = place.split(".");
      expect([point, board.parts.get(ref)?.pins.get(pin) ?? place]).toEqual([point, net]);
      expect([point, board.points.find(({ name }) => name === point)?.xy]).toEqual([point, xy]);
    }
  });

  it("is that board's own, and not that of one whose places are elsewhere or unknown", () => {
    expect(ownDrawing(board)).toEqual(drawn);
    const [first, ...others] = board.points;
    if (first === undefined) throw new Error("no test points");
    expect(ownDrawing({ ...board, points: [{ ...first, xy: [0.5, 0.5] }, ...others] })).toBeNull();
    expect(ownDrawing({ ...board, points: [{ ...first, xy: null }, ...others] })).toBeNull();
    expect(ownDrawing({ ...board, points: [] })).toBeNull();
  });

  it("shows from the solder side, left for right, what goes through the board", () => {
    const both = drawn.pads.filter(({ side }) => side === "bottom");
    expect(both.length).toBeGreaterThan(20);
    for (const { place, x, y } of both) {
      const front = drawn.pads.find((pad) => pad.side === "top" && pad.place === place);
      if (front !== undefined)
        expect([place, front.x + x, front.y]).toEqual([place, expect.closeTo(1, 3), y]);
    }
  });
});
