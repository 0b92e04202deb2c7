import type { ReviewList } from "../engine-messages.ts";
import { say } from "../say.ts";

/** Headed lists of a review; a heading without lines says that there is nothing to say. */
export function ReviewLists({ lists }: { readonly lists: readonly ReviewList[] }) {
  return (
    <>
      {lists.map(({ title, lines }) => (
        <div key={title} className="review-list">
          <h3 data-empty={lines.length === 0}>{say(title)}</h3>
          {lines.length > 0 && (
            <ul>
              {lines.map((line) => (
                <li key={line}>{say(line)}</li>
              ))}
            </ul>
          )}
        </div>
      ))}
    </>
  );
}
