/** What a meter shows of a circuit, and whether a technician would see two readings as one. */
import type { ColdCheck, MeterReading } from "./prediction.ts";
import type { Probed } from "./probing.ts";
import type { Range } from "./ranges.ts";
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
  return { solved: true, raw, shown, spread: spread.spread, common: spread.common };
}

/** The spread as volts at the probes. */
export function spreadVolts({ spread }: MeterReading, { range, volts }: Probed): number {
  if (range.reads === "volts") return spread;
  return (spread * (range.openVolts - volts) ** 2) / (range.ohms * range.openVolts);
}

/**
 * Would the technician see another reading? Words as they stand; numbers by the spread, since a last digit is no answer of its
 * own. Two readings far over the same range are one OL.
 */
export function differ(before: MeterReading, after: MeterReading, range: Range | null): boolean {
  if (range !== null && farOver(before, range) && farOver(after, range)) return false;
  const numbers = typeof before.shown === "number" && typeof after.shown === "number";
  if (!numbers && before.shown !== after.shown) return true;
  return Math.abs(after.raw - before.raw) > SILENT_SHARE * before.spread;
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
): MeterReading {
  const share = range.reads === "ohms" ? raw / before.raw : Math.min(1, raw / before.raw);
  const carried = Number.isFinite(share) ? Math.abs(share) : 1;
  const spread = { spread: before.spread * carried, common: before.common * carried };
  return readingOf(check, meter, { raw, range }, spread);
}
