/** `board check`: what is odd in a board file is named, in words and for a script. */
import { afterEach, beforeEach, expect, it } from "vitest";
import { run } from "../run.ts";
import { capturedIo, type Folder, freshFolder, SMALL_BOARD } from "../small-job.fixture.ts";

let folder: Folder;
beforeEach(() => {
  folder = freshFolder();
});
afterEach(() => folder.remove());

async function ran(...argv: string[]): Promise<{ code: number; out: string; err: string }> {
  const io = capturedIo();
  const code = await run(argv, io);
  return { code, ...io.said };
}

const ODD = {
  ...SMALL_BOARD,
  parts: {
    ...SMALL_BOARD.parts,
    R2: { kind: "resistor", pins: { "1": "PBUS", "2": "NOWHERE" }, value: { ohms: 230_000 }, assumed: true },
    U1: { kind: "controller", pins: { vdd: "V5", gnd: "NBUS" } },
    C2: { kind: "capacitor", pins: { plus: "V5", minus: "NBUS" }, value: { farads: 100e-9 } },
  },
  rails: { V5: { net: "V5", volts: 5 } },
};

it("names loose nets, rails nobody makes, values nobody sells, prices that are missing, and what cannot be told apart", async () => {
  const { code, out, err } = await ran("board", "check", folder.file("odd.json", ODD), "--json");
  expect({ code, err }).toEqual({ code: 0, err: "" });
  const review = JSON.parse(out);
  expect(review).toMatchObject({
    floatingNets: ["NOWHERE"],
    railsWithoutSource: ["V5"],
    offSeries: [{ part: "R2", field: "ohms", value: 230_000, nearest: 240_000 }],
    assumed: ["R2"],
  });
  expect(review.unpriced).toEqual([
    { part: "C1", share: 0.03 },
    { part: "U1", share: 0.4 },
  ]);
  const groups = review.ambiguous.map(({ parts }: { parts: string[] }) => parts);
  expect(groups).toEqual([
    ["C1", "R1"],
    ["U1", "C2"],
  ]);
  expect(review.unseen).toEqual(["F1:short"]);
});

it("says the same in words", async () => {
  const { out } = await ran("board", "check", folder.file("odd.json", ODD));
  expect(out).toMatch(/Nets that end at one pin:\n {2}NOWHERE\n/);
  expect(out).toMatch(/Rails without a source:\n {2}V5\n/);
  expect(out).toMatch(/R2: 230 kohm; the nearest is 240 kohm/);
  expect(out).toMatch(/C1 3.0 %\n {2}U1 40 %/);
  expect(out).toMatch(/C1 shorted; R1 shorted\n {4}lift C1\.plus: C1 \| R1/);
});

it("finds nothing odd in the parts of a plain rectifier", async () => {
  const { out } = await ran("board", "check", folder.file("plain.json", SMALL_BOARD));
  expect(out).toContain(
    "No net ends at one pin.\nEvery rail has a source.\nEvery value is one that is sold.\n",
  );
});
