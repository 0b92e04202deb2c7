/** What a technician types off the meter: `0.47 .47 470m OL beep 10k 4k7 22u zero junction high climbing`. */
import type { MeasureMode, Reading } from "../../bench/event.ts";
import type { Parsed } from "../../units/outcome.ts";
import { parseReadingText } from "../../units/reading-text.ts";

export interface TypedReading {
  readonly reading: Reading;
  readonly climbing: boolean;
}

/** A line of readings, in the order of the checks; `climbing` belongs to the reading before it, or stands for one. */
export function parseTypedReadings(
  words: readonly string[],
  mode: MeasureMode,
): Parsed<readonly TypedReading[]> {
  const readings: TypedReading[] = [];
  for (const [at, word] of words.entries()) {
    if (word.toLowerCase() === "climbing") {
      // Alone it says what the eye saw: no short and no junction, and on its way up.
      const before = at === 0 ? null : (readings.pop() ?? null);
      readings.push({ reading: before?.reading ?? "high", climbing: true });
      continue;
    }
    const reading = parseReadingText(word, mode);
    if (!reading.ok) return reading;
    readings.push({ reading: reading.value, climbing: false });
  }
  return { ok: true, value: readings };
}
