/** On the card: the whole board, small, with the marks of this step. Opens the board's own tab. */

import { plain, said } from "../../messages/said.ts";
import type { BenchView } from "../../wire/bench-view.ts";
import { forms, say, sayWith } from "../say.ts";
import { type AskedSpots, marksOf } from "./asked-spots.ts";
import { BoardSvg, fieldWords, MarkShape, sideWords, type Tone } from "./board-svg.tsx";
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
        <span>{say(openWords(shown.map(({ side }) => sideWords(side))))}</span>
      </button>
    </>
  );
}

function openWords([first = "", second]: readonly string[]): string {
  return second === undefined ? said`${first}: open` : said`${first} and ${second}: open`;
}

function markWords(tone: Tone, field: string): string {
  if (tone === "red") return said`red ${field}`;
  return tone === "black" ? said`black ${field}` : said`the place ${field}`;
}

/** Radius of a mark, as a share of the longer side. */
const MARK = 0.03;

function Small({ face, asked }: { readonly face: ShownFace; readonly asked: AskedSpots }) {
  const size = shownSize(face);
  const marks = marksOf(asked, face.side);
  const words = marks.map(({ tone, at }) => markWords(tone, fieldWords(face, at)));
  return (
    <BoardSvg
      face={face}
      window={{ x: 0, y: 0, ...size }}
      words={say`${sideWords(face.side)} of the board: ${words.join(", ")}`}
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
    const words = at === "" ? places.find((one) => one.place === place)?.words : said`at ${at}`;
    const probe = <b>{tone === "red" ? say`Red` : say`Black`}</b>;
    const where = <b className="ref">{place}</b>;
    return (
      <p className="unpinned" key={tone}>
        <span>
          {words === undefined || plain(words) === place
            ? sayWith`${probe} is not on the picture yet: ${where}.`
            : sayWith`${probe} is not on the picture yet: ${where}, ${say(words)}.`}
        </span>
        {!picture.drawn && (
          <button type="button" className="small" onClick={() => onBoard(place)}>
            {say`Pin ${place}`}
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
    return at === "" ? [] : [`${place}: ${say(at)}`];
  });
  return (
    <p className="unpinned">
      <span>{forms().list(lines)}</span>
      <button type="button" className="quiet small" onClick={() => onBoard(null)}>
        {say`Show it on a photo of the board`}
      </button>
    </p>
  );
}
