/** A job that is given up: what was fitted in it may come off again and go back into the drawer, pulled. */
import { plain } from "../../messages/said.ts";
import type { KeptEvent } from "../job-event.ts";
import { figure, say, sayWith } from "../say.ts";
import type { OpenJob } from "../use-job.ts";

export interface FittedHere {
  readonly part: string;
  readonly name: string;
  /** what it would fetch, its removal counted; null where nobody has reckoned it */
  readonly worth: { readonly amount: string; readonly why: string; readonly pays: boolean } | null;
}

/** Parts fitted here that have a name to be kept by, each as it was fitted last; what was undone never happened. */
export function fittedHere({ job, events, view }: OpenJob): readonly FittedHere[] {
  if (job === null || job === "loading" || job.practice !== null) return [];
  const undone = new Set((view?.log ?? []).filter((line) => line.undone).map((line) => line.id));
  const last = new Map<string, KeptEvent & { readonly do: "replace" }>();
  for (const event of events)
    if (event.do === "replace" && !undone.has(event.id)) last.set(event.part, event);
  const rows = new Map((view?.money.givenUp.rows ?? []).map((row) => [plain(row.what), row]));
  return [...last.values()].flatMap(({ part, with: name }): readonly FittedHere[] => {
    if (name === undefined) return [];
    const row = rows.get(part);
    const worth = row === undefined ? null : { amount: row.amount, why: row.why, pays: row.counted };
    return [{ part, name, worth }];
  });
}

interface ShelveProps {
  readonly fitted: readonly FittedHere[];
  readonly shelved: ReadonlySet<string>;
  onShelved(shelved: ReadonlySet<string>): void;
}

export function Shelve({ fitted, shelved, onShelved }: ShelveProps) {
  const turn = (part: string, on: boolean) => {
    const next = new Set(shelved);
    if (on) next.add(part);
    else next.delete(part);
    onShelved(next);
  };
  return (
    <fieldset className="shelve">
      <legend>{say`Given up: what comes off again`}</legend>
      <p className="aside">
        {say`Only off a board that is proven dead. It goes back into the drawer as pulled: check it before it is fitted elsewhere.`}
      </p>
      {fitted.map(({ part, name, worth }) => (
        <label className="tick" key={part}>
          <input
            type="checkbox"
            checked={shelved.has(part)}
            onChange={(event) => turn(part, event.target.checked)}
          />
          <span>
            <span className="ref">{part}</span> {name}
            {worth !== null && (
              <small className="shelve-worth" data-pays={worth.pays}>
                {worth.pays
                  ? sayWith`fetches ${<b className="figure">{figure(worth.amount)}</b>}: ${say(worth.why)}`
                  : say(worth.why)}
              </small>
            )}
          </span>
        </label>
      ))}
    </fieldset>
  );
}
