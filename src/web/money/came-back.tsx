/** A closed job whose board came back: the new job is linked to it, and what that costs is shown here. */
import { useEffect, useState } from "react";
import type { ComebacksAnswer } from "../../wire/job-api.ts";
import { Away, api, Refused } from "../api.ts";
import { type KeptJob, newId } from "../job-event.ts";
import { startJob } from "../keeper.ts";
import { go } from "../route.ts";

const REASONS = [
  { reason: "same-fault", words: "The same fault again" },
  { reason: "missed-fault", words: "A fault that was missed" },
  { reason: "fitted-part", words: "A part fitted here failed" },
  { reason: "other", words: "Nothing of the repair's" },
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
      { id: next, title: `${job.title}, came back`, practice: job.practice, job: header },
      [],
      [],
    );
    go(`#/job/${next}`);
  };
  return (
    <>
      {known !== null && known.comebacks.length > 0 && (
        <section className="came-back" aria-label="Came back">
          <p>
            It came back, which has cost{" "}
            <span className="figure">
              {known.cost} {known.currency}
            </span>
            .{known.held ? "" : " The verdict did not hold."}
          </p>
          <ul>
            {known.comebacks.map(({ id: by, title, reason }) => (
              <li key={by}>
                <a className="job" href={`#/job/${by}`}>
                  {title}: {REASONS.find((one) => one.reason === reason)?.words ?? reason}
                </a>
              </li>
            ))}
          </ul>
        </section>
      )}
      <details className="came-back-fold">
        <summary>It came back</summary>
        <p className="aside">
          A new job with the same board, linked to this one. Where the repair is to blame, its cost is booked
          here and the customer pays nothing for it.
        </p>
        <div className="keys">
          {REASONS.map(({ reason, words }) => (
            <button type="button" key={reason} onClick={() => void again(reason)}>
              {words}
            </button>
          ))}
        </div>
      </details>
    </>
  );
}
