import { expect, it } from "vitest";
import { isSaid, plain } from "../messages/said.ts";
import { OVERRULE_REASONS, overruleReason } from "./overrule-reasons.ts";

it.each(Object.values(OVERRULE_REASONS).flat())(
  "%s is kept as it reads in English and can be told again",
  (reason) => {
    expect(isSaid(plain(reason))).toBe(false);
    expect(overruleReason(plain(reason))).toBe(reason);
  },
);

it("a reason that somebody wrote stays as it is", () => {
  expect(overruleReason("the customer's electrician did")).toBe("the customer's electrician did");
});
