/** Reads a reading of a part that has not gone in yet. */
import { said } from "../messages/said.ts";
import type { Fields, Problems } from "../units/fields.ts";
import { quoted } from "../units/nearest.ts";
import type { IncomingEvent } from "./event.ts";
import { readReading } from "./parse-measure.ts";
import { COLD_MODES } from "./words.ts";

/** @param stamp - the fields that any event may carry, read already; their names in `stampFields` */
export function readIncoming(
  problems: Problems,
  event: Fields,
  stampFields: readonly string[],
  stamp: Pick<IncomingEvent, "id" | "at" | "who">,
): IncomingEvent {
  event.only([...stampFields, "part", "mode", "red", "black", "reading"], "incoming");
  event.require("part", "mode", "red", "black", "reading");
  const mode = event.word("mode", COLD_MODES) ?? "ohms";
  const named = (key: "part" | "red" | "black") => {
    const text = event.text(key) ?? "";
    if (text === "") event.complain(key, said`is empty`);
    return text;
  };
  const [part, red, black] = [named("part"), named("red"), named("black")];
  if (problems.first === null && red === black)
    event.complain("black", said`${quoted(black)} is where red is; a reading is between two pins`);
  return { do: "incoming", part, mode, red, black, reading: readReading(problems, event, mode), ...stamp };
}
