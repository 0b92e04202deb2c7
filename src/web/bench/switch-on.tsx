/** The last thing before power: when to switch off at once, and the key that says it is on. */
import { useEffect } from "react";
import type { CardView } from "../../wire/bench-view.ts";
import { forms, say, sayWith } from "../say.ts";
import { startClock, stopClock } from "./power-clock.ts";

interface Props {
  readonly watch: CardView["firstMinute"];
  readonly disabled: boolean;
  onSwitchedOn(): void;
}

export function SwitchOn({ watch, disabled, onSwitchedOn }: Props) {
  useEffect(stopClock, []);
  const switchedOn = () => {
    startClock();
    onSwitchedOn();
  };
  return (
    <div className="switch-on">
      {watch !== null && <OffAtOnce abort={watch.abort} />}
      <button type="button" className="primary tall" data-key="t" disabled={disabled} onClick={switchedOn}>
        {say`It is on: show what to watch`}
        {watch !== null && <small className="button-note">{say`the clock starts with this tap`}</small>}
      </button>
    </div>
  );
}

export function OffAtOnce({ abort }: { readonly abort: readonly string[] }) {
  return (
    <p>{sayWith`${<strong>{say`Off at once:`}</strong>} ${forms().list(abort.map((one) => say(one)))}.`}</p>
  );
}
