import { describe, expect, it } from "vitest";
import { KIND_NAMES } from "../board/kinds.ts";
import { inEnglish } from "../messages/in-english.fixture.ts";
import { notInHouse, type StockLine } from "./catalogue.ts";
import { incomingCheck } from "./incoming-check.ts";
import { offersFor } from "./offers.ts";
import { likeOriginal, placeOf } from "./originals.fixture.ts";
import type { Ratings } from "./ratings.ts";

function line(name: string, change: Ratings, more: Partial<StockLine> = {}): StockLine {
  return { ...notInHouse({ ...likeOriginal("bridge", change), name }), ...more };
}

describe("parts for a place", () => {
  const drawer = { count: 3, place: "drawer 4" };
  const catalogue = [
    line("too low", { volts: 400 }, drawer),
    line("on order", { volts: 800 }, { price: 1.5 }),
    line("dear", { volts: 800 }, { ...drawer, price: 3 }),
    line("cheap", { volts: 800 }, { ...drawer, price: 2 }),
    line("no price", { volts: 800 }, drawer),
    line("pulled", { volts: 800 }, { ...drawer, price: 0, used: true, donor: "heat pump board 12" }),
    line("of a wider case", { package: "GBPC" }, { ...drawer, price: 1 }),
    { ...line("no bridge", {}), type: likeOriginal("boost diode") },
  ];

  it("are ranked by verdict, by what lies in the house, by conditions, by price; another kind is left out", () => {
    const names = offersFor(placeOf("bridge"), catalogue).map((offer) => [
      offer.line.type.name,
      offer.verdict.fits,
    ]);
    expect(names).toEqual([
      ["cheap", "fits"],
      ["dear", "fits"],
      ["no price", "fits"],
      ["on order", "fits"],
      ["pulled", "fits with conditions"],
      ["of a wider case", "fits with conditions"],
      ["too low", "no"],
    ]);
  });
});

function stepsOf(...part: Parameters<typeof incomingCheck>): ReturnType<typeof incomingCheck> {
  return inEnglish(incomingCheck(...part));
}

const ALL_STEPS = KIND_NAMES.flatMap((kind) =>
  stepsOf(kind, "other", {}, true).map((step) => ({ kind, ...step })),
);

describe("the two minutes before a part goes in", () => {
  it("try an IGBT's junctions, gate, hold and release, and a pulled one's threshold and die", () => {
    const fresh = stepsOf("igbt", "motor switch", { tab: "isolated" }, false);
    const used = stepsOf("igbt", "motor switch", { tab: "isolated" }, true);
    expect(fresh.map((one) => one.expect).join("; ")).toMatch(
      /OL.*0\.35 to 0\.55 V.*still conducts.*off again.*over 20 Mohm/,
    );
    expect(used.length).toBe(fresh.length + 2);
    expect(
      used.filter((one) => !fresh.some((other) => other.do === one.do)).every((one) => one.pulledOnly),
    ).toBe(true);
  });

  it("ask for pad and bush where the tab is live or nobody knows", () => {
    for (const ratings of [{ tab: "live" }, {}])
      expect(stepsOf("igbt", "boost switch", ratings, false).at(-1)?.expect).toContain("pad and bush");
  });

  it("look at a module's control side too, not only at its six diodes", () => {
    const words = stepsOf("module", "power module", {}, false)
      .map((one) => one.do)
      .join("; ");
    expect(words).toMatch(/V15 to COM.*VB.*each input.*fault and trip.*base plate/);
  });

  it("B1, Powertec manual p. 44: a module's junctions read 0.3 to 0.7 V each; what the three agree to is closer, from memory", () => {
    const steps = stepsOf("module", "power module", {}, false);
    const junctions = steps.filter((one) => one.source?.includes("Powertec 1000AR") === true);
    expect(junctions.map((one) => [one.expect, one.mark])).toEqual([
      ["each 0.3 to 0.7 V", "seen"],
      ["each 0.3 to 0.7 V", "seen"],
    ]);
    expect(steps.find((one) => one.do.startsWith("compare"))).toMatchObject({
      expect: expect.stringContaining("within 20 mV, most often at 0.36 to 0.46 V"),
      mark: "from memory",
    });
  });

  it("B7, J2 and J4: a bridge 0.2 to 0.8 V each, a silicon diode 0.40 to 0.80, a Schottky 0.1 to 0.45 V", () => {
    const published = (kind: "bridge" | "diode") =>
      stepsOf(kind, "other", {}, false).flatMap((one) => (one.mark === "seen" ? [one.expect] : []));
    expect(published("bridge")).toEqual(["each 0.2 to 0.8 V"]);
    expect(published("diode")).toEqual([
      expect.stringMatching(/^0\.40 to 0\.80 V/),
      expect.stringMatching(/^0\.1 to 0\.45 V/),
    ]);
  });

  it("give every expected value its mark, and a source where it was seen", () => {
    for (const { kind, mark, source } of ALL_STEPS) {
      expect(["seen", "common practice", "from memory"], kind).toContain(mark);
      expect(source !== null, kind).toBe(mark === "seen");
    }
  });

  it("begin with the marking whatever the part", () => {
    for (const kind of ["igbt", "inductor", "capacitor", "fuse"] as const)
      expect(stepsOf(kind, "other", {}, true)[0]?.do).toContain("marking");
  });
});
