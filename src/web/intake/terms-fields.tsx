/** The job's money. Where no price is agreed the shop's usual one is counted with, and every card that uses it says so. */
import { type IntakeProps, TERMS } from "./intake.ts";

export function TermsFields({ intake, change }: IntakeProps) {
  return (
    <details>
      <summary>
        <span>
          Terms{" "}
          <small>
            {intake.agreed ? "agreed" : "the shop's usual"}: {intake.terms.agreedPrice} EUR,{" "}
            {intake.terms.ratePerHour} an hour
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
        {TERMS.map(({ name, words }) => (
          <label className="entry" key={name}>
            {name === "agreedPrice" && !intake.agreed ? "The shop's usual price" : words}
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
    </details>
  );
}
