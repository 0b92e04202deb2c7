/** Finding the short of a rail on shipped boards, by what each bench has. Tracks, circuit and warmth come from the fixture's own bench. */

import { describe, expect, it } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { plain } from "../messages/said.ts";
import type { Action } from "../planning/proposal.ts";
import { type Played, playRail, type RawParts } from "./rail-bench.fixture.ts";

const EIGHT_CERAMICS = {
  board: "greenhouse-fan-drive",
  rail: "V5",
  spoil: (parts: RawParts) => {
    for (const ref of ["C91", "C92", "C93", "C94"])
      parts[ref] = { ...parts.C24, pins: { plus: "V5", minus: "NBUS" } };
  },
};

const chance = ({ last }: Played, part: string): number =>
  last.belief.suspects.find((one) => one.part === part)?.probability ?? 0;

/** Chance that the part is shorted, whatever else may be wrong with it. */
const shorted = ({ last }: Played, part: string): number =>
  (last.belief.suspects.find((one) => one.part === part)?.modes ?? [])
    .filter(({ fault }) => fault.endsWith(":short"))
    .reduce((sum, { probability }) => sum + probability, 0);

const actions = ({ proposals }: Played): readonly Action[] => proposals.map(({ action }) => action);

/** Parts taken off or lifted on the way. */
const handled = ({ log }: Played): readonly string[] =>
  log.flatMap((event: JobEvent) => {
    if (event.do === "lift") return [event.place.slice(0, event.place.indexOf("."))];
    return event.do === "remove" || event.do === "replace" ? [event.part] : [];
  });

const milliohms = (played: Played): readonly Action[] =>
  actions(played).filter((action) => action.do === "measure" && action.wires === 4);

const injections = (played: Played) =>
  actions(played).flatMap((action) => (action.do === "power" && action.feed === "bench" ? [action] : []));

describe("eight ceramics and a controller on 5 V, one of the ceramics shorted with 0.8 ohm", () => {
  it("with a milliohm meter: found, replaced, powered and closed, and the controller never lifted or taken off", () => {
    const equipment = ["milliohm-meter", "lamp-100"];
    const played = playRail({ ...EIGHT_CERAMICS, hidden: "C91:short@0.8", equipment }, 60, "close");
    expect(milliohms(played)).toHaveLength(1);
    expect(played.log.flatMap((event) => (event.do === "replace" ? [event.part] : []))).toEqual(["C91"]);
    expect(handled(played)).not.toContain("U7");
    expect(actions(played).at(-1)).toMatchObject({ do: "close", verdict: "repaired" });
  });

  it("with supply and camera: fed with 0.35 V below every junction, the warmest is the short", () => {
    const equipment = ["bench-supply", "thermal-camera"];
    const played = playRail({ ...EIGHT_CERAMICS, hidden: "C92:short@0.8", equipment }, 12);
    expect(injections(played)[0]).toMatchObject({ volts: 0.35, limitAmps: 1, at: ["V5", "NBUS"] });
    expect(chance(played, "C92")).toBeGreaterThan(0.8);
    expect(handled(played)).not.toContain("U7");
  });

  it("with a multimeter, a rechargeable cell and 1 ohm: millivolts over amps at each part's pins find it too", () => {
    const played = playRail(
      { ...EIGHT_CERAMICS, hidden: "C24:short@0.8", equipment: ["rechargeable-cell"] },
      8,
    );
    expect(milliohms(played)).toHaveLength(1);
    expect(chance(played, "C24")).toBeGreaterThan(0.9);
    expect(handled(played)).not.toContain("U7");
  });

  it("with none of these nothing of the kind is proposed", () => {
    const played = playRail({ ...EIGHT_CERAMICS, hidden: "C24:short@0.8", equipment: ["lamp-100"] }, 4);
    expect(milliohms(played)).toEqual([]);
    expect(injections(played)).toEqual([]);
  });
});

describe("a controller whose supply is shorted with 12 ohm", () => {
  it("is accused by its ohms and by itself with its pin up; no ceramic is bought or taken off", () => {
    const equipment = ["milliohm-meter", "bench-supply", "thermal-camera"];
    const played = playRail({ ...EIGHT_CERAMICS, hidden: "U7.supply:short@12", equipment }, 12);
    expect(chance(played, "U7")).toBeGreaterThan(0.9);
    for (const ceramic of ["C24", "C25", "C26", "C27", "C91", "C94"]) {
      expect(chance(played, ceramic)).toBeLessThan(0.03);
      expect(handled(played)).not.toContain(ceramic);
    }
    expect(played.log.some((event) => event.do === "replace")).toBe(false);
  });
});

describe("a short of 0.02 ohm", () => {
  it("stays cold although the supply is at its limit, and the milliohms along the rail find it", () => {
    const equipment = ["bench-supply", "thermal-camera"];
    const played = playRail({ ...EIGHT_CERAMICS, hidden: "C93:short@0.02", equipment }, 26);
    for (const event of played.log) {
      if (event.do === "power") expect(event.observed).toEqual(["limiting"]);
      if (event.do === "measure" && event.mode === "temperature") expect(event.reading).toBeLessThan(24);
    }
    expect(injections(played).length).toBeLessThan(2);
    expect(milliohms(played).length).toBeGreaterThan(0);
    expect(chance(played, "C93")).toBeGreaterThan(0.9);
  });
});

