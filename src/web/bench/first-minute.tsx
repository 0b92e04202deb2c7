/** The first minute of a power-up: bands of a good board, what lies outside of them, when to switch off, and a clock for heat. */
import { useEffect, useState } from "react";
import type { CardView } from "../../wire/bench-view.ts";
import { minutes } from "../words.ts";

type Watch = NonNullable<CardView["firstMinute"]>;

/** When the switch went on, kept from card to card while the board is on; milliseconds. */
const clock: { startedAt: number | null } = { startedAt: null };

const TICK_MS = 500;

function useSeconds(on: boolean): readonly [number | null, () => void] {
  const [startedAt, setStartedAt] = useState(() => {
    clock.startedAt = on ? (clock.startedAt ?? Date.now()) : null;
    return clock.startedAt;
  });
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    if (startedAt === null) return;
    const timer = setInterval(() => setNow(Date.now()), TICK_MS);
    return () => clearInterval(timer);
  }, [startedAt]);
  const start = () => {
    clock.startedAt = Date.now();
    setNow(clock.startedAt);
    setStartedAt(clock.startedAt);
  };
  return [startedAt === null ? null : Math.max(0, (now - startedAt) / 1000), start];
}

export function FirstMinute({ watch }: { readonly watch: Watch }) {
  return (
    <section className="gate first-minute" aria-label="What to watch with power on">
      <h3>{watch.on ? "While it is on" : "The first minute"}</h3>
      <Clock watch={watch} />
      <dl>
        {watch.rows.map((row) => (
          <div key={row.what}>
            <dt>
              {row.what}
              {row.clipped && <span className="gate-note"> meter on it</span>}
            </dt>
            <dd className="figure">{row.good}</dd>
          </div>
        ))}
      </dl>
      <p>
        <strong>Off at once:</strong> {watch.abort.join("; ")}.
      </p>
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
      <summary>If it shows something else</summary>
      <ul>
        {told.map((one) => (
          <li className="watch-else" key={`${one.what} ${one.if}`}>
            <b>{one.what}</b> <span className="figure">{one.if}</span>: {one.means}
          </li>
        ))}
      </ul>
    </details>
  );
}

function Clock({ watch }: { readonly watch: Watch }) {
  const [seconds, start] = useSeconds(watch.on);
  return (
    <div className="watch-clock">
      {seconds === null ? (
        <button type="button" data-key="t" onClick={start}>
          It is on: start the clock
        </button>
      ) : (
        <p role="timer" className="figure watch-seconds">
          {clockWords(seconds)}
        </p>
      )}
      <ol>
        {watch.marks.map((mark) => (
          <li key={mark.seconds} data-past={seconds !== null && seconds >= mark.seconds}>
            <b className="figure">{minutes(mark.seconds / 60)}</b> {mark.what}
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
