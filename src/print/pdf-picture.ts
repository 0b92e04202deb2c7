/** A picture in a PDF: embedded as it is kept, drawn as large as there is room. */
import { inflateSync } from "node:zlib";
import type { Pdf } from "./typefaces.ts";

interface OpenedPicture {
  /** points */
  readonly width: number;
  readonly height: number;
  /** its top left corner in points from that of the sheet */
  draw(left: number, top: number): void;
}

/** What the PDF library makes of a picture; its types keep it to themselves. */
interface Embedded {
  readonly width: number;
  readonly height: number;
  /** as Exif has it: from 5 on it lies on its side */
  readonly orientation?: number;
  /** of a PNG: its rows, packed */
  readonly imgData?: Uint8Array;
}

/** Largest a PNG may unpack to, bytes: 60 million points in colour. */
const MOST_UNPACKED = 180_000_000;
/** No finer than this is printed, points of the picture an inch: a small picture stays small. */
const LEAST_DPI = 100;
const POINTS_PER_INCH = 72;

/** Null where it is no picture that can be embedded. */
export function openPicture(
  pdf: Pdf,
  data: Uint8Array,
  most: { readonly width: number; readonly height: number },
): OpenedPicture | null {
  const image = embedded(pdf, data);
  if (image === null) return null;
  const { orientation = 1 } = image;
  const [across, down] = orientation >= 5 ? [image.height, image.width] : [image.width, image.height];
  const scale = Math.min(POINTS_PER_INCH / LEAST_DPI, most.width / across, most.height / down);
  const width = across * scale;
  const height = down * scale;
  return {
    width,
    height,
    draw: (left, top) => {
      // An opened picture is drawn as a file's bytes are; the types name the bytes alone.
      pdf.image(image as unknown as Buffer, left, top, { fit: [width, height] });
    },
  };
}

function embedded(pdf: Pdf, data: Uint8Array): Embedded | null {
  try {
    // As above: the types leave opening out.
    const image = (pdf as unknown as { openImage(data: Uint8Array): Embedded }).openImage(data);
    // Rows that do not unpack are found out by the library when nobody listens any more.
    if (image.imgData !== undefined) inflateSync(image.imgData, { maxOutputLength: MOST_UNPACKED });
    return image.width > 0 && image.height > 0 ? image : null;
  } catch {
    // Whatever the library throws (texts, too), this is no picture to it.
    return null;
  }
}
