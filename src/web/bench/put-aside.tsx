/** A job that cannot go on now is put aside: it waits for something, and costs no bench minutes until it is taken up again. */
import { useState } from "react";
import { said } from "../../messages/said.ts";
import type { BenchView } from "../../wire/bench-view.ts";
import { happened, type KeptEvent } from "../job-event.ts";
import { WAITS_FOR_WORDS } from "../jobs/job-groups.ts";
import { dayWords } from "../jobs/job-rows.tsx";
import { go } from "../route.ts";
import { say, sayWith } from "../say.ts";
import type { Hands, PanelProps } from "./bench-props.ts";

const ASIDE_FOR = [
  { for: "drying", words: said`It dries` },
  { for: "part", words: said`A part comes` },
  { for: "answer", words: said`Customer's yes` },
] as const;

/** The entry that puts a job aside; `what` may be empty. */
export function putAside(waitsFor: string, what: string): KeptEvent {
  return happened({ do: "wait", for: waitsFor }, what.trim() === "" ? {} : { what: what.trim() });
}

type Props = Pick<PanelProps, "view" | "hands">;

export function PutAside({ view, hands }: Props) {
  const [what, setWhat] = useState("");
  if (view.powered)
    return (
      <p className="aside">{say`A job is not put aside while the board is on: switch off and unplug first.`}</p>
    );
  return (
    <section className="put-aside" aria-label={say`Put it aside`}>
      <h3>{say`Put it aside until`}</h3>
      <div className="keys in-three">
        {ASIDE_FOR.map((entry) => (
          <button type="button" key={entry.for} onClick={() => hands.add([putAside(entry.for, what)])}>
            {say(entry.words)}
          </button>
        ))}
      </div>
      <label className="entry">
        {say`Which part, or what was asked (optional)`}
        <input
          autoComplete="off"
          maxLength={120}
          value={what}
          onChange={(event) => setWhat(event.target.value)}
        />
      </label>
    </section>
  );
}

interface AsideProps {
  readonly id: string;
  readonly waiting: NonNullable<BenchView["waiting"]>;
  readonly entries: number;
  readonly hands: Hands;
}

/** Stands where the next check would, while the job waits. */
export function AsideCard({ id, waiting, entries, hands }: AsideProps) {
  return (
    <article className="card" data-do="waiting" data-entry={entries} data-waiting="false">
      <p className="card-kind">{say`Put aside, costs no minutes`}</p>
      <h2 className="probes-on">
        {waiting.what === null
          ? say(WAITS_FOR_WORDS[waiting.for])
          : say`${WAITS_FOR_WORDS[waiting.for]}: ${waiting.what}`}
      </h2>
      {waiting.since !== null && (
        <p>{sayWith`Since ${<span className="figure">{dayWords(waiting.since)}</span>}.`}</p>
      )}
      <p className="aside">
        {say`If anybody had it plugged in meanwhile, measure every store of charge again before a hand goes in.`}
      </p>
      <button
        type="button"
        className="primary tall"
        data-key="d"
        onClick={() => hands.add([happened({ do: "resume" })])}
      >
        {say`Take it up again`}
      </button>
      <div className="keys">
        {waiting.for === "answer" && (
          <button type="button" onClick={() => go(`#/job/${id}/quote`)}>
            {say`Enter the answer`}
          </button>
        )}
        <button type="button" onClick={() => go("#/")}>
          {say`All jobs`}
        </button>
      </div>
    </article>
  );
}
