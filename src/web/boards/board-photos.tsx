/** Photos of a board of one's own and the places pinned on them: before any job as well as from one. */
import { useCallback } from "react";
import { AlbumConflicts } from "../picture/album-conflicts.tsx";
import { FacePhotos } from "../picture/face-photos.tsx";
import { PinnedPicture } from "../picture/pinned-picture.tsx";
import { type BoardPicture, useBoardPicture } from "../picture/use-board-picture.ts";
import { say } from "../say.ts";
import { useEngine } from "../use-engine.ts";
import { placesOf } from "./places.ts";
import type { EditedBoard } from "./use-own-board.ts";

const NOTHING_DONE: readonly string[] = [];

export function BoardPhotos({ board }: { readonly board: NonNullable<EditedBoard["board"]> }) {
  const engine = useEngine();
  const { content, view } = board;
  const drawing = useCallback(
    async () => (engine === null ? null : engine.drawing(content)),
    [engine, content],
  );
  const picture = useBoardPicture({
    content,
    drawing,
    lifted: NOTHING_DONE,
    off: NOTHING_DONE,
    revision: null,
  });
  return (
    <details className="own-photos">
      <summary>
        <span>
          {say`Photos and pins`} <small>{howMany(picture)}</small>
        </span>
      </summary>
      <section className="board-picture" aria-label={say`Photos and pins`}>
        <AlbumConflicts picture={picture} />
        {picture.faces.length > 0 && (
          <PinnedPicture
            picture={picture}
            places={placesOf(view)}
            marksOn={() => []}
            wanted={null}
            next={[]}
          />
        )}
        <FacePhotos picture={picture} />
      </section>
    </details>
  );
}

function howMany({ faces, pins, drawn }: BoardPicture): string {
  if (drawn || faces.length === 0) return say`none yet`;
  return say`photos ${faces.length}, pins ${pins.length}`;
}
