/** The charge of the board: each store with what was read at its pins, and the gate before hands and cold checks. */
import { plain, said } from "../../messages/said.ts";
import type { BenchView, StoreView } from "../../wire/bench-view.ts";
import { turnedWords } from "../../wire/note-words.ts";
import { happened } from "../job-event.ts";
import { say } from "../say.ts";
import { listed, timeOfDay } from "../words.ts";
import type { Hands } from "./bench-props.ts";
import { overrule } from "./overrule.ts";
import { Reasons } from "./reasons.tsx";

interface Props {
  readonly view: BenchView;
  readonly hands: Hands;
}

export function StoresStrip({ view, hands }: Props) {
  const { safety, powered } = view;
  return (
    <details className="stores" data-open={safety.open}>
      <summary>
        <span className="stores-gate">
          <span>
            <b>{say`Charge.`}</b> {say(safety.words)}
          </span>
          {!safety.open && <Chips stores={safety.stores} />}
        </span>
      </summary>
      <ul className="store-list" aria-label={say`Stores of charge`}>
        {safety.stores.map((store) => (
          <StoreLine key={store.part} store={store} live={powered || view.verdict !== null} hands={hands} />
        ))}
      </ul>
      {view.verdict === null && !powered && <Resistors view={view} hands={hands} />}
      {view.verdict === null && !powered && !safety.open && (
        <section aria-label={say`Go on without the proof`}>
          <h2>{say`Go on without the proof, because`}</h2>
          <Reasons of="proof" onReason={(why) => hands.add([overrule("proof", why)])} />
        </section>
      )}
      {view.verdict === null && safety.turns.length > 0 && (
        <section aria-label={say`What turns charges the board`}>
          <h2>{say`What turns charges the board`}</h2>
          <div className="keys">
            {safety.turns.map(({ part, words }) => (
              <button
                type="button"
                key={part}
                onClick={() =>
                  hands.add([happened({ do: "note", text: plain(turnedWords(part)), turned: part })])
                }
              >
                {say`It turned: ${words}`}
              </button>
            ))}
          </div>
        </section>
      )}
    </details>
  );
}

const STATE_WORDS: Readonly<Record<StoreView["state"], string>> = {
  charged: said`charged`,
  unknown: said`not read`,
  empty: said`empty`,
};

/** Shown before the list is opened: who is in a hurry sees what is still charged. */
function Chips({ stores }: { readonly stores: readonly StoreView[] }) {
  return (
    <span className="store-chips" aria-hidden="true">
      {stores.map(({ part, state, volts }) => (
        <span key={part} className="store-chip" data-state={state}>
          {part} <span className="figure">{say(volts ?? "?")}</span>
        </span>
      ))}
    </span>
  );
}

function StoreLine({
  store,
  live,
  hands,
}: {
  readonly store: StoreView;
  /** nothing is measured from here: the board is on, or the job is closed */
  readonly live: boolean;
  readonly hands: Hands;
}) {
  const { part, what, state, volts, read, because, proof } = store;
  return (
    <li data-state={state}>
      <span className="store-name">
        <b>{part}</b> <span className="store-what">{say(what)}</span>
      </span>
      <span className="figure store-volts">{say(volts ?? "?")}</span>
      <span className="store-state">
        {listed([say(because ?? STATE_WORDS[state]), ...(read === null ? [] : [readWords(read)])])}
      </span>
      {!live && (
        <button
          type="button"
          className="small"
          aria-label={say`Measure ${part}`}
          onClick={() => hands.choose(proof)}
        >
          {say`Measure`}
        </button>
      )}
    </li>
  );
}

function readWords({ line, at }: NonNullable<StoreView["read"]>): string {
  if (at === null) return say`log line ${line}`;
  return say`read at ${timeOfDay(at)}, log line ${line}`;
}

function Resistors({ view, hands }: Props) {
  const { resistors } = view.safety;
  if (resistors.length === 0) return null;
  return (
    <section aria-label={say`Resistors clipped on`}>
      <h2>{say`Clipped on: off before power`}</h2>
      <div className="keys">
        {resistors.map(({ words, off }) => (
          <button type="button" key={words} onClick={() => hands.choose(off)}>
            {say(words)}
          </button>
        ))}
      </div>
    </section>
  );
}
