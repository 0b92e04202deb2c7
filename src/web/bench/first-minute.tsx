/** The first minute of a power-up: bands of a good board, what lies outside of them, when to switch off, and a clock for heat. */
import type { CardView } from "../../wire/bench-view.ts";
import { say } from "../say.ts";
import { minutes } from "../words.ts";
import { useSecondsOn } from "./power-clock.ts";
import { OffAtOnce } from "./switch-on.tsx";

type Watch = NonNullable<CardView["firstMinute"]>;

export function FirstMinute({ watch }: { readonly watch: Watch }) {
  return (
    <section className="gate first-minute" aria-label={say`What to watch with power on`}>
      <h3>{say`While it is on`}</h3>
      <Clock watch={watch} />
      <dl>
        {watch.rows.map((row) => (
          <div key={row.what}>
            <dt>
              {say(row.what)}
              {row.clipped && <span className="gate-note"> {say`meter on it`}</span>}
            </dt>
            <dd className="figure">{say(row.good)}</dd>
          </div>
        ))}
      </dl>
      <OffAtOnce abort={watch.abort} />
      <Otherwise watch={watch} />
    </section>
  );
}

/** What lies outside of the bands, folded away: it is wanted when it happens. */
function Otherwise({ watch: { rows } }: { readonly watch: Watch }) {
  const told = rows.flatMap(({ what, otherwise }) => otherwise.map((one) => ({ what, ...one })));
  if (told.length === 0) return null;
  return (
    <details>
      <summary>{say`If it shows something else`}</summary>
      <ul>
        {told.map((one) => (
          <li className="watch-else" key={`${one.what} ${one.if}`}>
            <b>{say(one.what)}</b> <span className="figure">{say(one.if)}</span>: {say(one.means)}
          </li>
        ))}
      </ul>
    </details>
  );
}

function Clock({ watch }: { readonly watch: Watch }) {
  const seconds = useSecondsOn();
  return (
    <div className="watch-clock">
      <p role="timer" className="figure watch-seconds">
        {clockWords(seconds)}
      </p>
      <ol>
        {watch.marks.map((mark) => (
          <li key={mark.seconds} data-past={seconds >= mark.seconds}>
            <b className="figure">{minutes(mark.seconds / 60)}</b> {say(mark.what)}
          </li>
        ))}
      </ol>
    </div>
  );
}

/** `2:05`. */
function clockWords(seconds: number): string {
  const whole = Math.floor(seconds);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, "0")}`;
}
