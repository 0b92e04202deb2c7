/** What a bench without jobs of its own says: the way through a job in three lines, and one to try it on. */
import { go } from "../route.ts";

export function Newcomer({ practiceJob }: { readonly practiceJob: string | null }) {
  return (
    <section className="newcomer" aria-labelledby="newcomer-title">
      <h2 id="newcomer-title">New here? One minute</h2>
      <ol>
        <li>
          <b>Take the board in:</b> which board, what happened to it. Two taps are enough.
        </li>
        <li>
          <b>Do what the card says:</b> it shows where red and black go. Tap what the meter shows; the next
          check follows by itself.
        </li>
        <li>
          <b>Stop when it says so:</b> a part to replace, a board that runs, or one that does not pay.
        </li>
      </ol>
      {practiceJob !== null && (
        <>
          <button type="button" className="primary tall" onClick={() => go(`#/job/${practiceJob}`)}>
            Try it now: a fan drive after a thunderstorm
          </button>
          <p className="aside">
            Practice: no board, no meter. The program hides faults and answers for the board; nothing can
            break.
          </p>
        </>
      )}
    </section>
  );
}
