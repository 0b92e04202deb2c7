import type { PictureType } from "../job/job-store.ts";

const PNG = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
const JPEG = [0xff, 0xd8, 0xff];

/** What the bytes are, whatever they were called: the signatures of PNG (ISO/IEC 15948, 5.2) and JPEG (ITU-T T.81, B.1.1.3). */
export function sniffPicture(data: Uint8Array): PictureType | null {
  if (PNG.every((byte, at) => data[at] === byte)) return "image/png";
  if (JPEG.every((byte, at) => data[at] === byte)) return "image/jpeg";
  return null;
}
