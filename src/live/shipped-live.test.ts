/** The shipped boards without a fault, on mains and through a lamp. */
import { describe, expect, it } from "vitest";
import { SHIPPED } from "../shipped/shipped.ts";
import { liveReading } from "./live-reading.ts";
import { liveView } from "./live-view.ts";
import { dc, OnPower } from "./on-power.fixture.ts";

const IDS = SHIPPED.map(({ id }) => id);

describe.each(IDS)("%s, healthy", (id) => {
  const live = new OnPower(id);
  const { board } = live;
  const { roles, bypasses } = liveView(board);
  const plus = roles.bus?.plus ?? "";
  const minus = roles.bus?.minus ?? "";
  const state = live.with("");

  it("runs on mains: bus at the mains' peak less two drops, every rail within its tolerance", () => {
    expect(state.observed).toEqual(["runs"]);
    const peak = board.supply.volts * Math.SQRT2;
    const bus = dc(state, plus, minus);
    expect(bus).toBeLessThan(peak - 1);
    expect(bus).toBeGreaterThan(0.985 * peak);
    expect(state.rails.map((rail) => rail.name).sort()).toEqual(board.rails.map((rail) => rail.name).sort());
    for (const rail of board.rails) {
      const volts = state.volts(rail.net, rail.against ?? board.zero);
      expect(Math.abs((volts?.dc ?? 0) / rail.volts - 1)).toBeLessThan(rail.tolerance);
      expect(volts?.dcSpread).toBeLessThan(rail.tolerance * rail.volts);
    }
  });

  it("has its controllers alive, its inrush relays in, its lights on", () => {
    expect(state.alive.size).toBe(roles.controllers.length);
    expect([...state.relaysIn].sort()).toEqual([...bypasses.keys()].sort());
    expect([...state.lights.values()].every((lit) => lit)).toBe(true);
    expect([...state.fans.values()].every((turning) => turning)).toBe(true);
  });

  it("lets a lamp of 100 W go dark, with a little less bus and the same rails", () => {
    const lamp = live.with("", { kind: "lamp", watts: 100 });
    expect(lamp.observed).toEqual(["lamp-dark"]);
    expect(dc(lamp, plus, minus)).toBeGreaterThan(0.94 * dc(state, plus, minus));
    for (const rail of lamp.rails)
      expect(rail.volts).toBeCloseTo(state.rails.find((one) => one.name === rail.name)?.volts ?? 0, 1);
  });

  it("answers live checks: mains at its terminals, bus, no ripple to speak of; nothing of a phase at rest", () => {
    const [line = "", other = ""] = board.supply.at;
    const at = (mode: "dcv" | "acv" | "amps", red: string, black: string) =>
      liveReading(state, { mode, red, black });
    expect(at("acv", line, other)?.value).toBeCloseTo(board.supply.volts, -1);
    expect(Math.abs(at("dcv", line, other)?.value ?? 99)).toBeLessThan(1);
    expect(at("acv", plus, minus)?.value).toBeLessThan(3);
    expect(at("amps", line, other)?.value).toBeGreaterThan(0.005);
    expect(at("amps", plus, minus)).toBeNull();
    for (const phase of roles.phases) expect(at("dcv", phase, minus)).toBeNull();
    // Between the two bleeders of the X capacitor half the mains stands: no steady volts that a divider of means could tell.
    expect(board.nets.has("XB") ? at("acv", "XB", other) : null).toBeNull();
    expect(liveReading(state, { mode: "temperature", part: "nothing" })).toBeNull();
  });
});