describe("a short behind a link", () => {
  it("is on the far side once one end of the link is up: half the parts are cleared by one lift", () => {
    const behind = (parts: RawParts) => {
      const minutes = { lift: 2, refit: 1 };
      parts.J9 = { kind: "link", pins: { "1": "V5", "2": "V5B" }, value: { ohms: 0.01 }, minutes };
      for (const ref of ["C24", "C25", "C26", "C27", "C28"]) parts[ref].pins.plus = "V5B";
      parts.U7.pins.vdd = "V5B";
    };
    const drive = { board: "greenhouse-fan-drive", rail: "V5", spoil: behind, equipment: [] };
    const played = playRail({ ...drive, hidden: "C26:short@0.8" }, 13);
    expect(handled(played)[0]).toBe("J9");
    for (const near of ["C23", "U6"]) expect(shorted(played, near)).toBeLessThan(0.02);
    const far = ["U7", "C24", "C25", "C26", "C27", "C28"].map((part) => chance(played, part));
    expect(far.reduce((sum, one) => sum + one, 0)).toBeGreaterThan(0.95);
  });
});

describe("milliohms and cuts are weighed by what they cost", () => {
  const behindLink = (minutes: number, plugged: boolean) => (parts: RawParts) => {
    const link = { kind: "link", pins: { "1": "V5", "2": "V5B" }, value: { ohms: 0.01 }, plugged };
    parts.J9 = { ...link, minutes: { lift: minutes, refit: minutes } };
    for (const ref of ["C24", "C25", "C26", "C27", "C28"]) parts[ref].pins.plus = "V5B";
    parts.U7.pins.vdd = "V5B";
  };
  const drive = { board: "greenhouse-fan-drive", rail: "V5", equipment: ["milliohm-meter"] };
  const firstOfTheRail = (played: Played): string | undefined =>
    actions(played)
      .map((action) => {
        if (action.do === "measure" && action.wires === 4) return "milliohms";
        return action.do === "lift" || action.do === "remove" ? "cut" : "other";
      })
      .find((what) => what !== "other");

  it("a link that pulls off in seconds goes before a row of milliohms", () => {
    const played = playRail({ ...drive, spoil: behindLink(0.1, true), hidden: "C26:short@0.8" }, 6);
    expect(firstOfTheRail(played)).toBe("cut");
  });

  it("one that takes the iron five minutes does not", () => {
    const played = playRail({ ...drive, spoil: behindLink(5, false), hidden: "C26:short@0.8" }, 6);
    expect(firstOfTheRail(played)).toBe("milliohms");
  });
});

describe("no low voltage fed into a rail", () => {
  it.each([
    ["outdoor-unit-inverter", "V33", "C44:short@3", 3.3],
    ["greenhouse-fan-drive", "V5", "C24:short@3", 5],
    ["small-frequency-drive", "V15", "C27:short@3", 15],
  ])("is above that rail's own volts, nor without its current limit: %s %s", (board, rail, hidden, volts) => {
    let fedAtAll = 0;
    for (const source of ["bench-supply", "rechargeable-cell"]) {
      const played = playRail({ board, rail, hidden, equipment: [source, "thermal-camera"] }, 6);
      fedAtAll += injections(played).length;
      for (const { volts: fed, limitAmps } of injections(played)) {
        expect(fed).toBeLessThanOrEqual(Math.min(1.2, volts));
        expect(limitAmps).toBeLessThanOrEqual(1.2);
      }
    }
    expect(fedAtAll).toBeGreaterThan(0);
  });
});

describe("a negative rail of six ceramics, its electrolytic and an amplifier, one ceramic shorted with 0.8 ohm", () => {
  const NEGATIVE = {
    board: "greenhouse-fan-drive",
    rail: "VN12",
    rails: { VN12: { net: "VN12", volts: -12, tolerance: 0.1 } },
    spoil: (parts: RawParts) => {
      for (const ref of ["C91", "C92", "C93", "C94", "C95", "C96"])
        parts[ref] = { ...parts.C24, pins: { plus: "NBUS", minus: "VN12" } };
      parts.U95 = { kind: "ic", pins: { vcc: "NBUS", gnd: "VN12" }, stage: "sensor" };
      parts.C97 = {
        kind: "capacitor",
        pins: { plus: "NBUS", minus: "VN12" },
        value: { farads: 100e-6, volts: 25, type: "electrolytic" },
        stage: "supply",
      };
    },
  };
  const equipment = ["bench-supply", "thermal-camera"];

  it("is fed by its 0 V, minus on the rail, below every junction; the warmest is the short", () => {
    const played = playRail({ ...NEGATIVE, hidden: "C95:short@0.8", equipment }, 6);
    const [first] = injections(played);
    expect(first).toMatchObject({ volts: 0.35, limitAmps: 1, at: ["NBUS", "VN12"] });
    const card = played.proposals.find(({ action }) => action === first);
    expect(plain(card?.why ?? "")).toContain("plus on its 0 V (NBUS) and minus on VN12");
    expect(chance(played, "C95")).toBeGreaterThan(0.8);
    expect(handled(played)).not.toContain("U95");
  });
});
