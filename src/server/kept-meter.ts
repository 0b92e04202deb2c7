/** The bench's meter setting, in a file beside the jobs. */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { KeepsSetting } from "../hookup/bench-meter.ts";
import { readMeterSetting } from "../instrument/meter-setting.ts";

export function keptMeter(dataDir: string): KeepsSetting {
  const path = join(dataDir, "meter.json");
  return {
    read: () => {
      try {
        const read = readMeterSetting(JSON.parse(readFileSync(path, "utf8")));
        if (read.ok) return read.value;
      } catch {
        // None was kept, or what was kept is no setting: then there is no meter until one is set.
      }
      return { kind: "none" };
    },
    write: (setting) => {
      mkdirSync(dataDir, { recursive: true });
      writeFileSync(path, `${JSON.stringify(setting)}\n`);
    },
  };
}

/** Kept as long as the program runs. */
export function unkeptMeter(): KeepsSetting {
  let kept: ReturnType<KeepsSetting["read"]> = { kind: "none" };
  return {
    read: () => kept,
    write: (setting) => {
      kept = setting;
    },
  };
}
