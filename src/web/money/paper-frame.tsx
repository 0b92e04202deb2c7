/** The frame of a paper on the screen: the way back above it, which is not printed. */
import { type ReactNode, useEffect, useState } from "react";
import { go } from "../route.ts";
import { say } from "../say.ts";
import { shopTyped } from "./shop-terms.ts";

interface Props {
  readonly id: string;
  readonly title: string;
  readonly children: ReactNode;
}

export function PaperFrame({ id, title, children }: Props) {
  const [shop, setShop] = useState("");
  useEffect(() => void shopTyped().then(({ name }) => setShop(name)), []);
  return (
    <div className="paper-screen">
      <nav className="not-printed" aria-label={say`Job`}>
        <button type="button" className="quiet" onClick={() => go(`#/job/${id}`)}>
          {say`Back to the bench`}
        </button>
      </nav>
      <main className="paper">
        {shop !== "" && <p className="paper-from">{shop}</p>}
        <h1>{title}</h1>
        {children}
      </main>
    </div>
  );
}
