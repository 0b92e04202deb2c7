/** The board's picture with its marks: looked into, turned, and places pinned on it by tapping or by keys. */

import { type ReactNode, useState } from "react";
import type { BenchView } from "../../wire/bench-view.ts";
import type { BoardSide } from "../../wire/job-api.ts";
import { say } from "../say.ts";
import { turnedFace, withPin } from "./album.ts";
import type { Mark } from "./board-svg.tsx";
import { BoardViewer } from "./board-viewer.tsx";
import { PinPlaces } from "./pin-places.tsx";
import { OfRevision } from "./revisions.tsx";
import type { BoardPicture, ShownFace } from "./use-board-picture.ts";

interface Props {
  readonly picture: BoardPicture;
  readonly places: BenchView["places"];
  /** marks of the step at hand on a side */
  marksOn(side: BoardSide): readonly Mark[];
  /** the side that the step at hand lies on */
  readonly lies?: BoardSide | undefined;
  /** the place to be pinned at once; null: none in particular */
  readonly wanted: string | null;
  /** places of the next checks, in their order */
  readonly next: readonly string[];
}

export function PinnedPicture({ picture, places, marksOn, lies, wanted, next }: Props) {
  const [chosen, setChosen] = useState<BoardSide | null>(null);
  const [pinning, setPinning] = useState(wanted !== null);
  const [place, setPlace] = useState(wanted ?? "");
  const face = picture.faces.find(({ side }) => side === (chosen ?? lies)) ?? picture.faces[0];
  if (face === undefined) return null;
  const pinned = picture.pins
    .filter((pin) => pinning && pin.side === face.side && pin.place === place)
    .map((pin): Mark => ({ key: `${pin.x} ${pin.y}`, tone: "pin", at: pin }));
  const revision = picture.revision ?? face.revision;
  const known = pinning && places.some((one) => one.place === place);
  return (
    <>
      <BoardViewer
        key={face.picture}
        face={face}
        marks={[...marksOn(face.side), ...pinned]}
        pins={place}
        onTap={
          known
            ? (at) =>
                picture.change((album) =>
                  withPin(album, {
                    place,
                    side: face.side,
                    ...at,
                    ...(revision === undefined ? {} : { revision }),
                  }),
                )
            : undefined
        }
      >
        <Sides picture={picture} face={face} onChoose={setChosen}>
          <button type="button" onClick={() => picture.change((album) => turnedFace(album, face.side))}>
            {say`Turn`}
          </button>
          <button type="button" aria-pressed={pinning} onClick={() => setPinning(!pinning)}>
            {say`Pin places`}
          </button>
        </Sides>
      </BoardViewer>
      {!picture.drawn && <OfRevision picture={picture} face={face} />}
      {pinning && !picture.drawn && (
        <PinPlaces picture={picture} places={places} next={next} place={place} onPlace={setPlace} />
      )}
    </>
  );
}

interface SidesProps {
  readonly picture: BoardPicture;
  readonly face: ShownFace;
  onChoose(side: BoardSide): void;
  /** keys for a photo, which a drawing has not */
  readonly children: ReactNode;
}

function Sides({ picture, face, onChoose, children }: SidesProps) {
  return (
    <>
      {picture.faces.length > 1 &&
        picture.faces.map(({ side }) => (
          <button type="button" key={side} aria-pressed={side === face.side} onClick={() => onChoose(side)}>
            {side === "top" ? say`Parts side` : say`Solder side`}
          </button>
        ))}
      {!picture.drawn && children}
    </>
  );
}
