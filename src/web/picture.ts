/** A picture as it is kept: small enough for a shop's disk, large enough to read a part's print. */
import { newId } from "./job-event.ts";

export interface PictureToSend {
  readonly id: string;
  readonly data: Blob;
}

const LONGEST_SIDE = 1600;
const JPEG_QUALITY = 0.82;

/** Throws where the file is no picture that this browser can read. */
export async function keptPicture(file: File): Promise<PictureToSend> {
  const image = await createImageBitmap(file);
  const scale = Math.min(1, LONGEST_SIDE / Math.max(image.width, image.height));
  const canvas = new OffscreenCanvas(Math.round(image.width * scale), Math.round(image.height * scale));
  canvas.getContext("2d")?.drawImage(image, 0, 0, canvas.width, canvas.height);
  image.close();
  return { id: newId(), data: await canvas.convertToBlob({ type: "image/jpeg", quality: JPEG_QUALITY }) };
}
