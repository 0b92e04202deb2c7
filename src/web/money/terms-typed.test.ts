import fc from "fast-check";
import { expect, it } from "vitest";
import {
  SHOP_TERMS,
  type TermsTyped,
  termsOf,
  termsProblem,
  typedTerms,
  USUAL_TERMS,
} from "./terms-typed.ts";

const cents = fc.nat(99_999).map((amount) => String(amount / 100));
const typed: fc.Arbitrary<TermsTyped> = fc.record(
  Object.fromEntries(
    SHOP_TERMS.map(({ name, typed: by }) => [
      name,
      by === "word"
        ? fc.constantFrom("EUR", "JPY", "KWD")
        : by === "tick"
          ? fc.constantFrom("yes", "no")
          : by === "percent"
            ? fc.nat(1000).map((tenths) => String(tenths / 10))
            : cents,
    ]),
  ),
) as fc.Arbitrary<TermsTyped>;

it("terms that were typed and kept come back as they were typed", () => {
  fc.assert(
    fc.property(typed, (terms) => {
      expect(termsProblem(terms)).toBeNull();
      expect(typedTerms(termsOf(terms, false))).toEqual(terms);
    }),
    { seed: 77, numRuns: 200 },
  );
  expect(typedTerms({})).toEqual(USUAL_TERMS);
});

it("a share is typed in per cent: 12.5 % is 0.125 and not the binary fraction beside it", () => {
  expect(termsOf({ ...USUAL_TERMS, taxRate: "12,5", partsMarkUp: "7" }, false)).toMatchObject({
    taxRate: 0.125,
    partsMarkUp: 0.07,
  });
});
