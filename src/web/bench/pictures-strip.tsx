/** The board as it came in and as it was found on the way: a strip of pictures, each opening at full size, and one more. */
import { useCallback, useEffect, useState } from "react";
import { PictureField } from "../intake/pictures.tsx";
import { keepPictures, picturesOf, send } from "../keeper.ts";
import type { PictureToSend } from "../picture/kept-picture.ts";
import { say } from "../say.ts";

export function PicturesStrip({ job }: { readonly job: string }) {
  const [shown, setShown] = useState<readonly string[]>([]);
  const look = useCallback(async () => {
    const { kept, waiting } = await picturesOf(job);
    setShown([...kept.map(({ address }) => address), ...waiting.map((data) => URL.createObjectURL(data))]);
  }, [job]);
  useEffect(() => void look(), [look]);
  useEffect(
    () => () => {
      for (const address of shown) if (address.startsWith("blob:")) URL.revokeObjectURL(address);
    },
    [shown],
  );
  const add = (pictures: readonly PictureToSend[]) =>
    void keepPictures(job, pictures)
      .then(() => send(job))
      .then(look);
  return (
    <section className="pictures" aria-label={say`Pictures`}>
      {shown.length > 0 && (
        <ul className="picture-strip">
          {shown.map((address, at) => (
            <li key={address}>
              <a href={address} target="_blank" rel="noreferrer">
                <img src={address} alt={say`The board as taken, ${at + 1}`} loading="lazy" />
              </a>
            </li>
          ))}
        </ul>
      )}
      <PictureField words={say`Add a picture`} onPictures={add} />
    </section>
  );
}
