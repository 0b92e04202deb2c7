/** Power on, off, and a discharging resistor, entered by the person. The safety notice stands above them. */
import { useState } from "react";
import type { BenchView } from "../../wire/bench-view.ts";
import { say } from "../say.ts";
import { SafetyNotice } from "../shell/safety-notice.tsx";
import type { Hands } from "./bench-props.ts";
import { type Choice, SearchField } from "./search-field.tsx";

interface Props {
  readonly view: BenchView;
  readonly places: readonly Choice[];
  readonly hands: Hands;
}

const LAMP_WATTS = 100;

export function EnterPower({ view, places, hands }: Props) {
  if (view.powered)
    return (
      <section aria-label={say`Power`}>
        <h3>{say`Power`}</h3>
        <button type="button" className="primary" onClick={() => hands.choose({ do: "unpower" })}>
          {say`Switch off and unplug`}
        </button>
      </section>
    );
  return (
    <section aria-label={say`Power`}>
      <h3>{say`Power`}</h3>
      <SafetyNotice />
      <div className="keys">
        <button type="button" onClick={() => hands.choose({ do: "power", feed: "lamp", watts: LAMP_WATTS })}>
          {say`Lamp, ${`${LAMP_WATTS} W`}`}
        </button>
        <button type="button" onClick={() => hands.choose({ do: "power", feed: "mains" })}>
          {say`Mains`}
        </button>
      </div>
      <Clip places={places} hands={hands} />
    </section>
  );
}

/** A usual discharging resistor (common practice: a few kilohms, 10 W). */
const DISCHARGE_OHMS = "2200";

function Clip({ places, hands }: Omit<Props, "view">) {
  const [from, setFrom] = useState("");
  const [to, setTo] = useState("");
  const [ohms, setOhms] = useState(DISCHARGE_OHMS);
  const known = (place: string) => places.some(({ value }) => value === place);
  const ready = known(from) && known(to) && from !== to && Number(ohms) > 0;
  const clip = (what: "clip" | "unclip") => hands.choose({ do: what, at: [from, to], ohms: Number(ohms) });
  return (
    <details>
      <summary>{say`A resistor clipped on`}</summary>
      <SearchField label={say`From`} choices={places} value={from} onValue={setFrom} />
      <SearchField label={say`To`} choices={places} value={to} onValue={setTo} />
      <label className="entry">
        {say`Ohms`}
        <input inputMode="decimal" value={ohms} onChange={(event) => setOhms(event.target.value)} />
      </label>
      <div className="keys">
        <button type="button" disabled={!ready} onClick={() => clip("clip")}>
          {say`Clip it on`}
        </button>
        <button type="button" disabled={!ready} onClick={() => clip("unclip")}>
          {say`Take it off`}
        </button>
      </div>
    </details>
  );
}
