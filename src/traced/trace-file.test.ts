import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { parseBoard } from "../board/parse-board.ts";
import { type TraceAnswers, traceFile } from "./trace-file.ts";

const BARE: TraceAnswers = { name: "", supply: null, zero: "", mapped: {} };
const SUPPLY = { kind: "ac", volts: 230, hz: 50, at: ["L", "N"] };

function traced(text: string, answers: Partial<TraceAnswers> = {}) {
  const read = traceFile(text, { ...BARE, ...answers });
  if (!read.ok) throw new Error(read.problem);
  return read.value;
}

it("the same circuit as netlist and as schematic asks the same, before anything is answered", () => {
  const asked = ["net", "kicad_sch"].map((kind) => {
    const { content, problem, unmapped, nets } = traced(
      readFileSync(`test/kicad/half-bridge.${kind}`, "utf8"),
    );
    expect([content, problem]).toEqual([null, expect.stringMatching(/does not say what the board runs on/)]);
    return [unmapped.map(({ name, refs }) => `${name} ${refs.join(" ")}`).sort(), [...nets].sort()];
  });
  expect(asked[0]).toEqual(asked[1]);
  expect(asked[0]?.[0]).toEqual(["Conn_01x02 J1 J2 J3", "DUALCMP U2", "HALFDRV U1"]);
});

it("a chip of a netlist goes by the numbers of its pins, and what is left out is asked no more", () => {
  const text = readFileSync("test/kicad/half-bridge.net", "utf8");
  const before = traced(text, { supply: SUPPLY, zero: "GND", name: "bench driver" });
  const [driver] = before.unmapped.filter(({ name }) => name === "HALFDRV");
  const pins = Object.fromEntries((driver?.pins ?? []).map(({ id }) => [id, `p${id}`]));
  const mapped = {
    HALFDRV: { kind: "ic", pins: { ...pins, "1": "vcc", "4": "gnd" } },
    DUALCMP: null,
    Conn_01x02: null,
  };
  const after = traced(text, { supply: SUPPLY, zero: "GND", name: "bench driver", mapped });
  expect(after.unmapped).toEqual([]);
  expect(
    after.notUnderstood.some(({ text: ref, why }) => ref === "U2" && /as the mapping says/.test(why)),
  ).toBe(true);
  const board = parseBoard(after.content);
  if (!board.ok) throw new Error(board.problem);
  expect(board.value.name).toBe("bench driver");
  expect(board.value.parts.get("U1")?.pins.get("vcc")).toBe(driver?.pins[0]?.net);
  expect(board.value.parts.size).toBe(before.parts + 1);
});

it("a subcircuit of a deck goes by the order of its pins", () => {
  const deck = "* driver\nR1 L N 100k\nX1 L OUT N CHIP\nR2 OUT N 1k\n.end\n";
  const before = traced(deck, { supply: SUPPLY, zero: "N" });
  expect(before.unmapped).toMatchObject([{ name: "CHIP", pins: [{ id: "1" }, { id: "2" }, { id: "3" }] }]);
  const mapped = { CHIP: { kind: "ic", pins: { "1": "vcc", "2": "out", "3": "gnd" } } };
  const { content, unmapped } = traced(deck, { supply: SUPPLY, zero: "N", mapped });
  expect(unmapped).toEqual([]);
  expect(content?.parts).toMatchObject({ X1: { kind: "ic", pins: { vcc: "L", out: "OUT", gnd: "N" } } });
});
