/** Photos of the board's two sides: taken now, or one of the pictures that the job has already. */
import { useEffect, useState } from "react";
import type { BoardSide } from "../../wire/job-api.ts";
import { PictureField } from "../intake/pictures.tsx";
import { newId } from "../job-event.ts";
import { picturesOf } from "../keeper.ts";
import { withFace } from "./album.ts";
import { sideWords } from "./board-svg.tsx";
import type { KeptPicture } from "./kept-picture.ts";
import type { BoardPicture } from "./use-board-picture.ts";

interface Props {
  readonly picture: BoardPicture;
  readonly job: string;
}

const SIDES: readonly BoardSide[] = ["top", "bottom"];

export function FacePhotos({ picture, job }: Props) {
  const use = (side: BoardSide, { id, data, width, height }: KeptPicture) =>
    picture.change((album) => withFace(album, { side, picture: id, width, height, turn: 0 }), [{ id, data }]);
  return (
    <details className="face-photos">
      <summary>Photos of this board</summary>
      <p className="aside">
        They stay with boards of this number, here and in later jobs. Only what is to be seen is kept: no
        place, no time, no camera.
      </p>
      {SIDES.map((side) => (
        <PictureField
          key={side}
          single
          words={fieldWordsOf(picture, side)}
          onPictures={([taken]) => taken !== undefined && use(side, taken)}
        />
      ))}
      <FromTheJob job={job} onChosen={use} />
    </details>
  );
}

function fieldWordsOf({ faces, pins, drawn }: BoardPicture, side: BoardSide): string {
  if (drawn || !faces.some((face) => face.side === side)) return `Photo of the ${sideWords(side)}`;
  const count = pins.filter((pin) => pin.side === side).length;
  const goes = count === 0 ? "" : `; the ${count} pins on the old one go with it`;
  return `Another photo of the ${sideWords(side)}${goes}`;
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
    <ul className="from-the-job" aria-label="Pictures of this job">
      {blobs.map(({ address, data }, index) => (
        <li key={address}>
          <img src={address} alt={`Taken in this job, ${index + 1}`} />
          {SIDES.map((side) => (
            <button type="button" className="small" key={side} onClick={() => void choose(side, data)}>
              It is the {sideWords(side)}
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
