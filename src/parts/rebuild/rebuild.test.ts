/** Distances and tracks of a rebuilt area against published tables; the mark stands in the name of what was seen at second hand. */
import { describe, expect, it } from "vitest";
import { problemOf, valued } from "../valued.fixture.ts";
import { ipcSpacingMm, supplySpacingMm } from "./ipc-spacing.ts";
import { cutLeadAtMm, LEAD_LIMITS } from "./lead-protrusion.ts";
import {
  altitudeFactor,
  clearanceMm,
  creepageMm,
  grooveMm,
  impulseVolts,
  materialGroup,
  OLDER_MAINS_CLEARANCE,
  olderClearanceMm,
  peakClearanceMm,
  printedCreepageMm,
  spacingFor,
} from "./spacing.ts";
import { OUNCE_MM, trackAmps, trackSquareMils, trackWidthMm } from "./track-current.ts";

describe("IEC 60664-1 as transcribed in KiCad (seen-2nd)", () => {
  it.each([
    ["I", [330, 500, 800, 1500, 2500, 4000]],
    ["II", [500, 800, 1500, 2500, 4000, 6000]],
    ["III", [800, 1500, 2500, 4000, 6000, 8000]],
    ["IV", [1500, 2500, 4000, 6000, 8000, 12_000]],
  ] as const)(
    "C1 (seen-2nd): lines of 50, 100, 150, 300, 600 and 1000 V in category %s bring %j V",
    (category, volts) => {
      const lines = [50, 100, 150, 300, 600, 1000];
      expect(lines.map((line) => valued(impulseVolts(line, category)))).toEqual(volts);
      expect(valued(impulseVolts(230, category))).toBe(volts[3]);
    },
  );

  it.each([
    [1000, 0.2],
    [1200, 0.25],
    [1500, 0.5],
    [2000, 1],
    [2500, 1.5],
    [3000, 2],
    [4000, 3],
    [5000, 4],
    [6000, 5.5],
    [8000, 8],
    [10_000, 11],
    [12_000, 14],
  ])("C2 (seen-2nd): %d V of impulse at degree 2 want %d mm", (volts, mm) => {
    expect(valued(clearanceMm(volts, 2))).toBe(mm);
  });

  it("C3 (seen-2nd): degree 1 goes below, degrees 3 and 4 keep 0.8 and 1.6 mm", () => {
    const below = [330, 400, 500, 600, 800, 1000];
    expect(below.map((volts) => valued(clearanceMm(volts, 1)))).toEqual([0.01, 0.02, 0.04, 0.06, 0.1, 0.15]);
    expect([valued(clearanceMm(800, 3)), valued(clearanceMm(800, 4))]).toEqual([0.8, 1.6]);
  });

  it.each([
    [50, 0.6, 0.85, 1.2],
    [100, 0.71, 1, 1.4],
    [125, 0.75, 1.05, 1.5],
    [160, 0.8, 1.1, 1.6],
    [200, 1, 1.4, 2],
    [250, 1.25, 1.8, 2.5],
    [320, 1.6, 2.2, 3.2],
    [400, 2, 2.8, 4],
    [500, 2.5, 3.6, 5],
    [630, 3.2, 4.5, 6.3],
    [800, 4, 5.6, 8],
    [1000, 5, 7.1, 10],
  ])("C4 (seen-2nd): creepage of %d V at degree 2 is %d, %d, %d mm", (volts, ...wanted) => {
    expect((["I", "II", "III"] as const).map((group) => valued(creepageMm(volts, 2, group)))).toEqual(wanted);
  });

  it.each([
    [200, 2.5, 2.8, 3.2],
    [250, 3.2, 3.6, 4],
    [320, 4, 4.5, 5],
    [400, 5, 5.6, 6.3],
    [500, 6.3, 7.1, 8],
    [630, 8, 9, 10],
    [1000, 12.5, 14, 16],
  ])("C5 (seen-2nd): creepage of %d V at degree 3 is %d, %d, %d mm", (volts, ...wanted) => {
    expect((["I", "II", "III"] as const).map((group) => valued(creepageMm(volts, 3, group)))).toEqual(wanted);
  });

  it("C6 (seen-2nd): creepage at degree 1, of whatever material", () => {
    for (const group of ["I", "II", "III"] as const)
      expect([250, 320, 400, 500, 1000].map((volts) => valued(creepageMm(volts, 1, group)))).toEqual([
        0.56, 0.75, 1, 1.3, 3.2,
      ]);
  });

  it("C7 (seen-2nd): creepage along printed wiring at degrees 2 and 1", () => {
    const rows = [50, 100, 160, 200, 250, 320, 400, 500, 630, 800, 1000];
    expect(rows.map((volts) => valued(printedCreepageMm(volts, 2)))).toEqual([
      0.04, 0.16, 0.4, 0.63, 1, 1.6, 2, 2.5, 3.2, 4, 5,
    ]);
    expect([250, 320, 400].map((volts) => valued(printedCreepageMm(volts, 1)))).toEqual([0.56, 0.75, 1]);
  });

  it("C8 (seen-2nd): by the peak of a steady voltage", () => {
    const rows = [330, 400, 500, 600, 800, 1000, 1200, 1500, 2000, 2500, 3000, 4000];
    expect(rows.map((volts) => valued(peakClearanceMm(volts)))).toEqual([
      0.01, 0.02, 0.04, 0.06, 0.13, 0.26, 0.42, 0.76, 1.27, 1.8, 2.4, 3.8,
    ]);
  });

  it("C9 and C10 (seen-2nd): altitude, and the group of a tracking index", () => {
    const heights = [0, 2000, 3000, 4000, 5000, 6000, 7000, 8000, 9000, 10_000];
    expect(heights.map((metres) => valued(altitudeFactor(metres)))).toEqual([
      1, 1, 1.14, 1.29, 1.48, 1.7, 1.95, 2.25, 2.62, 3.02,
    ]);
    expect([600, 599, 400, 399, 175, 100].map((index) => valued(materialGroup(index)))).toEqual([
      "I",
      "II",
      "II",
      "III",
      "III",
      "III",
    ]);
  });

  it("C11 (seen-2nd): reinforced is 1.6 times the impulse, 2.5 kV to 3.0 mm, and twice the creepage, 250 V to 5.0 mm", () => {
    expect(valued(clearanceMm(2500, 2, "reinforced"))).toBe(3);
    expect(valued(creepageMm(250, 2, "III", "reinforced"))).toBe(5);
  });

  it("C12 (seen-2nd; degrees 2 and 3 also in a Harting catalogue): grooves of 0.25, 1.0 and 1.5 mm, or a third below 3 mm", () => {
    expect(([1, 2, 3] as const).map((degree) => grooveMm(degree, 8))).toEqual([0.25, 1, 1.5]);
    expect(grooveMm(2, 1.5)).toBeCloseTo(0.5, 9);
  });

  it.each([
    [10, 0.4, 1, 0.025],
    [20, 0.48, 1.2, null],
    [32, 0.53, 1.3, null],
  ])(
    "C13, WAGO catalogue 2015 p. 598: %d V want %d mm at degree 2 and %d mm at degree 3",
    (volts, two, three, printed) => {
      for (const group of ["I", "II", "III"] as const) {
        expect(valued(creepageMm(volts, 2, group))).toBe(two);
        expect(valued(creepageMm(volts, 3, group))).toBe(three);
      }
      if (printed === null) return;
      expect([valued(printedCreepageMm(volts, 1)), valued(printedCreepageMm(volts, 2))]).toEqual([
        0.025, 0.04,
      ]);
    },
  );

  it("C16, ce-mag.com 01/03 table III: IEC 60950-1 wanted 1.6, 1.9 and 3.8 mm on mains of 150 to 300 V; of the two the longer is told", () => {
    expect([...OLDER_MAINS_CLEARANCE.values()].map(({ usual, controlled }) => [usual, controlled])).toEqual([
      [1.6, 1],
      [1.9, 1],
      [3.8, 2],
    ]);
    expect(olderClearanceMm(230, "basic")).toBe(1.9);
    expect(olderClearanceMm(230, "reinforced")).toBe(3.8);
    expect(olderClearanceMm(400, "basic")).toBeNull();
    for (const insulation of ["basic", "reinforced"] as const)
      expect(olderClearanceMm(230, insulation)).toBeGreaterThan(valued(clearanceMm(2500, 2, insulation)));
  });

  it("C14 (seen-2nd chain): 230 V with a plug, degree 2: 1.5 mm of air and 2.5 mm of surface, reinforced 3.0 and 5.0", () => {
    const place = { lineVolts: 230, workingVolts: 250, category: "II", degree: 2, material: "III" } as const;
    expect(valued(spacingFor({ ...place, insulation: "basic" }))).toEqual({
      impulseVolts: 2500,
      clearanceMm: 1.5,
      creepageMm: 2.5,
    });
    expect(valued(spacingFor({ ...place, insulation: "reinforced" }))).toEqual({
      impulseVolts: 2500,
      clearanceMm: 3,
      creepageMm: 5,
    });
  });

  it("C15 (seen-2nd chain): a bus of 400 V wants 4.0 mm along the surface, 6.3 mm where it is damp or dirty", () => {
    expect(valued(creepageMm(400, 2, "III"))).toBe(4);
    expect(valued(creepageMm(400, 3, "III"))).toBe(6.3);
  });

  it("steps and does not interpolate: 300 V takes the row of 320 V, 3.2 mm", () => {
    expect(valued(creepageMm(300, 2, "III"))).toBe(3.2);
    expect(valued(creepageMm(251, 2, "III"))).toBe(3.2);
    expect(valued(clearanceMm(1501, 2))).toBe(1);
  });

  it("never lets a surface be shorter than the air", () => {
    const place = {
      lineVolts: 300,
      workingVolts: 50,
      category: "IV",
      degree: 1,
      material: "I",
      insulation: "basic",
    } as const;
    const { clearanceMm: air, creepageMm: surface } = valued(spacingFor(place));
    expect(surface).toBe(air);
  });

  it.each([
    [() => creepageMm(1200, 2, "III"), "working voltage: 1200 V is outside 0 to 1000 V"],
    [() => impulseVolts(1001, "II"), "line voltage: 1001 V is outside"],
    [() => clearanceMm(10_000, 2, "reinforced"), "impulse voltage: 16000 V is outside 0 to 12000 V"],
    [() => altitudeFactor(12_000), "altitude: 12000 m is outside"],
    [() => materialGroup(50), "tracking index: 50  is outside"],
    [() => printedCreepageMm(-1, 2), "working voltage: -1 V is outside"],
  ])("refuses what its tables do not reach (%#)", (made, problem) => {
    expect(problemOf(made())).toContain(problem);
  });
});

