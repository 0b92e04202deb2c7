/** Photos of the board's two sides: taken now, or one of the pictures that the job has already. */
import { Fragment, useEffect, useState } from "react";
import { said, saidCount } from "../../messages/said.ts";
import type { BoardSide } from "../../wire/job-api.ts";
import { PictureField } from "../intake/pictures.tsx";
import { newId } from "../job-event.ts";
import { picturesOf } from "../keeper.ts";
import { say } from "../say.ts";
import { withFace } from "./album.ts";
import { sideWords } from "./board-svg.tsx";
import type { KeptPicture } from "./kept-picture.ts";
import { RevisionOfPhoto } from "./revisions.tsx";
import type { BoardPicture } from "./use-board-picture.ts";

interface Props {
  readonly picture: BoardPicture;
  /** whose pictures may be one of them; left out: there is none */
  readonly job?: string;
}

const SIDES: readonly BoardSide[] = ["top", "bottom"];

export function FacePhotos({ picture, job }: Props) {
  const use = (side: BoardSide, { id, data, width, height }: KeptPicture) =>
    picture.change(
      (album) =>
        withFace(album, {
          side,
          picture: id,
          width,
          height,
          turn: 0,
          ...(picture.revision === null ? {} : { revision: picture.revision }),
        }),
      [{ id, data }],
    );
  return (
    <details className="face-photos">
      <summary>{say`Photos of this board`}</summary>
      <p className="aside">
        {say`They stay with boards of this number, here and in later jobs. Only what is to be seen is kept: no place, no time, no camera.`}
      </p>
      {SIDES.map((side) => (
        <Fragment key={side}>
          <PictureField
            single
            words={say(fieldWordsOf(picture, side))}
            onPictures={([taken]) => taken !== undefined && use(side, taken)}
          />
          <RevisionOfPhoto picture={picture} side={side} />
        </Fragment>
      ))}
      {job !== undefined && <FromTheJob job={job} onChosen={use} />}
    </details>
  );
}

function fieldWordsOf({ faces, pins, drawn }: BoardPicture, side: BoardSide): string {
  if (drawn || !faces.some((face) => face.side === side)) return said`Photo of the ${sideWords(side)}`;
  const count = pins.filter((pin) => pin.side === side).length;
  return count === 0
    ? said`Another photo of the ${sideWords(side)}`
    : saidCount(
        count,
        "Another photo of the {1}; the {0} pin on the old one goes with it",
        "Another photo of the {1}; the {0} pins on the old one go with it",
        sideWords(side),
      );
}

interface FromProps {
  readonly job: string;
  onChosen(side: BoardSide, picture: KeptPicture): void;
}

function FromTheJob({ job, onChosen }: FromProps) {
  const [blobs, setBlobs] = useState<readonly { readonly address: string; readonly data: Blob }[]>([]);
  useEffect(() => {
    let addresses: readonly string[] = [];
    let wanted = true;
    void jobPictures(job).then((found) => {
      addresses = found.map(({ address }) => address);
      if (wanted) setBlobs(found);
      else for (const address of addresses) URL.revokeObjectURL(address);
    });
    return () => {
      wanted = false;
      for (const address of addresses) URL.revokeObjectURL(address);
    };
  }, [job]);
  if (blobs.length === 0) return null;
  const choose = async (side: BoardSide, data: Blob) => {
    const image = await createImageBitmap(data);
    onChosen(side, { id: newId(), data, width: image.width, height: image.height });
    image.close();
  };
  return (
    <ul className="from-the-job" aria-label={say`Pictures of this job`}>
      {blobs.map(({ address, data }, index) => (
        <li key={address}>
          <img src={address} alt={say`Taken in this job, ${index + 1}`} />
          {SIDES.map((side) => (
            <button type="button" className="small" key={side} onClick={() => void choose(side, data)}>
              {say`It is the ${sideWords(side)}`}
            </button>
          ))}
        </li>
      ))}
    </ul>
  );
}

async function jobPictures(job: string) {
  const { kept, waiting } = await picturesOf(job);
  const sent = await Promise.all(
    kept.map(({ address }) =>
      fetch(address).then(
        async (answer) => (answer.ok ? [await answer.blob()] : []),
        // away: those that wait here can still be chosen
        () => [],
      ),
    ),
  );
  return [...sent.flat(), ...waiting].map((data) => ({ data, address: URL.createObjectURL(data) }));
}
