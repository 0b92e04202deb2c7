/** A closed job whose board came back: the new job is linked to it, and what that costs is shown here. */
import { useEffect, useState } from "react";
import { said } from "../../messages/said.ts";
import type { ComebacksAnswer } from "../../wire/job-api.ts";
import { Away, api, Refused } from "../api.ts";
import { type KeptJob, newId } from "../job-event.ts";
import { startJob } from "../keeper.ts";
import { go } from "../route.ts";
import { figure, named, say, sayWith } from "../say.ts";

const REASONS = [
  { reason: "same-fault", words: said`The same fault again` },
  { reason: "missed-fault", words: said`A fault that was missed` },
  { reason: "fitted-part", words: said`A part fitted here failed` },
  { reason: "other", words: said`Nothing of the repair's` },
] as const;

export function CameBack({ job }: { readonly job: KeptJob }) {
  const [known, setKnown] = useState<ComebacksAnswer | null>(null);
  const { id } = job;
  useEffect(() => {
    let waiting = true;
    api.comebacks(id).then(
      (answer) => waiting && setKnown(answer),
      (problem: unknown) => {
        if (!(problem instanceof Away || problem instanceof Refused)) throw problem;
      },
    );
    return () => {
      waiting = false;
    };
  }, [id]);
  const again = async (reason: string) => {
    const next = newId();
    const header = { ...job.header, comebackOf: { job: id, reason } };
    await startJob(
      { id: next, title: named(say`${job.title}, came back`), practice: job.practice, job: header },
      [],
      [],
    );
    go(`#/job/${next}`);
  };
  return (
    <>
      {known !== null && known.comebacks.length > 0 && (
        <section className="came-back" aria-label={say`Came back`}>
          <p>
            {known.held
              ? sayWith`It came back, which has cost ${<Cost known={known} />}.`
              : sayWith`It came back, which has cost ${<Cost known={known} />}. The verdict did not hold.`}
          </p>
          <ul>
            {known.comebacks.map(({ id: by, title, reason }) => (
              <li key={by}>
                <a className="job" href={`#/job/${by}`}>
                  <bdi>{title}</bdi>: {say(REASONS.find((one) => one.reason === reason)?.words ?? reason)}
                </a>
              </li>
            ))}
          </ul>
        </section>
      )}
      <details className="came-back-fold">
        <summary>{say`It came back`}</summary>
        <p className="aside">
          {say`A new job with the same board, linked to this one. Where the repair is to blame, its cost is booked here and the customer pays nothing for it.`}
        </p>
        <div className="keys">
          {REASONS.map(({ reason, words }) => (
            <button type="button" key={reason} onClick={() => void again(reason)}>
              {say(words)}
            </button>
          ))}
        </div>
      </details>
    </>
  );
}

function Cost({ known: { cost, currency } }: { readonly known: ComebacksAnswer }) {
  return (
    <span className="figure">
      {figure(cost)} {currency}
    </span>
  );
}
