/** The job's money. Where no price is agreed the shop's usual one is counted with, and every card that uses it says so. */

import { said } from "../../messages/said.ts";
import { TermField } from "../money/term-field.tsx";
import { SHOP_TERMS } from "../money/terms-typed.ts";
import { go } from "../route.ts";
import { say } from "../say.ts";
import type { IntakeProps } from "./intake.ts";

/** What may be another for each job; the rest is the shop's. */
const OF_THE_JOB = new Set([
  "agreedPrice",
  "ratePerHour",
  "newBoardPrice",
  "feeIfNotRepaired",
  "comebackCost",
  "taxRate",
  "boardStays",
]);

export function TermsFields({ intake, change }: IntakeProps) {
  const { agreedPrice, currency, ratePerHour } = intake.terms;
  return (
    <details>
      <summary>
        <span>
          {say`Terms`}{" "}
          <small>
            {intake.agreed
              ? say`agreed: ${agreedPrice} ${currency}, ${ratePerHour} an hour`
              : say`the shop's usual: ${agreedPrice} ${currency}, ${ratePerHour} an hour`}
          </small>
        </span>
      </summary>
      <label className="tick">
        <input
          type="checkbox"
          checked={intake.agreed}
          onChange={(event) => change({ agreed: event.target.checked })}
        />
        {say`A price is agreed with the customer`}
      </label>
      <div className="terms">
        {SHOP_TERMS.filter(({ name }) => OF_THE_JOB.has(name)).map((term) => {
          const price = term.name === "agreedPrice";
          return (
            <TermField
              key={term.name}
              term={term}
              terms={intake.terms}
              {...(price && intake.agreed ? { words: said`Price when repaired` } : {})}
              disabled={price && !intake.agreed}
              onType={(typed) => change({ terms: { ...intake.terms, ...typed } })}
            />
          );
        })}
      </div>
      <button type="button" className="quiet small" onClick={() => go("#/shop")}>
        {say`All of the shop's terms`}
      </button>
    </details>
  );
}
