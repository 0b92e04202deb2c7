/** Boards of one's own at the prompt: made from a few answers, then given the names of the silkscreen. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { run } from "../run.ts";
import { capturedIo, type Folder, freshFolder } from "../small-job.fixture.ts";

let folder: Folder;
let own: string;
beforeEach(() => {
  folder = freshFolder();
  own = join(folder.path, "own.json");
});
afterEach(() => folder.remove());

async function ran(
  argv: readonly string[],
  typed: readonly string[] = [],
): Promise<{ code: number; out: string; err: string }> {
  const io = capturedIo(typed);
  const code = await run(argv, io);
  return { code, ...io.said };
}

const FIRST_FOUR = ["--supply", "230-1", "--boost", "none", "--switches", "module", "--rails", "15,5"];
const board = () => JSON.parse(readFileSync(own, "utf8"));
/** Runs a change to the file that must go through. */
async function change(...argv: string[]): Promise<void> {
  expect(await ran(["board", ...argv])).toEqual({ code: 0, out: "", err: "" });
}

describe("board new", () => {
  it("makes a board that can be worked on from four answers", async () => {
    const made = await ran(["board", "new", own, ...FIRST_FOUR]);
    expect(made).toMatchObject({ code: 0, err: "" });
    expect(made.out).toMatch(/own\.json: \d+ parts, \d+ of them not seen yet\./);
    const job = folder.file("job.json", {
      format: "faultwright-job/1",
      board: "own.json",
      cause: "unknown",
      symptom: "dead",
      absent: ["MOT1"],
    });
    const next = await ran(["next", job, "--json"]);
    expect(next.code).toBe(0);
    expect(JSON.parse(next.out).action).toMatchObject({ do: "measure", mode: "dcv" });
  });

  it("asks for what is open: numbers pick, an empty line leaves it open, done ends it", async () => {
    const answered = await ran(
      ["board", "new", own, "--ask", "--supply", "400-3"],
      ["1", "2", "", "9", "1", "6.3", "done"],
    );
    expect(answered.code).toBe(0);
    expect(answered.err).toContain("rails");
    // boost 1 none, switches 2 single ones, rails not known, fuse 9 A, inrush 1, bus: 6.3 is no answer
    expect(answered.err).toMatch(/bus: "6\.3" is no answer/);
    const { supply, parts } = board();
    expect(supply).toMatchObject({ volts: 400, at: ["L1_IN", "L2_IN", "L3_IN"] });
    expect(parts.F1.value.amps).toBe(9);
    expect(parts.Q2).toMatchObject({ kind: "igbt" });
  });

  it("writes the file to standard output where none is named, and says what is still taken as usual", async () => {
    const made = await ran(["board", "new", "--supply", "230-1"]);
    expect(JSON.parse(made.out).format).toBe("faultwright-board/1");
    expect(made.err).toBe("not answered yet, taken as usual: boost, switches, rails\n");
  });

  it("leaves a file that is there alone, and names the option that is wrong", async () => {
    await ran(["board", "new", own, ...FIRST_FOUR]);
    const again = await ran(["board", "new", own, ...FIRST_FOUR]);
    expect([again.code, again.err]).toEqual([
      2,
      `${own}: not written: there is such a file already; name another\n`,
    ]);
    const wrong = await ran(["board", "new", "--bus-count", "0"]);
    expect([wrong.code, wrong.out]).toEqual([2, ""]);
    expect(wrong.err).toMatch(
      /^board new: --bus-count: expected a number of capacitors from 1 to 12, found "0"\n$/,
    );
  });
});

