/** The board: its stages as they stand, and its picture with the places of the next check. */
import type { ActionView } from "../../wire/bench-view.ts";
import { BOARD_REVISION } from "../../wire/job-api.ts";
import type { PanelProps } from "../bench/bench-props.ts";
import { field, happened } from "../job-event.ts";
import { say } from "../say.ts";
import { AlbumConflicts } from "./album-conflicts.tsx";
import { askedSpots, marksOf } from "./asked-spots.ts";
import { FacePhotos } from "./face-photos.tsx";
import { PinnedPicture } from "./pinned-picture.tsx";
import { RevisionHere } from "./revisions.tsx";
import { StageMap } from "./stage-map.tsx";

export function BoardPanel({ open, view, hands, desk }: PanelProps) {
  const { picture } = desk;
  return (
    <div className="board-panel">
      <section aria-label={say`The board's picture`} className="board-picture">
        <h3>{say`Where to probe now`}</h3>
        <AlbumConflicts picture={picture} />
        {picture.faces.length === 0 ? (
          <p className="aside">{say`This board has no picture yet. A photo of each side is enough.`}</p>
        ) : (
          <StepOnPicture view={view} desk={desk} />
        )}
        {picture.drawn && (
          <p className="aside">{say`Drawn by us for this practice board: of a board on the bench take a photo.`}</p>
        )}
        {view.verdict === null && (
          <RevisionHere picture={picture} onTold={(answer) => hands.add([revisionAnswer(answer)])} />
        )}
        <FacePhotos picture={picture} job={open.id} />
      </section>
      <StageMap ask={open.stages} />
    </div>
  );
}

function StepOnPicture({ view, desk }: Pick<PanelProps, "view" | "desk">) {
  const { picture, card, wanted } = desk;
  const asked = card === null ? null : askedSpots(picture, card);
  return (
    <PinnedPicture
      picture={picture}
      places={view.places}
      marksOn={(side) => (asked === null ? [] : marksOf(asked, side))}
      lies={asked?.red?.side ?? asked?.black?.side ?? asked?.here?.side}
      wanted={wanted}
      next={nextPlaces(card === null ? [] : [card.action, ...card.row])}
    />
  );
}

const revisionAnswer = (answer: string) => happened({ do: "answer", question: BOARD_REVISION, answer });

/** The places that the next checks ask for, each once. */
function nextPlaces(actions: readonly ActionView[]): readonly string[] {
  const places = actions.flatMap((action) => [
    field(action, "red"),
    field(action, "black"),
    field(action, "place"),
  ]);
  return [...new Set(places.filter((place) => place !== null))];
}
