/** On the card: the whole board, small, with the marks of this step. Opens the board's own tab. */
import type { BenchView } from "../../wire/bench-view.ts";
import { type AskedSpots, marksOf } from "./asked-spots.ts";
import { BoardSvg, fieldWords, MarkShape, sideWords } from "./board-svg.tsx";
import { Magnifier } from "./magnifier.tsx";
import { pinsInWords } from "./spots.ts";
import { shownSize } from "./turned.ts";
import type { BoardPicture, ShownFace } from "./use-board-picture.ts";

interface Props {
  readonly picture: BoardPicture;
  readonly asked: AskedSpots;
  onBoard(place: string | null): void;
}

/** The whole board, small; for a place that a hand goes to, its surroundings too. Nothing where nothing of the step is on it. */
export function WholeBoard({ picture, asked, onBoard }: Props) {
  const shown = picture.faces.filter(({ side }) => marksOf(asked, side).length > 0);
  if (shown.length === 0) return null;
  return (
    <>
      {asked.here !== null && <Magnifier picture={picture} spot={asked.here} tone="here" />}
      <button type="button" className="whole-board" onClick={() => onBoard(null)}>
        {shown.map((face) => (
          <Small key={face.side} face={face} asked={asked} />
        ))}
        <span>{shown.map(({ side }) => sideWords(side)).join(" and ")}: open</span>
      </button>
    </>
  );
}

/** Radius of a mark, as a share of the longer side. */
const MARK = 0.03;

function Small({ face, asked }: { readonly face: ShownFace; readonly asked: AskedSpots }) {
  const size = shownSize(face);
  const marks = marksOf(asked, face.side);
  const words = marks.map(
    ({ tone, at }) => `${tone === "here" ? "the place" : tone} ${fieldWords(face, at)}`,
  );
  return (
    <BoardSvg
      face={face}
      window={{ x: 0, y: 0, ...size }}
      words={`${sideWords(face.side)} of the board: ${words.join(", ")}`}
    >
      {marks.map((mark) => (
        <MarkShape key={mark.key} face={face} mark={mark} size={MARK * Math.max(size.width, size.height)} />
      ))}
    </BoardSvg>
  );
}

interface UnpinnedProps extends Props {
  readonly places: BenchView["places"];
}

/** Places of the step that no one has pinned: by part and pin, with a way to pin them. */
export function Unpinned({ picture, asked, places, onBoard }: UnpinnedProps) {
  if (asked.places === null) return null;
  if (picture.faces.length === 0) return <NoPictureYet picture={picture} asked={asked} onBoard={onBoard} />;
  const missing = (["red", "black"] as const).flatMap((tone) =>
    asked[tone] === null && asked.places !== null ? [{ tone, place: asked.places[tone] }] : [],
  );
  return missing.map(({ tone, place }) => {
    const at = pinsInWords(place, picture.now);
    const words = at === "" ? places.find((one) => one.place === place)?.words : `at ${at}`;
    return (
      <p className="unpinned" key={tone}>
        <span>
          <b>{tone === "red" ? "Red" : "Black"}</b> is not on the picture yet: <b className="ref">{place}</b>
          {words !== undefined && words !== place && <>, {words}</>}.
        </span>
        {!picture.drawn && (
          <button type="button" className="small" onClick={() => onBoard(place)}>
            Pin {place}
          </button>
        )}
      </p>
    );
  });
}

function NoPictureYet({ picture, asked, onBoard }: Props) {
  if (asked.places === null) return null;
  const lines = [asked.places.red, asked.places.black].flatMap((place) => {
    const at = pinsInWords(place, picture.now);
    return at === "" ? [] : [`${place}: ${at}`];
  });
  return (
    <p className="unpinned">
      <span>{lines.join("; ")}</span>
      <button type="button" className="quiet small" onClick={() => onBoard(null)}>
        Show it on a photo of the board
      </button>
    </p>
  );
}
