/** What the terminal says of a board that a log leaves powered, beside its readings. */
import type { LiveCheck } from "../live/live-reading.ts";
import type { LiveState } from "../live/live-state.ts";
import type { ColdCheck } from "../meter/prediction.ts";

export function isLiveCheck(check: ColdCheck | LiveCheck): check is LiveCheck {
  return (
    check.mode === "dcv" || check.mode === "acv" || check.mode === "amps" || check.mode === "temperature"
  );
}

/** What a script is told of the powered board beside the readings. */
export function powerAnswer(live: LiveState): object {
  return {
    observed: live.observed,
    opened: live.opened,
    supply: live.supply.mode,
    rails: Object.fromEntries(live.rails.map((rail) => [rail.name, rail.volts])),
    controllers: [...live.alive],
    relays: [...live.relaysIn],
    lights: Object.fromEntries(live.lights),
    fans: Object.fromEntries(live.fans),
  };
}

/** The same for a person. */
export function powerText(live: LiveState): string {
  const rails = live.rails.map((rail) => `${rail.name} ${rail.volts.toFixed(2)} V`).join(", ");
  const lines = [
    `seen: ${live.observed.join(" ")}`,
    ...(live.opened.length > 0 ? [`opened by power: ${live.opened.join(" ")}`] : []),
    ...(live.supply.mode === "none" ? [] : [`small supply: ${live.supply.mode} (${live.supply.why})`]),
    ...(rails === "" ? [] : [`rails: ${rails}`]),
  ];
  return `${lines.join("\n")}\n`;
}
