/** Pictures of the board as it came in, made small enough to keep. */

import { useState } from "react";
import { keptPicture, type PictureToSend } from "../picture.ts";
import type { IntakeProps } from "./intake.ts";

interface FieldProps {
  readonly words: string;
  onPictures(pictures: readonly PictureToSend[]): void;
}

/** Takes pictures with the phone's camera, or from files. */
export function PictureField({ words, onPictures }: FieldProps) {
  const [problem, setProblem] = useState<string | null>(null);
  const take = async (files: readonly File[]) => {
    try {
      onPictures(await Promise.all(files.map(keptPicture)));
      setProblem(null);
    } catch {
      setProblem("That file is no picture this browser can read: take a JPEG or PNG.");
    }
  };
  return (
    <>
      <label className="entry">
        {words}
        <input
          type="file"
          accept="image/*"
          capture="environment"
          multiple
          onChange={(event) => void take([...(event.target.files ?? [])])}
        />
      </label>
      {problem !== null && <p role="alert">{problem}</p>}
    </>
  );
}

export function Pictures({ intake, change }: IntakeProps) {
  return (
    <details>
      <summary>
        <span>
          Pictures{" "}
          <small>{intake.pictures.length === 0 ? "none yet" : `${intake.pictures.length} taken`}</small>
        </span>
      </summary>
      <PictureField
        words="Both sides, before anything is touched"
        onPictures={(taken) => change({ pictures: [...intake.pictures, ...taken] })}
      />
    </details>
  );
}