describe("IPC-2221 as transcribed in KiCad (seen-2nd)", () => {
  it.each([
    [0, 15, [0.05, 0.1, 0.1, 0.05, 0.13, 0.13, 0.13]],
    [16, 30, [0.05, 0.1, 0.1, 0.05, 0.13, 0.25, 0.13]],
    [31, 50, [0.1, 0.6, 0.6, 0.13, 0.13, 0.4, 0.13]],
    [51, 100, [0.1, 0.6, 1.5, 0.13, 0.13, 0.5, 0.13]],
    [101, 150, [0.2, 0.6, 3.2, 0.4, 0.4, 0.8, 0.4]],
    [151, 170, [0.2, 1.25, 3.2, 0.4, 0.4, 0.8, 0.4]],
    [171, 250, [0.2, 1.25, 6.4, 0.4, 0.4, 0.8, 0.4]],
    [251, 300, [0.2, 1.25, 12.5, 0.4, 0.4, 0.8, 0.8]],
    [301, 500, [0.25, 2.5, 12.5, 0.8, 0.8, 1.5, 0.8]],
  ] as const)("(seen-2nd) %d to %d V want %j mm in B1 to B4 and A5 to A7", (from, to, wanted) => {
    const columns = ["B1", "B2", "B3", "B4", "A5", "A6", "A7"] as const;
    for (const volts of [from, to])
      expect(columns.map((column) => valued(ipcSpacingMm(volts, column)))).toEqual(wanted);
  });

  it("(seen-2nd) above 500 V each further volt wants its own length", () => {
    const perVolt = { B1: 0.0025, B2: 0.005, B3: 0.025, B4: 0.00305, A5: 0.00305, A6: 0.00305, A7: 0.00305 };
    for (const [column, mm] of Object.entries(perVolt) as [keyof typeof perVolt, number][])
      expect(valued(ipcSpacingMm(700, column)) - valued(ipcSpacingMm(500, column))).toBeCloseTo(200 * mm, 9);
  });

  it("T1 (seen-2nd): B1 at 600 V is 0.25 + 100 x 0.0025 = 0.50 mm", () => {
    expect(valued(ipcSpacingMm(600, "B1"))).toBeCloseTo(0.5, 12);
  });

  it("T2: of two lists that differ for A7 at 251 to 300 V, 0.8 and 0.38 mm, the longer is taken", () => {
    expect(valued(ipcSpacingMm(300, "A7"))).toBe(0.8);
  });

  it("T3 (seen-2nd): IPC-9592, 0.6 + 0.005 V: 2.6 mm at 400 V", () => {
    expect(valued(supplySpacingMm(400))).toBeCloseTo(2.6, 12);
  });
});

