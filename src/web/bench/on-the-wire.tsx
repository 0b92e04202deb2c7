/** The meter on the wire, beside the check: what it shows now, and one tap to take it. Typing goes on working beside it. */
import { said } from "../../messages/said.ts";

import { type MeterAnswer, type MeterNow, meterAnswer, type WantedReading } from "../../wire/meter-api.ts";
import type { Outcome } from "../job-event.ts";
import { say } from "../say.ts";
import { useMeter } from "../stream.ts";
import { displayed } from "../words.ts";
import { useWanted } from "./wanted-reading.ts";

interface Props {
  readonly wanted: WantedReading;
  readonly beepOhms: number;
  readonly disabled: boolean;
  /** of two that want a reading this one gets it; left out: the card, which waits for a cell that is open */
  readonly first?: boolean;
  onTake(outcome: Outcome): void;
}

/** The touch of the probes that was taken last: until they are lifted, the figure is still that of the check before. */
let takenTouch: number | null = null;

const UNDER_POWER = new Set(["dcv", "acv", "amps", "temperature"]);

export function OnTheWire({ wanted, beepOhms, disabled, first = false, onTake }: Props) {
  const meter = useMeter();
  const { mode } = wanted;
  const there = meter !== null && meter.setting.kind !== "none";
  const heard = useWanted(there, wanted, first);
  if (!there) return null;
  if (!heard) return <Row figure="–" words={say`The meter is reading for the grid.`} bad={false} />;
  const { shown, name, trouble } = meter;
  if (shown === null)
    return (
      <Row figure="–" words={trouble ?? said`Waiting for the meter on the wire…`} bad={trouble !== null} />
    );
  const figure =
    typeof shown.reading.value === "number"
      ? displayed(shown.reading.value, shown.reading.unit)
      : shown.reading.value;
  const answer = notTakenTwice(meterAnswer(shown.reading, shown.settling, wanted, beepOhms), shown, mode);
  if (answer.answers !== "taken")
    return <Row figure={figure} words={answer.why} bad={answer.answers === "wrong mode"} />;
  const { taken } = answer;
  return (
    <Row
      figure={figure}
      words={answer.why ?? said`At rest.`}
      bad={false}
      take={{
        words:
          taken.settling === undefined
            ? say`Take it`
            : say`Take ${displayed(Number(taken.reading), shown.reading.unit)}`,
        disabled,
        press: () => {
          takenTouch = shown.touch;
          onTake({ ...taken, instrument: name ?? "unnamed" });
        },
      }}
    />
  );
}

/** Cold figures only: probes that hang free read as they did before, and volts of nought look like those of the store before. */
function notTakenTwice(
  answer: MeterAnswer,
  shown: NonNullable<MeterNow["shown"]>,
  mode: WantedReading["mode"],
): MeterAnswer {
  if (answer.answers !== "taken" || UNDER_POWER.has(mode) || shown.touch !== takenTouch) return answer;
  return { answers: "not yet", why: said`Taken. Lift the probes and go on.` };
}

interface RowProps {
  readonly figure: string;
  readonly words: string;
  readonly bad: boolean;
  readonly take?: { readonly words: string; readonly disabled: boolean; press(): void };
}

function Row({ figure, words, bad, take }: RowProps) {
  return (
    <section className="on-the-wire" data-bad={bad} aria-label={say`Meter on the wire`}>
      <p className="figure wire-figure">{figure}</p>
      <p className="wire-words" role={bad ? "alert" : undefined}>
        {say(words)}
      </p>
      {take !== undefined && (
        <button type="button" className="primary" data-key="t" disabled={take.disabled} onClick={take.press}>
          {take.words}
        </button>
      )}
    </section>
  );
}
