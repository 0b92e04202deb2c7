/** What a bench without jobs of its own says: the way through a job in three lines, and one to try it on. */
import { go } from "../route.ts";
import { say, sayWith } from "../say.ts";

export function Newcomer({ practiceJob }: { readonly practiceJob: string | null }) {
  return (
    <section className="newcomer" aria-labelledby="newcomer-title">
      <h2 id="newcomer-title">{say`New here? One minute`}</h2>
      <ol>
        <li>
          {sayWith`${<b>{say`Take the board in:`}</b>} which board, what happened to it. Two taps are enough.`}
        </li>
        <li>
          {sayWith`${<b>{say`Do what the card says:`}</b>} it shows where red and black go. Tap what the meter shows; the next check follows by itself.`}
        </li>
        <li>
          {sayWith`${<b>{say`Stop when it says so:`}</b>} a part to replace, a board that runs, or one that does not pay.`}
        </li>
      </ol>
      {practiceJob !== null && (
        <>
          <button type="button" className="primary tall" onClick={() => go(`#/job/${practiceJob}`)}>
            {say`Try it now: a fan drive after a thunderstorm`}
          </button>
          <p className="aside">
            {say`Practice: no board, no meter. The program hides faults and answers for the board; nothing can break.`}
          </p>
        </>
      )}
    </section>
  );
}
