/** The frame of a paper on the screen: the way back above it, which is not printed. */
import type { ReactNode } from "react";
import { go } from "../route.ts";

interface Props {
  readonly id: string;
  readonly title: string;
  readonly children: ReactNode;
}

export function PaperFrame({ id, title, children }: Props) {
  return (
    <div className="paper-screen">
      <nav className="not-printed" aria-label="Job">
        <button type="button" className="quiet" onClick={() => go(`#/job/${id}`)}>
          Back to the bench
        </button>
      </nav>
      <main className="paper">
        <h1>{title}</h1>
        {children}
      </main>
    </div>
  );
}
