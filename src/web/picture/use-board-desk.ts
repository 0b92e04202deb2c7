/** The board's picture beside the card, and the way to it. */
import { useState } from "react";
import type { BenchView, CardView } from "../../wire/bench-view.ts";
import type { BoardDesk } from "../bench/bench-props.ts";
import type { OpenJob } from "../use-job.ts";
import { useBoardPicture } from "./use-board-picture.ts";

/** `show` brings the board's tab up. */
export function useBoardDesk(
  open: OpenJob,
  view: BenchView,
  card: CardView | null,
  show: () => void,
): BoardDesk {
  const content = open.job === null || open.job === "loading" ? null : open.job.header.board;
  const { lifted, off, revision } = view;
  const picture = useBoardPicture({ content, drawing: open.drawing, lifted, off, revision });
  const [wanted, setWanted] = useState<string | null>(null);
  const look = (place: string | null) => {
    setWanted(place);
    show();
    scrollTo({ top: 0 });
  };
  return { picture, card, wanted, look };
}
