/** The shop's terms: what every new job starts with, kept in this browser as they are typed. */
import { useEffect, useState } from "react";
import { Away, api } from "../api.ts";
import { go } from "../route.ts";
import { keepShopName, keepShopTerms, shopName, shopTerms } from "./shop-terms.ts";
import { SHOP_TERMS, type TermsTyped, termsOf, termsProblem } from "./terms-typed.ts";

export function ShopScreen() {
  const [terms, setTerms] = useState<TermsTyped | null>(null);
  const [unkept, setUnkept] = useState<string | null>(null);
  const [name, setName] = useState("");
  useEffect(() => {
    void shopTerms().then(setTerms);
    void shopName().then(setName);
  }, []);
  if (terms === null) return null;
  const problem = termsProblem(terms);
  const type = (change: Partial<TermsTyped>) => {
    const typed = { ...terms, ...change };
    setTerms(typed);
    if (termsProblem(typed) === null)
      keepShopTerms(typed).then(
        () => setUnkept(null),
        (error: Error) => setUnkept(`This browser keeps nothing (${error.message}).`),
      );
  };
  return (
    <div className="jobs-screen">
      <header className="front">
        <h1>The shop's terms</h1>
        <p>
          Every new job starts with these. Sums are before tax. Jobs that are open keep the terms they have.
        </p>
      </header>
      <main className="shop">
        <label className="entry">
          Name and address, for the head of papers
          <input
            autoComplete="off"
            maxLength={200}
            value={name}
            onChange={(event) => {
              setName(event.target.value);
              void keepShopName(event.target.value);
            }}
          />
        </label>
        <div className="terms">
          {SHOP_TERMS.map(({ name, words, hint }) => (
            <label className="entry" key={name}>
              <span>
                {words} {hint !== "" && <small className="aside">{hint}</small>}
              </span>
              <input
                inputMode={name === "currency" ? "text" : "decimal"}
                autoComplete="off"
                value={terms[name]}
                onChange={(event) => type({ [name]: event.target.value })}
              />
            </label>
          ))}
        </div>
        <Warranty terms={terms} onUse={(warrantyCost) => type({ warrantyCost })} />
        <p className={problem === null && unkept === null ? "aside" : "entry-problem"} role="status">
          {problem ?? unkept ?? "Kept in this browser."}
        </p>
        <button type="button" className="primary tall" onClick={() => go("#/")}>
          All jobs
        </button>
      </main>
    </div>
  );
}

interface WarrantyProps {
  readonly terms: TermsTyped;
  onUse(warrantyCost: string): void;
}

/** What this shop's own come-backs say, once it has repaired something. */
function Warranty({ terms, onUse }: WarrantyProps) {
  const [own, setOwn] = useState<{ readonly cost: string; readonly words: string } | null>(null);
  const right = termsProblem(terms) === null;
  const { currency = "EUR", warrantyCost: inTerms = 0 } = right ? termsOf(terms, false) : {};
  useEffect(() => {
    let waiting = true;
    api.warranty(String(currency), Number(inTerms)).then(
      ({ repaired, comebacks, costOfOne }) =>
        waiting &&
        setOwn(
          repaired === 0
            ? null
            : {
                cost: costOfOne.toFixed(2),
                words: `${repaired} repaired, ${comebacks} came back: ${costOfOne.toFixed(2)} ${currency} for each repair, the figure above counting as twenty of them.`,
              },
        ),
      (problem: unknown) => {
        if (!(problem instanceof Away)) throw problem;
      },
    );
    return () => {
      waiting = false;
    };
  }, [currency, inTerms]);
  if (own === null) return null;
  return (
    <section className="own-warranty" aria-label="This shop's own come-backs">
      <p>{own.words}</p>
      <button type="button" className="small" onClick={() => onUse(own.cost)}>
        Set {own.cost} aside
      </button>
    </section>
  );
}
