import { expect, test } from "vitest";
import { plain } from "../messages/said.ts";
import { curedWords, faultNameWords, faultStatement } from "./fault-words.ts";
import { parseBoard } from "./parse-board.ts";
import { smallDrive } from "./small-drive.fixture.ts";

const board = (() => {
  const raw = smallDrive();
  raw.parts.IPM1 = {
    kind: "module",
    pins: { p: "PBUS", u: "U", v: "V", w: "W", n: "NSH", vcc: "V15", com: "NBUS", vbu: "VBU", inup: "DH_U" },
  };
  const nets = { ...(raw.nets as object), PBUS: { label: "DC bus +" }, VBU: {} };
  const parsed = parseBoard({ ...raw, nets });
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
})();

const said = (name: string) => plain(faultNameWords(name, board));

test("a fault is said between terminals, not by the file's shorthand", () => {
  expect(said("Q3.ce:short")).toBe("Q3 collector to emitter shorted");
  expect(said("BR1.minusac2:open")).toBe("BR1 minus to AC 2 open");
  expect(said("U1.vcc:short@1.5")).toBe("U1 VCC to source shorted");
  expect(said("T1.pri:open")).toBe("T1 winding pri open");
  expect(said("F1:open")).toBe("F1 open");
});

test("a switch of a module is the upper or lower one of its phase, not two letters", () => {
  expect(said("IPM1.up:short")).toBe("IPM1 upper switch of phase U shorted");
  expect(said("IPM1.wn:leaky")).toBe("IPM1 lower switch of phase W leaky");
  expect(said("IPM1.inup:short")).toBe("IPM1 input of the upper switch of phase U shorted");
  expect(said("IPM1.vbu:short")).toBe("IPM1 bootstrap supply of phase U shorted");
  expect(said("IPM1.drive:short")).toBe("IPM1 control supply (VCC to COM) shorted");
});

test("a chip's pin says towards what it fails", () => {
  expect(said("U3.pa0:short")).toBe("U3 pin pa0 shorted to ground");
  expect(said("U3.pa0.supply:short")).toBe("U3 pin pa0 shorted to its supply");
  expect(said("U3.supply:short")).toBe("U3 supply pin shorted to ground");
  expect(said("U3.supply:open")).toBe("U3 supply pin open");
});

test("dirt lies between nets by their labels, and by a pin where a net has none", () => {
  expect(said("PBUS~DRAIN:leaky")).toMatch(/^dirt between DC bus \+ and \w+ pin \w+ \(net DRAIN\)$/);
  expect(plain(curedWords("PBUS~DRAIN", board))).toBe(said("PBUS~DRAIN:leaky"));
  expect(curedWords("Q1", board)).toBe("Q1");
});

test("whether a fault is there reads as a sentence", () => {
  const fuse = { of: "part", part: "F1", junction: null, mode: "open", value: null } as const;
  const rail = { of: "part", part: "U3", junction: "supply", mode: "short", value: null } as const;
  const dirt = { of: "nets", nets: ["PBUS", "U"], mode: "leaky", value: null } as const;
  expect(plain(faultStatement(fuse, board))).toBe("F1 is open");
  expect(plain(faultStatement(rail, board))).toBe("U3 has its supply pin shorted to ground");
  expect(plain(faultStatement(dirt, board))).toContain("there is dirt between DC bus +");
});
