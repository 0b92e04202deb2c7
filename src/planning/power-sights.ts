import type { PowerEvent } from "../bench/event.ts";
import { said } from "../messages/said.ts";
import { semicolonList } from "./faults-in-words.ts";

/** What each sight at power-up means before any fault is named. Common practice: the rungs of a limited power-up. */
const THROUGH_A_LAMP: Readonly<Record<string, string>> = {
  runs: said`it starts through the lamp: on to the mains`,
  "lamp-dark": said`after a flash: no hard short, on to the mains; dark at once with no bus volts: the feed is open`,
  "lamp-dim": said`a load or a leak, no hard short`,
  "lamp-pulsing": said`the small supply ticks: a rail is loaded, or the lamp is too small`,
  "lamp-bright": said`if it stays: a hard short, switch off and go back to the cold checks`,
  quiet: said`nothing seen: read the bus at the clips`,
};
const ON_THE_MAINS: Readonly<Record<string, string>> = {
  runs: said`whole as far as it shows: load it`,
  quiet: said`no sign of life: back to the cold checks`,
};
const UNDER_LOAD: Readonly<Record<string, string>> = {
  runs: said`it holds for as long as it was run`,
  quiet: said`it stopped by itself: weak once it is warm or loaded`,
  trip: said`it trips once it is loaded: weak, or a leak that cooks`,
};
const EITHER: Readonly<Record<string, string>> = {
  "fuse-blew": said`a short is left: back to the cold checks, no new fuse before it is found`,
  trip: said`a short, or a leak to earth: back to the cold checks`,
  smoke: said`switch off at once and look for what burnt`,
  limiting: said`the supply is at its limit: switch off, find the load`,
};

/**
 * The meaning of a sight at power-up, with the faults it speaks for; null where it tells little.
 * @param sight - as the log spells it
 * @param means - of the faults, as for any other outcome
 */
export function sightMeans(
  { feed, load }: Pick<PowerEvent, "feed" | "load">,
  sight: string | null,
  means: string | null,
): string | null {
  const onMains = load === undefined ? ON_THE_MAINS : UNDER_LOAD;
  const rung = feed === "lamp" ? THROUGH_A_LAMP : feed === "mains" ? onMains : {};
  const trade = sight === null ? undefined : (rung[sight] ?? EITHER[sight]);
  if (trade === undefined) return means;
  return means === null ? trade : semicolonList([trade, means]);
}
