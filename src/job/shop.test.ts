import { describe, expect, it } from "vitest";
import { plain } from "../messages/said.ts";
import { changedShop, NEW_SHOP, parseShop } from "./shop.ts";

const problemOf = (input: unknown) => {
  const shop = parseShop(input);
  return shop.ok ? null : plain(shop.problem);
};

describe("the shop's own terms", () => {
  it("are the terms of a job file, judged by the same reader", () => {
    const terms = { ratePerHour: 45, usualPrice: 150, taxRate: 0.2, boardStays: true };
    expect(parseShop({ name: "Bench 4", terms })).toEqual({ ok: true, value: { name: "Bench 4", terms } });
    expect(parseShop(NEW_SHOP)).toEqual({ ok: true, value: NEW_SHOP });
  });

  it("are refused by the field, with what would be right", () => {
    expect(problemOf({ name: "", terms: { ratePerHuor: 4 } })).toMatch(/^terms\.ratePerHuor: .*ratePerHour/);
    expect(problemOf({ name: "", terms: { taxRate: 20 } })).toMatch(/^terms\.taxRate: /);
    expect(problemOf({ name: "", terms: { boardStays: "yes" } })).toMatch(
      /^terms\.boardStays: expected true/,
    );
    expect(problemOf({ name: "x".repeat(201), terms: {} })).toMatch(/^name: is longer than 200/);
    expect(problemOf({ terms: {} })).toMatch(/name/);
    expect(problemOf([])).toMatch(/expected an object/);
  });

  it("hold what the bench has and the warranty, which are left out until somebody has said them", () => {
    const said = { name: "", terms: {}, equipment: ["lamp-100", "bench-supply"], warranty: "90 days" };
    expect(parseShop(said)).toEqual({ ok: true, value: said });
    expect(problemOf({ name: "", terms: {}, equipment: ["lamp-100", "lmap"] })).toMatch(/^equipment\[1\]: /);
    expect(problemOf({ name: "", terms: {}, warranty: "x".repeat(2001) })).toMatch(/^warranty: is longer/);
  });

  it("are changed in part: what a change does not name stays as it was", () => {
    const shop = {
      name: "Bench 4",
      terms: { ratePerHour: 45 },
      equipment: ["lamp-100"],
      warranty: "90 days",
    };
    expect(changedShop(shop, { equipment: [] })).toEqual({ ok: true, value: { ...shop, equipment: [] } });
    expect(changedShop(shop, { warranty: "" })).toEqual({ ok: true, value: { ...shop, warranty: "" } });
    expect(changedShop(shop, { waranty: "" })).toMatchObject({ ok: false });
    expect(changedShop(shop, [])).toMatchObject({ ok: false });
  });

  it("hold no price agreed: that is one job's", () => {
    expect(problemOf({ name: "", terms: { agreedPrice: 90 } })).toMatch(/^terms\.agreedPrice: .*usualPrice/);
  });
});
