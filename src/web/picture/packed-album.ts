/** A board's photos and pins, into a file that is given away and out of one that was brought. */

import { said } from "../../messages/said.ts";
import type { BoardFace } from "../../wire/job-api.ts";
import type { PackedPictures } from "../engine-messages.ts";
import { newId } from "../job-event.ts";
import { albumPicture, changeAlbum, openAlbum } from "./album-keeper.ts";

/** Null where the board has no photos. Throws where one of them cannot be had now. */
export async function packedAlbum(board: string): Promise<PackedPictures | null> {
  const { faces, pins } = await openAlbum(board);
  if (faces.length === 0) return null;
  const packed = await Promise.all(
    faces.map(async ({ picture, ...face }) => {
      const data = await albumPicture(picture);
      if (data === null)
        throw new Error(
          said`a photo of this board is on the bench computer, which does not answer; try again later`,
        );
      const type = data.type === "image/png" ? ("image/png" as const) : ("image/jpeg" as const);
      return { ...face, type, data: await base64Of(data) };
    }),
  );
  return { faces: packed, pins };
}

/** Keeps what came in a file as the board's photos and pins, in the place of those it had. */
export async function keepPackedAlbum(board: string, { faces, pins }: PackedPictures): Promise<void> {
  const taken = faces.map(({ type, data, ...face }) => {
    const bytes = Uint8Array.from(atob(data), (letter) => letter.charCodeAt(0));
    const id = newId();
    return { face: { ...face, picture: id } satisfies BoardFace, id, data: new Blob([bytes], { type }) };
  });
  await changeAlbum(board, () => ({ faces: taken.map(({ face }) => face), pins }), taken);
}

async function base64Of(blob: Blob): Promise<string> {
  const bytes = new Uint8Array(await blob.arrayBuffer());
  let letters = "";
  // a whole picture at once would be more arguments than a call takes
  for (let at = 0; at < bytes.length; at += 0x8000)
    letters += String.fromCharCode(...bytes.subarray(at, at + 0x8000));
  return btoa(letters);
}
