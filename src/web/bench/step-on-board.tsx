/** Where the step is on the board's picture, and which of its places nobody has pinned. */
import type { BenchView, CardView } from "../../wire/bench-view.ts";
import { askedSpots } from "../picture/asked-spots.ts";
import { Unpinned, WholeBoard } from "../picture/whole-board.tsx";
import type { BoardDesk } from "./bench-props.ts";

interface Props {
  readonly card: CardView;
  readonly places: BenchView["places"];
  readonly desk: BoardDesk;
}

export function StepOnBoard({ card, places, desk: { picture, look } }: Props) {
  const asked = askedSpots(picture, card);
  return (
    <>
      <WholeBoard picture={picture} asked={asked} onBoard={look} />
      <Unpinned picture={picture} asked={asked} places={places} onBoard={look} />
    </>
  );
}
