/** The board: its stages as they stand, and its picture with the places of the next check. */
import { useState } from "react";
import type { ActionView } from "../../wire/bench-view.ts";
import type { BoardSide } from "../../wire/job-api.ts";
import type { PanelProps } from "../bench/bench-props.ts";
import { field } from "../job-event.ts";
import { say } from "../say.ts";
import { turnedFace, withPin } from "./album.ts";
import { askedSpots, marksOf } from "./asked-spots.ts";
import type { Mark } from "./board-svg.tsx";
import { BoardViewer } from "./board-viewer.tsx";
import { FacePhotos } from "./face-photos.tsx";
import { PinPlaces } from "./pin-places.tsx";
import { StageMap } from "./stage-map.tsx";

export function BoardPanel({ open, view, desk }: PanelProps) {
  const { picture } = desk;
  return (
    <div className="board-panel">
      <section aria-label={say`The board's picture`} className="board-picture">
        <h3>{say`Where to probe now`}</h3>
        {picture.faces.length === 0 ? (
          <p className="aside">{say`This board has no picture yet. A photo of each side is enough.`}</p>
        ) : (
          <Picture open={open} view={view} desk={desk} />
        )}
        {picture.drawn && (
          <p className="aside">{say`Drawn by us for this practice board: of a board on the bench take a photo.`}</p>
        )}
        <FacePhotos picture={picture} job={open.id} />
      </section>
      <StageMap ask={open.stages} />
    </div>
  );
}

function Picture({ view, desk }: Omit<PanelProps, "hands">) {
  const { picture, card, wanted } = desk;
  const asked = card === null ? null : askedSpots(picture, card);
  const lies = asked?.red?.side ?? asked?.black?.side ?? asked?.here?.side;
  const [chosen, setChosen] = useState<BoardSide | null>(null);
  const [pinning, setPinning] = useState(wanted !== null);
  const [place, setPlace] = useState(wanted ?? "");
  const face = picture.faces.find(({ side }) => side === (chosen ?? lies)) ?? picture.faces[0];
  if (face === undefined) return null;
  const pinned = picture.pins
    .filter((pin) => pinning && pin.side === face.side && pin.place === place)
    .map((pin): Mark => ({ key: `${pin.x} ${pin.y}`, tone: "pin", at: pin }));
  return (
    <>
      <BoardViewer
        key={`${face.picture} ${face.turn}`}
        face={face}
        marks={[...(asked === null ? [] : marksOf(asked, face.side)), ...pinned]}
        onTap={
          pinning && view.places.some((known) => known.place === place)
            ? (at) => picture.change((album) => withPin(album, { place, side: face.side, ...at }))
            : undefined
        }
      >
        {picture.faces.length > 1 &&
          picture.faces.map(({ side }) => (
            <button
              type="button"
              key={side}
              aria-pressed={side === face.side}
              onClick={() => setChosen(side)}
            >
              {side === "top" ? say`Parts side` : say`Solder side`}
            </button>
          ))}
        {!picture.drawn && (
          <>
            <button type="button" onClick={() => picture.change((album) => turnedFace(album, face.side))}>
              {say`Turn`}
            </button>
            <button type="button" aria-pressed={pinning} onClick={() => setPinning(!pinning)}>
              {say`Pin places`}
            </button>
          </>
        )}
      </BoardViewer>
      {pinning && !picture.drawn && (
        <PinPlaces
          picture={picture}
          places={view.places}
          next={nextPlaces(card === null ? [] : [card.action, ...card.row])}
          place={place}
          onPlace={setPlace}
        />
      )}
    </>
  );
}

/** The places that the next checks ask for, each once. */
function nextPlaces(actions: readonly ActionView[]): readonly string[] {
  const places = actions.flatMap((action) => [
    field(action, "red"),
    field(action, "black"),
    field(action, "place"),
  ]);
  return [...new Set(places.filter((place) => place !== null))];
}
