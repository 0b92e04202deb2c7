/** A small supply of one transistor, a starting resistor and a winding that keeps it swinging, in the place of a shipped drive's chip. */
import { describe, expect, it } from "vitest";
import { discreteSupplyBoard, SILENCING } from "./discrete-supply.fixture.ts";
import { LiveBoard } from "./live-board.ts";
import { BARE, dc, faultsNamed, railShares } from "./on-power.fixture.ts";

const board = discreteSupplyBoard();
const live = new LiveBoard(board, BARE, { kind: "mains" });

const on = (names = "") => live.state(faultsNamed(board, names));
const share = (names: string, rail = "V15") => railShares(on(names), board).get(rail) ?? Number.NaN;

describe("a small supply without a chip", () => {
  it("makes its rails from the mains, and the board runs", () => {
    const good = on();
    expect(good.supply.mode).toBe("runs");
    expect(good.observed).toEqual(["runs"]);
    expect(share("")).toBeCloseTo(1, 2);
    expect(share("", "V5")).toBeCloseTo(1, 2);
  });

  it.each(SILENCING)("%s: bus right, no rail, and not a tick of it", (name) => {
    const state = on(name);
    expect(state.supply.mode).toBe("nothing");
    expect(share(name)).toBeCloseTo(0, 2);
    expect(dc(state, "PBUS", "NBUS")).toBeGreaterThan(300);
  });

  it("a shorted rectifier or rail makes it try again and again", () => {
    for (const name of ["D7:short", "C19:short"]) expect(on(name).supply.mode).toBe("hiccup");
  });

  it("its rails rise where the coupler no longer holds it, and it does nothing where the coupler always does", () => {
    expect(share("OC1.led:open")).toBeGreaterThan(1.2);
    expect(on("OC1.out:short").supply.mode).toBe("nothing");
  });

  it("shorted through it burns the fuse resistor before it", () => {
    const state = on("Q91.ce:short");
    expect(state.supply.mode).toBe("nothing");
    expect(state.opened).toContain("R27");
  });
});
