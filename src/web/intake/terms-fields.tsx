/** The job's money. Where no price is agreed the shop's usual one is counted with, and every card that uses it says so. */
import { SHOP_TERMS } from "../money/terms-typed.ts";
import { go } from "../route.ts";
import type { IntakeProps } from "./intake.ts";

/** What may be another for each job; the rest is the shop's. */
const OF_THE_JOB = new Set([
  "agreedPrice",
  "ratePerHour",
  "newBoardPrice",
  "feeIfNotRepaired",
  "comebackCost",
  "taxRate",
]);

export function TermsFields({ intake, change }: IntakeProps) {
  return (
    <details>
      <summary>
        <span>
          Terms{" "}
          <small>
            {intake.agreed ? "agreed" : "the shop's usual"}: {intake.terms.agreedPrice}{" "}
            {intake.terms.currency}, {intake.terms.ratePerHour} an hour
          </small>
        </span>
      </summary>
      <label className="tick">
        <input
          type="checkbox"
          checked={intake.agreed}
          onChange={(event) => change({ agreed: event.target.checked })}
        />
        A price is agreed with the customer
      </label>
      <div className="terms">
        {SHOP_TERMS.filter(({ name }) => OF_THE_JOB.has(name)).map(({ name, words }) => (
          <label className="entry" key={name}>
            {name === "agreedPrice" && intake.agreed ? "Price when repaired" : words}
            <input
              inputMode="decimal"
              autoComplete="off"
              value={intake.terms[name]}
              disabled={name === "agreedPrice" && !intake.agreed}
              onChange={(event) => change({ terms: { ...intake.terms, [name]: event.target.value } })}
            />
          </label>
        ))}
      </div>
      <button type="button" className="quiet small" onClick={() => go("#/shop")}>
        All of the shop's terms
      </button>
    </details>
  );
}
