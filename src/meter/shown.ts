/** What a meter shows of a circuit, and whether a technician would see two readings as one. */
import { OTHER_METERS, onTheBoard, withoutTheBoard } from "./other-meters.ts";
import type { ColdCheck, MeterReading } from "./prediction.ts";
import type { Probed } from "./probing.ts";
import { type Range, voltsAt } from "./ranges.ts";
import type { MeterSettings } from "./settings.ts";
import type { Spread } from "./spread.ts";

/** Share of the spread below which a fault is called silent. */
export const SILENT_SHARE = 0.1;
/** Readings that both show OL are one reading when both are this many spreads and this share above the limit. */
const FAR_OVER = { spreads: 5, share: 0.1 } as const;

/** What the meter shows for a settled or climbing circuit, with its spread. */
export function readingOf(
  check: ColdCheck,
  meter: MeterSettings,
  probed: Pick<Probed, "raw" | "range">,
  spread: Spread,
): MeterReading {
  const { raw, range } = probed;
  const over = raw > range.limit;
  const shown =
    check.mode === "continuity"
      ? raw < meter.beepOhms
        ? ("beep" as const)
        : ("silent" as const)
      : over
        ? ("OL" as const)
        : raw;
  const { centre, common, alike, restsOn } = spread;
  return { solved: true, raw, shown, centre, spread: spread.spread, common, alike, restsOn };
}

/** Volts that the probes may move before the reading moves by a tenth of its spread. */
export function silentVolts(
  { raw, spread }: MeterReading,
  { range, volts }: Probed,
  boardOhms: number,
): number {
  if (range.reads === "volts") return SILENT_SHARE * spread;
  const share = Math.exp((SILENT_SHARE * spread) / (raw + OTHER_METERS.leadOhms));
  const insulated = onTheBoard(raw, boardOhms);
  const higher = withoutTheBoard(insulated * share, boardOhms);
  const fall = volts - voltsAt(range, withoutTheBoard(insulated / share, boardOhms));
  return higher === Number.POSITIVE_INFINITY ? fall : Math.min(fall, voltsAt(range, higher) - volts);
}

/**
 * Would the technician see another reading? Volts and farads: words as they stand, numbers by the spread, since a last digit is
 * no answer of its own; two readings far over the same range are one OL. Ohms by their logarithm, and beyond the insulation of the
 * board all the same.
 */
export function differ(
  before: MeterReading,
  after: MeterReading,
  range: Range | null,
  boardOhms: number,
): boolean {
  if (range !== null && farOver(before, range) && farOver(after, range)) return false;
  if (range === null || range.reads === "volts") {
    const numbers = typeof before.shown === "number" && typeof after.shown === "number";
    if (!numbers && before.shown !== after.shown) return true;
    return Math.abs(after.raw - before.raw) > SILENT_SHARE * before.spread;
  }
  const lead = OTHER_METERS.leadOhms;
  const moved = Math.log(
    (onTheBoard(after.raw, boardOhms) + lead) / (onTheBoard(before.raw, boardOhms) + lead),
  );
  return Math.abs(moved) > (SILENT_SHARE * before.spread) / (before.raw + lead);
}

/** Is the reading so far above the range that the display says OL whatever the parts' tolerances do? */
function farOver(reading: MeterReading, { limit }: Range): boolean {
  if (reading.shown !== "OL") return false;
  return (
    reading.raw > limit * (1 + FAR_OVER.share) && reading.raw > limit + FAR_OVER.spreads * reading.spread
  );
}

/**
 * A reading that one fault more has moved, its spread carried over: tolerances are shares, so a reading that shrinks takes its
 * spread with it. Good enough to tell outcomes apart, which is done by several spreads; not to judge a reading by.
 */
export function movedReading(
  check: ColdCheck,
  meter: MeterSettings,
  before: MeterReading,
  range: Range,
  raw: number,
  boardOhms: number,
): MeterReading {
  const share = range.reads === "ohms" ? raw / before.raw : Math.min(1, raw / before.raw);
  const carried = Number.isFinite(share) ? Math.abs(share) : 1;
  const centre =
    range.reads === "volts"
      ? raw
      : (onTheBoard(raw, boardOhms) * before.centre) / onTheBoard(before.raw, boardOhms);
  const spread = {
    centre,
    spread: before.spread * carried,
    common: before.common * carried,
    alike: before.alike * carried,
    restsOn: before.restsOn,
  };
  return readingOf(check, meter, { raw, range }, spread);
}
