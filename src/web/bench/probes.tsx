/** Where the probes go, or which part the hand takes: the largest words on the page. */
import type { ReactNode } from "react";
import { plain } from "../../messages/said.ts";
import type { BenchView, CardView } from "../../wire/bench-view.ts";
import { field } from "../job-event.ts";
import { askedSpots } from "../picture/asked-spots.ts";
import { Magnifier } from "../picture/magnifier.tsx";

import { say } from "../say.ts";

import { ModeDrawing, ProbeDrawing } from "../shell/icons.tsx";
import { FOUR_WIRES, MODE_WORDS } from "../words.ts";
import type { BoardDesk } from "./bench-props.ts";

interface Props {
  readonly card: CardView;
  readonly places: BenchView["places"];
  readonly desk: BoardDesk;
}

export function Probes({ card, places, desk }: Props) {
  const { picture } = desk;
  const asked = askedSpots(picture, card);
  // amps are read off the supply: a meter in its amps range across two places is a short
  const probed = card.action.do === "measure" && field(card.action, "mode") !== "amps";
  if (!probed || field(card.action, "red") === null)
    return (
      <>
        <h2 className="headline">{say(card.headline)}</h2>
        {clipsOf(card).map(({ red, black, mode }) => (
          <section key={`${red} ${black}`} aria-label={say`Meter clipped on before power`}>
            <p className="mode">
              <ModeDrawing mode={mode} />
              {say`Clip the meter on before power, ${MODE_WORDS[mode] ?? mode}`}
            </p>
            <div className="probes">
              <Probe tone="red" place={red} words={null} places={places} />
              <Probe tone="black" place={black} words={null} places={places} />
            </div>
          </section>
        ))}
      </>
    );
  const mode = field(card.action, "mode") ?? "";
  return (
    <>
      <div className="where-and-mode">
        {card.probesOn === null ? (
          <h2 className="for-readers">{say(card.headline)}</h2>
        ) : (
          <h2 className="probes-on">{say(card.probesOn)}</h2>
        )}
        <p className="mode">
          <ModeDrawing mode={mode} />
          {say(field(card.action, "wires") === "4" ? FOUR_WIRES : (MODE_WORDS[mode] ?? mode))}
        </p>
      </div>
      <div className="probes">
        <Probe tone="red" place={field(card.action, "red")} words={card.red} places={places}>
          {asked.red !== null && (
            <Magnifier picture={picture} spot={asked.red} tone="red" asked={field(card.action, "red")} />
          )}
        </Probe>
        <Probe tone="black" place={field(card.action, "black")} words={card.black} places={places}>
          {asked.black !== null && (
            <Magnifier
              picture={picture}
              spot={asked.black}
              tone="black"
              asked={field(card.action, "black")}
            />
          )}
        </Probe>
      </div>
    </>
  );
}

interface ClipView {
  readonly red: string;
  readonly black: string;
  readonly mode: CardView["clipModes"][number];
}

/** Pairs of places that meters go across before power, and what each meter is set to. */
function clipsOf({ action, clipModes }: CardView): readonly ClipView[] {
  const { meters } = action;
  if (!Array.isArray(meters)) return [];
  return meters.flatMap((pair: unknown, at) =>
    Array.isArray(pair) && pair.length === 2
      ? [{ red: String(pair[0]), black: String(pair[1]), mode: clipModes[at] ?? "dcv" }]
      : [],
  );
}

interface ProbeProps {
  readonly tone: "red" | "black";
  readonly place: string | null;
  readonly words: string | null;
  readonly places: BenchView["places"];
  readonly children?: ReactNode;
}

function Probe({ tone, place, words, places, children }: ProbeProps) {
  const named =
    words === null || plain(words) === place ? places.find((known) => known.place === place)?.words : words;
  return (
    <div className={`probe probe-${tone}`}>
      <p className="probe-name">
        <ProbeDrawing />
        {tone === "red" ? say`Red here` : say`Black there`}
      </p>
      <p className="probe-words">{say(named ?? place ?? "")}</p>
      {named !== undefined && place !== null && <p className="probe-place">{place}</p>}
      {children}
    </div>
  );
}