describe("a rebuilt track", () => {
  const width = (amps: number, kelvin: number, layer: "outside" | "inside" = "outside") =>
    valued(trackWidthMm(amps, kelvin, layer));

  it("T4 and T5, qorvo.com's and KiCad's formula (values computed): outside, one ounce", () => {
    expect(valued(trackSquareMils(1, 10, "outside"))).toBeCloseTo(16.296, 2);
    expect(width(1, 10)).toBeCloseTo(0.3004, 4);
    expect(width(2, 10)).toBeCloseTo(0.7814, 4);
    expect(width(5, 10)).toBeCloseTo(2.7654, 3);
    expect(width(5, 20)).toBeCloseTo(1.8158, 3);
    expect(valued(trackSquareMils(10, 10, "outside"))).toBeCloseTo(390.29, 1);
    expect(width(10, 10)).toBeCloseTo(7.194, 3);
    expect(width(10, 20)).toBeCloseTo(4.7237, 3);
    expect(width(10, 30)).toBeCloseTo(3.693, 3);
  });

  it("T6 (values computed): inside carries half as much; 18.7 mm for 10 A is beyond the formula and refused", () => {
    expect(width(1, 10, "inside")).toBeCloseTo(0.7814, 4);
    expect(width(5, 10, "inside")).toBeCloseTo(7.194, 3);
    const square = valued(trackSquareMils(10, 10, "inside"));
    expect((square / 1.378) * 0.0254).toBeCloseTo(18.715, 2);
    expect(problemOf(trackWidthMm(10, 10, "inside"))).toBe(
      "width: 18.715 mm is outside 0 to 10.16 mm: lay a wire along it",
    );
  });

  it("T7 (values computed): 1.0 mm of 35 um at 10 K carries 2.39 A outside, 1.20 A inside", () => {
    expect(valued(trackAmps(1, OUNCE_MM, 10, "outside"))).toBeCloseTo(2.3916, 2);
    expect(valued(trackAmps(1, OUNCE_MM, 10, "inside"))).toBeCloseTo(1.1958, 2);
  });

  it.each([
    [() => trackWidthMm(36, 10, "outside"), "current: 36 A is outside 0.01 to 35 A"],
    [() => trackWidthMm(18, 10, "inside"), "current: 18 A is outside 0.01 to 17.5 A"],
    [() => trackWidthMm(5, 120, "outside"), "temperature rise: 120 K is outside"],
    [() => trackAmps(12, OUNCE_MM, 10, "outside"), "width: 12 mm is outside"],
  ])("is refused outside the formula (%#)", (made, problem) => {
    expect(problemOf(made())).toContain(problem);
  });
});

describe("a lead", () => {
  const limitsBy = (mark: string) =>
    LEAD_LIMITS.filter((limit) => limit.mark === mark).map(({ boardClass, mostMm }) => [boardClass, mostMm]);

  it("L1, older IPC-A-610 table 5-2 as asked in IPC TechNet: 2.5 mm in class 2, 1.5 mm in class 3", () => {
    expect(limitsBy("seen")).toEqual([
      [2, 2.5],
      [3, 1.5],
    ]);
  });

  it("L2 (from memory), IPC-A-610 table 7-3: the same for supported holes", () => {
    expect(limitsBy("from memory")).toEqual(limitsBy("seen"));
  });

  it("is cut shorter where a heatsink is near, and not at all where there is no room", () => {
    expect(valued(cutLeadAtMm(2, 10, 4))).toBe(2.5);
    expect(valued(cutLeadAtMm(2, 5.5, 4))).toBe(1.5);
    expect(problemOf(cutLeadAtMm(2, 4, 4))).toContain("put an insulating sheet between");
  });
});
