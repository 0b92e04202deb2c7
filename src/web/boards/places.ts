/** Every place of a board of one's own: its nets, then its pins. */
import { saidCount } from "../../messages/said.ts";
import type { OwnBoardView } from "../../wire/composer-view.ts";
import { kindWords } from "../kind-words.ts";
import { say } from "../say.ts";

export interface OwnPlace {
  readonly place: string;
  readonly words: string;
}

export function placesOf({ nets, parts }: OwnBoardView): readonly OwnPlace[] {
  return [
    ...nets.map(({ name, pins: count }) => ({
      place: name,
      words: say(saidCount(count, "net, {0} pin", "net, {0} pins")),
    })),
    ...parts.flatMap(({ ref, kind, pins }) =>
      pins.map(({ pin, net }) => ({ place: `${ref}.${pin}`, words: say`${kindWords(kind)}, on ${net}` })),
    ),
  ];
}
