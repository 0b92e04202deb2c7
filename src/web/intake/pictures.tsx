/** Pictures of the board as it came in, made small enough to keep. */

import { useState } from "react";
import { type KeptPicture, keptPicture, NoPicture } from "../picture/kept-picture.ts";
import { say } from "../say.ts";
import type { IntakeProps } from "./intake.ts";

interface FieldProps {
  readonly words: string;
  onPictures(pictures: readonly KeptPicture[]): void;
  /** one picture alone */
  readonly single?: boolean;
}

/** Takes pictures with the phone's camera, or from files. */
export function PictureField({ words, onPictures, single = false }: FieldProps) {
  const [problem, setProblem] = useState<string | null>(null);
  const take = async (files: readonly File[]) => {
    try {
      onPictures(await Promise.all(files.map(keptPicture)));
      setProblem(null);
    } catch (error) {
      if (!(error instanceof NoPicture)) throw error;
      setProblem(error.message);
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
          multiple={!single}
          onChange={(event) => {
            void take([...(event.target.files ?? [])]);
            event.target.value = "";
          }}
        />
      </label>
      {problem !== null && <p role="alert">{say(problem)}</p>}
    </>
  );
}

export function Pictures({ intake, change }: IntakeProps) {
  return (
    <details>
      <summary>
        <span>
          {say`Pictures`}{" "}
          <small>{intake.pictures.length === 0 ? say`none yet` : say`${intake.pictures.length} taken`}</small>
        </span>
      </summary>
      <PictureField
        words={say`Both sides, before anything is touched`}
        onPictures={(taken) => change({ pictures: [...intake.pictures, ...taken] })}
      />
    </details>
  );
}
