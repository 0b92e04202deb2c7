/**
 * A picture as it is kept: small enough for a shop's disk, large enough to read a part's print. It is drawn anew, so that nothing of the file
 * is left but what is to be seen: not where it was taken, nor when, nor by which camera.
 */

import { said } from "../../messages/said.ts";
import { newId } from "../job-event.ts";

export interface PictureToSend {
  readonly id: string;
  readonly data: Blob;
}

export interface KeptPicture extends PictureToSend {
  /** pixels */
  readonly width: number;
  readonly height: number;
}

/** A phone's picture at its best has a quarter of this. */
const MOST_MEGABYTES = 40;
const LONGEST_SIDE = 2000;
const MOST_BYTES = 1_500_000;
/** Tried in turn until the picture is small enough. */
const JPEG_QUALITIES = [0.85, 0.75, 0.6, 0.45];

/** Why a file was not taken, in words for whoever chose it. */
export class NoPicture extends Error {}

/** Throws `NoPicture` where the file is too large, or no picture that this browser can read. */
export async function keptPicture(file: File): Promise<KeptPicture> {
  if (file.size > MOST_MEGABYTES * 1e6)
    throw new NoPicture(
      said`${file.name} has ${Math.round(file.size / 1e6)} MB: take one of at most ${MOST_MEGABYTES} MB.`,
    );
  const image = await createImageBitmap(file).catch(() => {
    throw new NoPicture(said`${file.name} is no picture this browser can read: take a JPEG or PNG.`);
  });
  const scale = Math.min(1, LONGEST_SIDE / Math.max(image.width, image.height));
  const canvas = new OffscreenCanvas(Math.round(image.width * scale), Math.round(image.height * scale));
  canvas.getContext("2d")?.drawImage(image, 0, 0, canvas.width, canvas.height);
  image.close();
  return { id: newId(), data: await smallEnough(canvas), width: canvas.width, height: canvas.height };
}

async function smallEnough(canvas: OffscreenCanvas): Promise<Blob> {
  let data = new Blob();
  for (const quality of JPEG_QUALITIES) {
    data = await canvas.convertToBlob({ type: "image/jpeg", quality });
    if (data.size <= MOST_BYTES) break;
  }
  return data;
}
