import { expect, test } from "vitest";
import { faultNameWords, faultStatement } from "./fault-words.ts";

test("a fault is said between terminals, not by the file's shorthand", () => {
  expect(faultNameWords("Q3.ce:short")).toBe("Q3 collector to emitter shorted");
  expect(faultNameWords("U2.ds:short@1.5")).toBe("U2 drain to source shorted");
  expect(faultNameWords("BR1.minusac2:open")).toBe("BR1 minus to AC 2 open");
  expect(faultNameWords("U5.i2.supply:short")).toBe("U5 pin i2 to supply shorted");
  expect(faultNameWords("F1:open")).toBe("F1 open");
  expect(faultNameWords("PBUS~NBUS:leaky")).toBe("dirt between PBUS and NBUS");
});

test("whether a fault is there reads as a sentence", () => {
  const fuse = { of: "part", part: "F1", junction: null, mode: "open", value: null } as const;
  const dirt = { of: "nets", nets: ["G1", "N"], mode: "leaky", value: null } as const;
  expect(faultStatement(fuse)).toBe("F1 is open");
  expect(faultStatement(dirt)).toBe("there is dirt between G1 and N");
});
