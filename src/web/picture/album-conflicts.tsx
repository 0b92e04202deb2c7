/** What two screens pinned or photographed differently while neither knew of the other: shown until somebody says which holds. */
import { useEffect, useState } from "react";
import { type AlbumConflict, type AlbumWay, type BoardPin, settledAlbum } from "../../wire/job-api.ts";
import { say } from "../say.ts";
import { albumPicture } from "./album-keeper.ts";
import { BoardSvg, fieldWords, type Mark, MarkShape, sideWords } from "./board-svg.tsx";
import { shownSize } from "./turned.ts";
import type { BoardPicture, ShownFace } from "./use-board-picture.ts";

export function AlbumConflicts({ picture }: { readonly picture: BoardPicture }) {
  const { conflicts, change } = picture;
  if (conflicts.length === 0) return null;
  return (
    <section className="album-conflicts" role="alert" aria-label={say`Pinned on two screens`}>
      {conflicts.map((conflict) => {
        const settle = (holds: 0 | 1 | "both") => change((album) => settledAlbum(album, conflict, holds));
        return conflict.place === null ? (
          <TwoPhotos key={`photo ${conflict.side}`} conflict={conflict} onSettle={settle} />
        ) : (
          <TwoSpots
            key={JSON.stringify(conflict)}
            place={conflict.place}
            conflict={conflict}
            picture={picture}
            onSettle={settle}
          />
        );
      })}
    </section>
  );
}

interface Props {
  readonly conflict: AlbumConflict;
  onSettle(holds: 0 | 1 | "both"): void;
}

function TwoSpots({
  place,
  conflict,
  picture,
  onSettle,
}: Props & { readonly place: string; readonly picture: BoardPicture }) {
  const face = picture.faces.find(({ side }) => side === conflict.side);
  return (
    <article>
      <p>{say`${place} was pinned differently on two screens, ${sideWords(conflict.side)}. Both are kept until you say which holds.`}</p>
      {face !== undefined && <BothWays face={face} ways={conflict.ways} place={place} />}
      <div className="keys">
        {conflict.ways.map((way, at) => (
          <button
            type="button"
            key={at === 0 ? "first" : "second"}
            onClick={() => onSettle(at === 0 ? 0 : 1)}
          >
            {way.pins.length === 0
              ? say`${at + 1}: not pinned at all`
              : say`${at + 1} holds: ${spotsInWords(face, way.pins)}`}
          </button>
        ))}
        <button type="button" onClick={() => onSettle("both")}>
          {say`Both hold: it has several pads`}
        </button>
      </div>
    </article>
  );
}

function spotsInWords(face: ShownFace | undefined, pins: readonly BoardPin[]): string {
  return face === undefined ? String(pins.length) : pins.map((pin) => fieldWords(face, pin)).join(", ");
}

/** Radius of a mark, as a share of the longer side. */
const MARK = 0.03;

function BothWays({
  face,
  ways,
  place,
}: {
  readonly face: ShownFace;
  readonly ways: AlbumConflict["ways"];
  readonly place: string;
}) {
  const size = shownSize(face);
  const marks = ways.flatMap(({ pins }, way) =>
    pins.map((pin, at): Mark => ({ key: `${way} ${at}`, tone: "pin", at: pin, letter: String(way + 1) })),
  );
  return (
    <div className="both-ways">
      <BoardSvg
        face={face}
        window={{ x: 0, y: 0, ...size }}
        words={say`Both ways in which ${place} was pinned`}
      >
        {marks.map((mark) => (
          <MarkShape key={mark.key} face={face} mark={mark} size={MARK * Math.max(size.width, size.height)} />
        ))}
      </BoardSvg>
    </div>
  );
}

function TwoPhotos({ conflict, onSettle }: Props) {
  return (
    <article>
      <p>{say`Two screens changed the photo of the ${sideWords(conflict.side)}. Only one can hold, with the places pinned on it; the other is kept until you say which.`}</p>
      <ul className="from-the-job">
        {conflict.ways.map((way, at) => (
          <li key={at === 0 ? "first" : "second"}>
            <PhotoOf way={way} words={say`Photo ${at + 1}`} />
            <button type="button" onClick={() => onSettle(at === 0 ? 0 : 1)}>
              {say`${at + 1} holds: places pinned ${way.pins.length}`}
            </button>
          </li>
        ))}
      </ul>
    </article>
  );
}

function PhotoOf({ way: { face = null }, words }: { readonly way: AlbumWay; readonly words: string }) {
  const [address, setAddress] = useState<string | null>(null);
  const id = face?.picture ?? null;
  useEffect(() => {
    let made: string | null = null;
    let wanted = true;
    if (id !== null)
      void albumPicture(id).then((data) => {
        if (data === null || !wanted) return;
        made = URL.createObjectURL(data);
        setAddress(made);
      });
    return () => {
      wanted = false;
      if (made !== null) URL.revokeObjectURL(made);
    };
  }, [id]);
  return address === null ? <p className="aside">{say`no photo`}</p> : <img src={address} alt={words} />;
}
