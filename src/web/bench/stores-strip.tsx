/** The charge of the board: each store with what was read at its pins, and the gate before hands and cold checks. */
import type { BenchView, StoreView } from "../../wire/bench-view.ts";
import { happened } from "../job-event.ts";
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
            <b>Charge.</b> {safety.words}
          </span>
          {!safety.open && <Chips stores={safety.stores} />}
        </span>
      </summary>
      <ul className="store-list" aria-label="Stores of charge">
        {safety.stores.map((store) => (
          <StoreLine key={store.part} store={store} live={powered || view.verdict !== null} hands={hands} />
        ))}
      </ul>
      {view.verdict === null && !powered && <Resistors view={view} hands={hands} />}
      {view.verdict === null && !powered && !safety.open && (
        <section aria-label="Go on without the proof">
          <h2>Go on without the proof, because</h2>
          <Reasons of="proof" onReason={(why) => hands.add([overrule("proof", why)])} />
        </section>
      )}
      {view.verdict === null && safety.turns.length > 0 && (
        <section aria-label="What turns charges the board">
          <h2>What turns charges the board</h2>
          <div className="keys">
            {safety.turns.map(({ part, words }) => (
              <button
                type="button"
                key={part}
                onClick={() =>
                  hands.add([happened({ do: "note", text: `${part} turned while plugged in`, turned: part })])
                }
              >
                It turned: {words}
              </button>
            ))}
          </div>
        </section>
      )}
    </details>
  );
}

const STATE_WORDS: Readonly<Record<StoreView["state"], string>> = {
  charged: "charged",
  unknown: "not read",
  empty: "empty",
};

/** Shown before the list is opened: who is in a hurry sees what is still charged. */
function Chips({ stores }: { readonly stores: readonly StoreView[] }) {
  return (
    <span className="store-chips" aria-hidden="true">
      {stores.map(({ part, state, volts }) => (
        <span key={part} className="store-chip" data-state={state}>
          {part} <span className="figure">{volts ?? "?"}</span>
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
        <b>{part}</b> <span className="store-what">{what}</span>
      </span>
      <span className="figure store-volts">{volts ?? "?"}</span>
      <span className="store-state">
        {because ?? STATE_WORDS[state]}
        {read !== null && `, ${readWords(read)}`}
      </span>
      {!live && (
        <button
          type="button"
          className="small"
          aria-label={`Measure ${part}`}
          onClick={() => hands.choose(proof)}
        >
          Measure
        </button>
      )}
    </li>
  );
}

function readWords({ line, at }: NonNullable<StoreView["read"]>): string {
  if (at === null) return `log line ${line}`;
  const time = new Date(at).toLocaleTimeString([], { hour: "2-digit", minute: "2-digit" });
  return `read at ${time}, log line ${line}`;
}

function Resistors({ view, hands }: Props) {
  const { resistors } = view.safety;
  if (resistors.length === 0) return null;
  return (
    <section aria-label="Resistors clipped on">
      <h2>Clipped on: off before power</h2>
      <div className="keys">
        {resistors.map(({ words, off }) => (
          <button type="button" key={words} onClick={() => hands.choose(off)}>
            {words}
          </button>
        ))}
      </div>
    </section>
  );
}
