/** Hardware revisions, as they are printed on boards: of the photo, of its pins, and of the board at hand where that is another. */

import { type BoardSide, REVISION_LENGTH } from "../../wire/job-api.ts";
import { TypedField } from "../boards/typed-field.tsx";
import { say } from "../say.ts";
import { withRevision } from "./album.ts";
import { sideWords } from "./board-svg.tsx";
import type { BoardPicture, ShownFace } from "./use-board-picture.ts";

const cut = (text: string): string => text.trim().slice(0, REVISION_LENGTH);

/** Is the revision known, and another than that of the board at hand? */
export function isOther(revision: string | undefined, here: string | null): revision is string {
  const bare = (text: string) => text.replace(/[\s.]+/g, "").toLowerCase();
  return revision !== undefined && here !== null && bare(revision) !== bare(here);
}

export function OfRevision({ picture, face }: { readonly picture: BoardPicture; readonly face: ShownFace }) {
  const { revision: here } = picture;
  const { revision } = face;
  if (revision === undefined) return null;
  if (!isOther(revision, here)) return <p className="aside">{say`Photo of a board marked ${revision}.`}</p>;
  return (
    <p className="other-revision" role="note">
      {say`The photo is of ${revision}, this board is ${here ?? ""}: parts may lie elsewhere.`}
    </p>
  );
}

interface FieldProps {
  readonly picture: BoardPicture;
  readonly side: BoardSide;
}

/** What is printed on the board of a side's photo; nothing where there is none. */
export function RevisionOfPhoto({ picture, side }: FieldProps) {
  const face = picture.faces.find((one) => one.side === side);
  if (picture.drawn || face === undefined) return null;
  return (
    <TypedField
      label={say`Revision printed on the photo’s board, ${sideWords(side)}`}
      value={face.revision ?? ""}
      hint="rev C"
      onValue={async (text) => {
        picture.change((album) => withRevision(album, side, cut(text)));
        return true;
      }}
    />
  );
}

/** What is printed on the board on the bench. */
export function RevisionHere({
  picture,
  onTold,
}: {
  readonly picture: BoardPicture;
  onTold(revision: string): void;
}) {
  return (
    <TypedField
      label={say`Revision printed on this board`}
      value={picture.revision ?? ""}
      hint="rev C"
      onValue={async (text) => {
        onTold(cut(text));
        return true;
      }}
    />
  );
}
