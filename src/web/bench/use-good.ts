import { useEffect, useState } from "react";
import type { CardView, GoodHere } from "../../wire/bench-view.ts";
import type { OpenJob } from "../use-job.ts";

const NOTHING: GoodHere = { good: null, restsOn: [] };

/** What a good board shows at the card's check: as the proposal says it, else, for a check of one's own or of a row, as the engine answers. */
export function useGood({ good: ask, behind }: OpenJob, card: CardView, proposed: boolean): GoodHere {
  const [asked, setAsked] = useState(NOTHING);
  const { action } = card;
  useEffect(() => {
    // a view that is being worked out goes first
    if (behind || proposed || action.do !== "measure") return;
    let wanted = true;
    ask(action).then(
      (found) => wanted && setAsked(found),
      // the engine says what is wrong with the log where it is asked for the bench
      () => undefined,
    );
    return () => {
      wanted = false;
    };
  }, [ask, behind, proposed, action]);
  return proposed ? card : asked;
}
