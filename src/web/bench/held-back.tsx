/** A step of the person's own that a gate stands before: what to do first, or one tap and a reason to go on. */
import type { BenchView } from "../../wire/bench-view.ts";
import { wantsDeadBoard } from "../../wire/dead-board.ts";
import { say } from "../say.ts";
import type { Agenda } from "./agenda.ts";
import type { Hands } from "./bench-props.ts";
import { overrule } from "./overrule.ts";
import { Reasons } from "./reasons.tsx";

type Gate = "live" | "proof" | "resistor" | "motor";

/** The gate before what stands on the card; null where none is shut. The engine's own proposals keep to the gates. */
export function gateBefore({ safety, powered }: BenchView, { card, chosen }: Agenda): Gate | null {
  if (card === null || chosen === null) return null;
  if (card.action.do === "power") {
    if (safety.powerWaits !== null) return "resistor";
    return safety.motorWaits !== null && card.action.feed !== "bench" ? "motor" : null;
  }
  if (!wantsDeadBoard(card.action)) return null;
  if (powered) return "live";
  return safety.open ? null : "proof";
}

interface Props {
  readonly gate: Gate;
  readonly view: BenchView;
  readonly hands: Hands;
}

export function HeldBack({ gate, view, hands }: Props) {
  const { safety } = view;
  if (gate === "live")
    return (
      <section className="gate" aria-label={say`The board is live`}>
        <h3>{say`The board is live`}</h3>
        <p>{say`No hand goes in, and no cold check is taken, before it is switched off and unplugged.`}</p>
        <button type="button" className="primary" onClick={() => hands.choose({ do: "unpower" })}>
          {say`Switch off and unplug`}
        </button>
      </section>
    );
  if (gate === "resistor")
    return (
      <section className="gate" aria-label={say`A resistor is clipped on`}>
        <h3>{say`No power yet`}</h3>
        <p>{say(safety.powerWaits ?? "")}</p>
        <div className="keys">
          {safety.resistors.map(({ words, off }) => (
            <button type="button" className="primary" key={words} onClick={() => hands.choose(off)}>
              {say(words)}
            </button>
          ))}
        </div>
        <h3>{say`Power with it on, because`}</h3>
        <Reasons of="resistor" onReason={(why) => hands.add([overrule("resistor", why)])} />
      </section>
    );
  if (gate === "motor")
    return (
      <section className="gate" aria-label={say`A motor is plugged in`}>
        <h3>{say`No power yet`}</h3>
        <p>{say(safety.motorWaits ?? "")}</p>
        <h3>{say`Drive it all the same, because`}</h3>
        <Reasons of="motor" onReason={(why) => hands.add([overrule("motor", why)])} />
      </section>
    );
  return (
    <section className="gate" aria-label={say`Not proven dead`}>
      <h3>{say`Not proven dead`}</h3>
      <p>
        {say(safety.words)} {say`Measure each store at its own pins first: the proposal asks for it.`}
      </p>
      <h3>{say`Go on without the proof, because`}</h3>
      <Reasons of="proof" onReason={(why) => hands.add([overrule("proof", why)])} />
    </section>
  );
}
