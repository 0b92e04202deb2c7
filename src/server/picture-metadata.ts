/**
 * What a picture says of itself beside what is to be seen on it: where it was taken, when, by which camera. The page draws pictures of
 * boards anew before it sends them; whatever still carries such a block was not, and is not taken, for these pictures are given away.
 */
import type { PictureType } from "../job/job-store.ts";

/** Segments of JPEG (ITU-T T.81, B.1.1.3): APP1 (Exif, XMP), APP13 (captions), COM. */
const JPEG_SEGMENTS: ReadonlyMap<number, string> = new Map([
  [0xe1, "Exif or XMP"],
  [0xed, "captions"],
  [0xfe, "a comment"],
]);
const START_OF_SCAN = 0xda;

/** Chunks of PNG (ISO/IEC 15948, 11.3). */
const PNG_CHUNKS: ReadonlyMap<string, string> = new Map([
  ["eXIf", "Exif"],
  ["tEXt", "text"],
  ["zTXt", "text"],
  ["iTXt", "text"],
  ["tIME", "the time"],
]);
const PNG_SIGNATURE_BYTES = 8;

/** The first such block that the picture carries, in words; null where it has none. */
export function metadataOf(data: Uint8Array, type: PictureType): string | null {
  const bytes = new DataView(data.buffer, data.byteOffset, data.byteLength);
  return type === "image/jpeg" ? jpegMetadata(bytes) : pngMetadata(bytes);
}

function jpegMetadata(bytes: DataView): string | null {
  for (let at = 2; at + 4 <= bytes.byteLength; at += 2 + bytes.getUint16(at + 2)) {
    if (bytes.getUint8(at) !== 0xff) return "something between its segments";
    const marker = bytes.getUint8(at + 1);
    if (marker === START_OF_SCAN) return null;
    const found = JPEG_SEGMENTS.get(marker);
    if (found !== undefined) return found;
  }
  return null;
}

function pngMetadata(bytes: DataView): string | null {
  for (let at = PNG_SIGNATURE_BYTES; at + 8 <= bytes.byteLength; at += 12 + bytes.getUint32(at)) {
    const name = [4, 5, 6, 7].map((step) => String.fromCharCode(bytes.getUint8(at + step))).join("");
    const found = PNG_CHUNKS.get(name);
    if (found !== undefined) return found;
  }
  return null;
}