describe("a traced deck", () => {
  it("makes a board, names each line it left out, and a board's own deck makes the board again", async () => {
    const deck = folder.file("traced.cir", "* traced\nR1 L P 10\nC1 P N 330u\nXU1 P N CHIP\nB1 P N V=1\n");
    const map = folder.file("map.json", { CHIP: { kind: "ic", pins: ["vcc", "gnd"] } });
    const supply = ["--supply", "ac,230,50,L,N", "--zero", "N"];
    const made = await ran(["board", "from-deck", deck, own, ...supply, "--map", map]);
    expect([made.code, made.out]).toEqual([0, `${own}: 3 parts, 0 of them not seen yet.\n`]);
    expect(made.err).toBe(`${deck}:5: left out: B1 P N V=1: no part of a board is written with B\n`);
    expect(board().supply).toEqual({ kind: "ac", volts: 230, hz: 50, at: ["L", "N"] });
    const again = folder.file("own.cir", (await ran(["board", "deck", own])).out);
    const back = await ran(["board", "from-deck", again]);
    expect(back).toEqual({ code: 0, out: readFileSync(own, "utf8"), err: "" });
    const lacking = await ran(["board", "from-deck", deck]);
    expect([lacking.code, lacking.out]).toEqual([2, ""]);
    expect(lacking.err).toMatch(/traced\.cir: the file does not say what the board runs on/);
  });
});

describe("a netlist", () => {
  it("makes a board in the same way", async () => {
    const parts = ["R1", "R2"].map((ref) => `(comp (ref "${ref}") (value "1k") (libsource (part "R")))`);
    const nets = ["L", "M", "GND"].map((name, i) => {
      const pins = [`(node (ref "R${i}") (pin "2"))`, `(node (ref "R${i + 1}") (pin "1"))`];
      return `(net (name "/${name}") ${pins.slice(i === 0 ? 1 : 0, i === 2 ? 1 : 2).join("")})`;
    });
    const text = `(export (components ${parts.join("")}) (nets ${nets.join("")}))`;
    const netlist = folder.file("traced.net", text);
    const made = await ran(["board", "from-netlist", netlist, own, "--supply", "dc,24,L,GND"]);
    expect(made).toEqual({ code: 0, out: `${own}: 2 parts, 0 of them not seen yet.\n`, err: "" });
    expect(board().parts.R2).toEqual({
      kind: "resistor",
      pins: { "1": "M", "2": "GND" },
      value: { ohms: 1000 },
    });
  });
});

describe("a board file changed at the prompt", () => {
  beforeEach(async () => {
    await ran(["board", "new", own, ...FIRST_FOUR]);
  });

  it("takes the silkscreen's names, single parts in and out, a pin on another net", async () => {
    await change("rename", own, "M1", "IPM1");
    await change("rename", own, "PBUS", "P");
    await change(
      "add-part",
      own,
      "R900",
      "resistor",
      "1=P",
      "2=SPARE",
      "--value",
      "ohms=4k7,watts=0.5",
      "--assumed",
    );
    await change("rewire", own, "R900.2", "NBUS");
    expect(board().parts.IPM1.pins.p).toBe("P");
    expect(board().parts.R900).toEqual({
      kind: "resistor",
      pins: { "1": "P", "2": "NBUS" },
      value: { ohms: 4700, watts: 0.5 },
      assumed: true,
    });
    await change("seen", own, "R900", "F1");
    expect([board().parts.R900.assumed, board().parts.F1.assumed]).toEqual([undefined, undefined]);
    await change("remove-part", own, "R900");
    expect(board().parts.R900).toBeUndefined();
  });

  it("is left as it was where the change cannot be", async () => {
    const before = readFileSync(own, "utf8");
    const refused = await ran(["board", "rename", own, "M1", "BR1"]);
    expect([refused.code, refused.out]).toEqual([2, ""]);
    expect(refused.err).toMatch(/own\.json: not changed: there is a part "BR1" already\n$/);
    const odd = await ran(["board", "add-part", own, "R901", "resistor", "1:P"]);
    expect(odd.err).toMatch(/"1:P" is no pin=NET/);
    expect(readFileSync(own, "utf8")).toBe(before);
  });
});
