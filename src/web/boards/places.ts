/** Every place of a board of one's own: its nets, then its pins. */
import type { OwnBoardView } from "../../wire/composer-view.ts";

export interface OwnPlace {
  readonly place: string;
  readonly words: string;
}

export function placesOf({ nets, parts }: OwnBoardView): readonly OwnPlace[] {
  return [
    ...nets.map(({ name, pins: count }) => ({ place: name, words: `net, ${count} pins` })),
    ...parts.flatMap(({ ref, kind, pins }) =>
      pins.map(({ pin, net }) => ({ place: `${ref}.${pin}`, words: `${kind}, on ${net}` })),
    ),
  ];
}
