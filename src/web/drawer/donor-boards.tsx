/** Boards kept for their parts, each with what still sits on it. */

import { saidCount } from "../../messages/said.ts";
import type { KeptLine } from "../../wire/stock-api.ts";
import { kindWords } from "../kind-words.ts";
import { say } from "../say.ts";
import { lineKey, onDonor } from "./line-words.ts";

export function DonorBoards({ lines }: { readonly lines: readonly KeptLine[] }) {
  const donors = new Map<string, KeptLine[]>();
  for (const line of lines)
    if (onDonor(line) && line.donor !== null)
      donors.set(line.donor, [...(donors.get(line.donor) ?? []), line]);
  if (donors.size === 0) return null;
  return (
    <section aria-label={say`Donor boards`}>
      <h2>{say`Donor boards`}</h2>
      <div className="folded">
        {[...donors].map(([donor, on]) => {
          const count = on.reduce((sum, line) => sum + (line.count ?? 0), 0);
          return (
            <details key={donor}>
              <summary>
                <span>
                  <bdi>{donor}</bdi>{" "}
                  <small>{say(saidCount(count, "{0} part still on it", "{0} parts still on it"))}</small>
                </span>
              </summary>
              <ul className="donor-parts">
                {on.map((line) => (
                  <li key={lineKey(line)} data-none={(line.count ?? 0) === 0}>
                    <span className="ref">{line.type.name}</span>
                    <span>{kindWords(line.type.kind)}</span>
                    <span className="figure">{say`${line.count ?? 0} pc`}</span>
                  </li>
                ))}
              </ul>
            </details>
          );
        })}
      </div>
    </section>
  );
}
