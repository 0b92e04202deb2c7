/** Pinning: a place is chosen, then tapped on the photo, as often as it has pads. What the next checks ask for comes first. */

import { saidCount } from "../../messages/said.ts";
import type { BenchView } from "../../wire/bench-view.ts";
import { SearchField } from "../bench/search-field.tsx";
import { say, sayWith } from "../say.ts";
import { withoutLastPin } from "./album.ts";
import { spotsOf } from "./spots.ts";
import type { BoardPicture } from "./use-board-picture.ts";

interface Props {
  readonly picture: BoardPicture;
  readonly places: BenchView["places"];
  /** places of the next checks, in their order */
  readonly next: readonly string[];
  readonly place: string;
  onPlace(place: string): void;
}

const OFFERED = 6;

export function PinPlaces({ picture, places, next, place, onPlace }: Props) {
  const known = places.find((one) => one.place === place);
  const own = picture.pins.filter((pin) => pin.place === place);
  const missing = next.filter((one) => spotsOf(picture.pins, one, picture.now).length === 0);
  return (
    <section className="pin-places" aria-label={say`Pin places`}>
      <p role="status">
        {known === undefined ? (
          say`Choose a place, then tap it on the photo; tap every pad of it that you know.`
        ) : (
          <>
            {sayWith`Tap ${<b className="ref">{place}</b>} on the photo: ${say(known.words)}.`}
            {own.length > 0 && ` ${say(saidCount(own.length, "Pinned once.", "Pinned {0} times."))}`}
          </>
        )}
      </p>
      {missing.length > 0 && (
        <fieldset className="pin-next" aria-label={say`Asked for next`}>
          {missing.slice(0, OFFERED).map((one) => (
            <button type="button" key={one} aria-pressed={one === place} onClick={() => onPlace(one)}>
              {one}
            </button>
          ))}
        </fieldset>
      )}
      <SearchField label={say`Any other place`} choices={choicesOf(places)} value={place} onValue={onPlace} />
      {own.length > 0 && (
        <button
          type="button"
          className="small"
          onClick={() => picture.change((album) => withoutLastPin(album, place))}
        >
          {say`Take the last pin of ${place} off`}
        </button>
      )}
    </section>
  );
}

const choicesOf = (places: BenchView["places"]) =>
  places.map(({ place, words }) => ({ value: place, words: say(words) }));
