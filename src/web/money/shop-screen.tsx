/** The shop's terms: what every new job starts with, kept as they are typed. */
import { useEffect, useRef, useState } from "react";
import { Away, api } from "../api.ts";
import { go } from "../route.ts";

import { say } from "../say.ts";

import { sendShop } from "../shop-keeper.ts";
import { keepShopTyped, type ShopTyped, shopTyped } from "./shop-terms.ts";

import { TermField } from "./term-field.tsx";
import { SHOP_TERMS, type TermsTyped, termsOf, termsProblem } from "./terms-typed.ts";

/** Fingers rest before what they typed is sent. */
const REST_MS = 700;

/** The shop as it is typed: kept in this browser at every key, and by the bench computer once the fingers rest. */
function useShop() {
  const [shop, setShop] = useState<ShopTyped | null>(null);
  const [said, setSaid] = useState("");
  const resting = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  useEffect(() => {
    shopTyped().then(setShop, (error: Error) => setSaid(error.message));
    return () => {
      clearTimeout(resting.current);
      void sendShop();
    };
  }, []);
  const send = () =>
    sendShop().then(
      (sent) =>
        setSaid(
          sent
            ? say`Kept, for every page and the terminal.`
            : say`Kept in this browser; the bench computer gets it when it answers again.`,
        ),
      (error: Error) => setSaid(error.message),
    );
  const type = (typed: ShopTyped) => {
    setShop(typed);
    setSaid("");
    if (termsProblem(typed.terms) !== null) return;
    clearTimeout(resting.current);
    keepShopTyped(typed).then(
      () => {
        resting.current = setTimeout(() => void send(), REST_MS);
      },
      (error: Error) => setSaid(say`This browser keeps nothing (${error.message}).`),
    );
  };
  return { shop, said, type };
}

export function ShopScreen() {
  const { shop, said, type } = useShop();
  if (shop === null) return said === "" ? null : <p role="alert">{say(said)}</p>;
  const { name, terms } = shop;
  const problem = termsProblem(terms);
  const change = (typed: Partial<TermsTyped>) => type({ ...shop, terms: { ...terms, ...typed } });
  return (
    <div className="jobs-screen">
      <header className="front">
        <h1>{say`The shop's terms`}</h1>
        <p>
          {say`Every new job starts with these. Sums are before tax. Jobs that are open keep the terms they have.`}
        </p>
      </header>
      <main className="shop">
        <label className="entry">
          {say`Name and address, for the head of papers`}
          <input
            autoComplete="off"
            maxLength={200}
            value={name}
            onChange={(event) => type({ ...shop, name: event.target.value })}
          />
        </label>
        <div className="terms">
          {SHOP_TERMS.map((term) => (
            <TermField key={term.name} term={term} terms={terms} onType={change} />
          ))}
        </div>
        <Warranty terms={terms} onUse={(warrantyCost) => change({ warrantyCost })} />
        <p className={problem === null ? "aside" : "entry-problem"} role="status">
          {say(problem ?? said)}
        </p>
        <button type="button" className="primary tall" onClick={() => go("#/")}>
          {say`All jobs`}
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
  const { currency = "EUR", comebackCost = 0 } = right ? termsOf(terms, false) : {};
  useEffect(() => {
    if (!right) return;
    let waiting = true;
    api.warranty(String(currency), Number(comebackCost)).then(
      ({ repaired, comebacks, costOfOne }) =>
        waiting &&
        setOwn(
          repaired === 0
            ? null
            : {
                cost: costOfOne.toFixed(2),
                words: say`${repaired} repaired, ${comebacks} came back: ${costOfOne.toFixed(2)} ${String(currency)} for each repair; the usual share of come-backs counts as the first twenty.`,
              },
        ),
      (problem: unknown) => {
        if (!(problem instanceof Away)) throw problem;
      },
    );
    return () => {
      waiting = false;
    };
  }, [right, currency, comebackCost]);
  if (own === null) return null;
  return (
    <section className="own-warranty" aria-label={say`This shop's own come-backs`}>
      <p>{own.words}</p>
      {Number(own.cost) > 0 && (
        <button type="button" className="small" onClick={() => onUse(own.cost)}>
          {say`Set ${own.cost} aside`}
        </button>
      )}
    </section>
  );
}
