/** What to feed the board through at first, limited to what this bench has. */
interface FirstFeed {
  readonly feed: "lamp" | "mains";
  /** lamp only */
  readonly watts: number | null;
  readonly advice: string;
}

/** Share of its watts that a series lamp passes to a constant-power load at most, computed. */
const LAMP_SHARE = 0.36;
/** What the board itself draws at idle, small supply running: 10-20 W for such boards, common practice. */
const IDLE_WATTS = 20;

/** Lamp watts named by the bench's equipment (`lamp-100`), smallest first. */
export function lampsOf(equipment: readonly string[]): readonly number[] {
  return equipment
    .map((item) => /^lamp-(\d+)$/.exec(item))
    .flatMap((match) => (match === null ? [] : [Number(match[1])]))
    .filter((watts) => watts > 0)
    .sort((a, b) => a - b);
}

/**
 * The smallest lamp that still carries the board's idle load, else the largest there is; mains directly where the bench has none.
 * @param equipment - the job's list; nothing outside it is proposed
 */
export function firstFeed(equipment: readonly string[]): FirstFeed {
  const lamps = lampsOf(equipment);
  const enough = lamps.find((watts) => watts * LAMP_SHARE >= IDLE_WATTS);
  const watts = enough ?? lamps[lamps.length - 1];
  if (watts === undefined) {
    return {
      feed: "mains",
      watts: null,
      advice:
        "This bench lists no series lamp: a 100 W filament lamp in series would save parts if a short is left. Without one, power up only through the right fuse and a breaker you can reach.",
    };
  }
  const carries = Math.round(watts * LAMP_SHARE);
  const small =
    enough === undefined ? " That is little: slow pulsing may only mean that the lamp is too small." : "";
  return {
    feed: "lamp",
    watts,
    advice: `Series lamp ${watts} W (filament or halogen, never LED): it passes at most about ${carries} W to the board. Bright and staying so: a short. A flash, then dark: normal.${small}`,
  };
}
