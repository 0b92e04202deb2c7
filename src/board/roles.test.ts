import { describe, expect, it } from "vitest";
import type { Board } from "./board.ts";
import { parseBoard } from "./parse-board.ts";
import { deriveRoles } from "./roles.ts";
import { rolesInWords } from "./roles-in-words.ts";
import { smallDrive } from "./small-drive.fixture.ts";
import { storesOfCharge } from "./stores-of-charge.ts";

type Raw = ReturnType<typeof smallDrive>;

function load(change: (raw: Raw) => void = () => undefined): Board {
  const raw = smallDrive();
  change(raw);
  const parsed = parseBoard(raw);
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
}

function without(...kinds: readonly string[]): (raw: Raw) => void {
  return (raw) => {
    for (const [ref, part] of Object.entries(raw.parts))
      if (kinds.includes(String(part.kind))) delete raw.parts[ref];
  };
}

describe("the bus", () => {
  it("is the pair of nets across the inverter legs, the shunt under them seen through", () => {
    expect(deriveRoles(load()).bus).toEqual({ plus: "PBUS", minus: "NBUS", from: "inverter legs" });
  });

  it("is the pair across the largest capacitor of 200 V or more where there is no inverter", () => {
    expect(deriveRoles(load(without("igbt"))).bus).toEqual({
      plus: "PBUS",
      minus: "MID",
      from: "largest capacitor",
    });
  });

  it("of a 24 V board is found across its 40 V switches, which on a mains board would only be a drive", () => {
    const lowVolts = (raw: Raw) => {
      for (const part of Object.values(raw.parts)) if (part.kind === "igbt") part.value = { volts: 40 };
    };
    expect(deriveRoles(load(lowVolts)).motorSwitches).toEqual([]);
    const board = load((raw) => {
      lowVolts(raw);
      raw.supply = { kind: "dc", volts: 24, at: ["PBUS", "NBUS"] };
    });
    expect(deriveRoles(board).bus?.from).toBe("inverter legs");
    expect(deriveRoles(board).line).toEqual([]);
  });

  it("is nowhere on a board with neither", () => {
    expect(deriveRoles(load(without("igbt", "capacitor"))).bus).toBeNull();
  });

  it("does not depend on what the board says of stages", () => {
    const bare = load((raw) => {
      for (const part of Object.values(raw.parts)) delete part.stage;
    });
    expect(rolesInWords(bare)).toEqual(rolesInWords(load()));
  });

  it("is found through a power module with one shunt a leg", () => {
    const board = load((raw) => {
      without("igbt", "zener")(raw);
      const pins = { p: "PBUS", nu: "N1", nv: "N2", nw: "N3", u: "U", v: "V", w: "W" };
      raw.parts.IPM1 = { kind: "module", pins };
      for (const n of [1, 2, 3])
        raw.parts[`RSH${n}`] = {
          kind: "resistor",
          pins: { "1": `N${n}`, "2": "NBUS" },
          value: { ohms: 0.03 },
        };
    });
    const roles = deriveRoles(board);
    expect(roles.bus).toEqual({ plus: "PBUS", minus: "NBUS", from: "inverter legs" });
    expect(roles.motorSwitches.map((one) => one.site)).toEqual([
      "IPM1.up",
      "IPM1.un",
      "IPM1.vp",
      "IPM1.vn",
      "IPM1.wp",
      "IPM1.wn",
    ]);
    expect(roles.shunts).toEqual(["RS1", "RSH1", "RSH2", "RSH3"]);
  });
});

