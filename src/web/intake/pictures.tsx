/** Pictures of the board as it came in, made small enough to keep. */

import { useState } from "react";
import { newId } from "../job-event.ts";
import type { PictureToSend } from "../keeper.ts";
import type { IntakeProps } from "./intake.ts";

const LONGEST_SIDE = 1600;
const JPEG_QUALITY = 0.82;

async function smaller(file: File): Promise<PictureToSend> {
  const image = await createImageBitmap(file);
  const scale = Math.min(1, LONGEST_SIDE / Math.max(image.width, image.height));
  const canvas = new OffscreenCanvas(Math.round(image.width * scale), Math.round(image.height * scale));
  canvas.getContext("2d")?.drawImage(image, 0, 0, canvas.width, canvas.height);
  image.close();
  return { id: newId(), data: await canvas.convertToBlob({ type: "image/jpeg", quality: JPEG_QUALITY }) };
}

export function Pictures({ intake, change }: IntakeProps) {
  const [problem, setProblem] = useState<string | null>(null);
  const add = async (files: readonly File[]) => {
    try {
      const pictures = await Promise.all(files.map(smaller));
      change({ pictures: [...intake.pictures, ...pictures] });
      setProblem(null);
    } catch {
      setProblem("That file is no picture this browser can read: take a JPEG or PNG.");
    }
  };
  return (
    <details>
      <summary>
        <span>
          Pictures{" "}
          <small>{intake.pictures.length === 0 ? "none yet" : `${intake.pictures.length} taken`}</small>
        </span>
      </summary>
      <label className="entry">
        Both sides, before anything is touched
        <input
          type="file"
          accept="image/*"
          capture="environment"
          multiple
          onChange={(event) => void add([...(event.target.files ?? [])])}
        />
      </label>
      {problem !== null && <p role="alert">{problem}</p>}
    </details>
  );
}
