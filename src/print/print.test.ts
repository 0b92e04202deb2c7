import jsQR from "jsqr";
import { describe, expect, it } from "vitest";
import { squareCode } from "./square-code.ts";
import { orderOf, visualRuns } from "./visual-runs.ts";

const runs = (text: string) => visualRuns(text, orderOf(text, "rtl"), 0, text.length).map((run) => run.text);

describe("a line of Arabic", () => {
  it("runs from right to left, its words in one piece for the typeface to join", () => {
    expect(runs("افصل ثم قس")).toEqual(["قس", " ", "ثم", " ", "افصل"]);
  });

  it("keeps a quantity that is set apart in its own order", () => {
    const line = runs("أقل من \u206810 V\u2069 قبل");
    expect(line.join("|")).toContain("10 V");
    expect(line.at(-1)).toBe("أقل");
    expect(line[0]).toBe("قبل");
  });

  it("keeps digits of the Arabic block from left to right", () => {
    const line = runs("ضريبة ٢٠٫٥");
    expect(line.slice(0, 4).join("")).toBe("٢٠٫٥");
  });

  it("mirrors brackets", () => {
    expect(runs("قس (ثم)").join("")).toBe("(ثم) قس");
  });
});

describe("the square code of a label", () => {
  it("is read by another program as the address that was put in", () => {
    const address = "http://192.168.1.20:4517/#/job/4f6c1d2e-7a31-4b5e-9b1c-2d3e4f5a6b7c";
    const rows = squareCode(address);
    const scale = 3;
    const side = rows.length * scale;
    const pixels = new Uint8ClampedArray(side * side * 4).fill(255);
    for (let y = 0; y < side; y++)
      for (let x = 0; x < side; x++)
        if (rows[Math.floor(y / scale)]?.[Math.floor(x / scale)] === true)
          pixels.set([0, 0, 0], 4 * (y * side + x));
    expect(jsQR(pixels, side, side)?.data).toBe(address);
  });
});