describe("what a part does", () => {
  const roles = deriveRoles(load());

  it("makes a switch between bus and phase a motor switch", () => {
    expect(roles.motorSwitches.map((one) => `${one.part} ${one.side} ${one.phase}`)).toEqual([
      "Q1 upper U",
      "Q4 lower U",
      "Q2 upper V",
      "Q5 lower V",
      "Q3 upper W",
      "Q6 lower W",
    ]);
    expect(roles.phases).toEqual(["U", "V", "W"]);
  });

  it("hangs clamp, pull-down and gate resistor on the right gate", () => {
    expect(roles.gates.find((gate) => gate.switch === "Q4")).toEqual({
      switch: "Q4",
      net: "GL_U",
      clamps: ["DZ4"],
      pullDowns: ["RP4"],
      series: ["RG4"],
    });
  });

  it("knows the mains side up to the bridge, and what stands in it", () => {
    expect(roles.line).toEqual(["L_IN", "N_IN", "L_F", "L_B"]);
    expect(roles.lineFuses).toEqual(["F1"]);
    expect(roles.inrush).toEqual(["NTC1"]);
    expect(roles.bridges).toEqual(["BR1"]);
  });

  it("follows a rail from its rectifier to what it feeds", () => {
    expect(roles.rails[0]).toEqual({
      name: "V15",
      net: "V15",
      back: "NBUS",
      volts: 15,
      from: "D1",
      rectifiers: ["D1"],
      bulk: ["C4"],
      decoupling: [],
      loads: ["U2", "U5"],
    });
    expect(roles.controllers).toEqual([
      { part: "U3", net: "V5", back: "NBUS", rail: "V5", decoupling: ["C5"] },
    ]);
    expect(roles.switchers).toEqual([{ part: "U1", transformer: "T1", clamp: [] }]);
  });

  it("finds the clamp behind a supply's drain: a diode, and what ends at the primary's other side", () => {
    const board = load((raw) => {
      raw.parts.D9 = { kind: "diode", pins: { a: "DRAIN", k: "CLAMP" } };
      raw.parts.R9 = { kind: "resistor", pins: { "1": "CLAMP", "2": "PBUS" }, value: { ohms: 100_000 } };
      raw.parts.C9 = { kind: "capacitor", pins: { plus: "CLAMP", minus: "PBUS" }, value: { farads: 2.2e-9 } };
    });
    expect(deriveRoles(board).switchers[0]?.clamp).toEqual(["D9", "R9", "C9"]);
  });

  it("takes resistors that only drain the bus for bleeders, alone or in a row; not the chain that measures it", () => {
    const resistor = (one: string, other: string, ohms: number) => ({
      kind: "resistor",
      pins: { "1": one, "2": other },
      value: { ohms },
    });
    const board = load((raw) => {
      raw.parts.R91 = resistor("PBUS", "BLEED", 100_000);
      raw.parts.R92 = resistor("BLEED", "NBUS", 100_000);
      raw.parts.R93 = resistor("PBUS", "NBUS", 220_000);
      raw.parts.R94 = resistor("PBUS", "SENSE", 470_000);
      raw.parts.R95 = resistor("SENSE", "NBUS", 4_700);
      raw.parts.C95 = { kind: "capacitor", pins: { plus: "SENSE", minus: "NBUS" }, value: { farads: 1e-8 } };
    });
    expect(deriveRoles(board).bleeders).toEqual(["R91", "R92", "R93"]);
  });

  it("makes a single switch with a reactor and a diode to the bus a boost", () => {
    const board = load((raw) => {
      raw.parts.Q9 = { kind: "igbt", pins: { g: "GP", c: "SW", e: "NBUS" } };
      raw.parts.L9 = { kind: "inductor", pins: { "1": "BR_P", "2": "SW" } };
      raw.parts.D9 = { kind: "diode", pins: { a: "SW", k: "PBUS" } };
    });
    expect(deriveRoles(board).boosts).toEqual([{ switch: "Q9", diode: "D9", reactor: "L9", net: "SW" }]);
    expect(deriveRoles(board).motorSwitches).toHaveLength(6);
  });
});

describe("a store of charge", () => {
  it("is each capacitor of a series pair, the film and the X capacitor, most energy first", () => {
    expect(storesOfCharge(load()).map((store) => `${store.part} ${store.kind}`)).toEqual([
      "C1 bus capacitor",
      "C2 bus capacitor",
      "C3 film capacitor",
      "CX1 X capacitor",
    ]);
  });

  it("holds its energy at its rated voltage", () => {
    expect(storesOfCharge(load())[0]?.joules).toBeCloseTo(21.25, 9);
  });

  it("is also the small supply's own bulk, and any capacitor of over 20 J whatever its voltage", () => {
    const board = load((raw) => {
      raw.parts.C8 = {
        kind: "capacitor",
        pins: { plus: "AUXP", minus: "NBUS" },
        value: { farads: 22e-6, volts: 400, type: "electrolytic" },
        stage: "supply",
      };
      raw.parts.C9 = {
        kind: "capacitor",
        pins: { plus: "BAT", minus: "NBUS" },
        value: { farads: 0.1, volts: 25 },
      };
    });
    const stores = storesOfCharge(board);
    expect(stores.find((store) => store.part === "C8")?.kind).toBe("supply capacitor");
    expect(stores.map((store) => store.part)).toContain("C9");
  });

  it("is not a ceramic on a low rail, be it rated for 100 V", () => {
    expect(storesOfCharge(load()).map((store) => store.part)).not.toContain("C5");
  });

  it("may be a capacitor of unknown rating, where it stands across the bus", () => {
    const board = load((raw) => {
      raw.parts.C7 = { kind: "capacitor", pins: { plus: "PBUS", minus: "NBUS" } };
    });
    expect(storesOfCharge(board)[0]).toMatchObject({ part: "C7", volts: null, joules: null });
  });
});
