/** The surroundings of one spot, enlarged, with four ticks that point at it and leave it free to be seen. */
import type { BoardPin } from "../../wire/job-api.ts";

import { say, sayWith } from "../say.ts";

import { BoardSvg, fieldWords, sideWords, type Tone } from "./board-svg.tsx";
import { isOther } from "./revisions.tsx";
import { shownPoint } from "./turned.ts";
import type { BoardPicture, ShownFace } from "./use-board-picture.ts";

/** Share of the picture's longer side that is enlarged: some three centimetres of a board a hand wide. */
const SHARE = 0.16;
const ASPECT = 1.5;

interface Props {
  readonly picture: BoardPicture;
  readonly spot: BoardPin;
  readonly tone: Tone;
  /** what the card calls the place; left out: as it is pinned */
  readonly asked?: string | null;
}

export function Magnifier({ picture, spot, tone, asked = null }: Props) {
  const face = picture.faces.find(({ side }) => side === spot.side);
  if (face === undefined) return null;
  return (
    <figure className="magnifier">
      <Enlarged face={face} spot={spot} tone={tone} />
      <figcaption>
        {asked !== null && asked !== spot.place && `${say`the same net at`} `}
        {sayWith`${<b>{spot.place.replace(".", " ")}</b>}, ${say(sideWords(face.side))}, ${say(fieldWords(face, spot))}`}
        {isOther(spot.revision, picture.revision) && (
          <span className="other-revision">{say`pinned on ${spot.revision}, this board is ${picture.revision ?? ""}`}</span>
        )}
      </figcaption>
    </figure>
  );
}

function Enlarged({
  face,
  spot,
  tone,
}: {
  readonly face: ShownFace;
  readonly spot: BoardPin;
  readonly tone: Tone;
}) {
  const { x, y } = shownPoint(face, spot);
  const width = SHARE * Math.max(face.width, face.height);
  const height = width / ASPECT;
  const near = height * 0.1;
  const far = height * 0.28;
  const ticks = `M${x - far} ${y}H${x - near}M${x + near} ${y}H${x + far}M${x} ${y - far}V${y - near}M${x} ${y + near}V${y + far}`;
  return (
    <BoardSvg
      face={face}
      window={{ x: x - width / 2, y: y - height / 2, width, height }}
      words={say`${spot.place.replace(".", " ")} enlarged`}
      fill
    >
      <path className="tick-case" d={ticks} strokeWidth={height * 0.07} />
      <path className={`tick-${tone}`} d={ticks} strokeWidth={height * 0.036} />
    </BoardSvg>
  );
}
