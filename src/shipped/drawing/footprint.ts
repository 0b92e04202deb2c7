/** What a part looks like on the drawn board: its place and its legs, in millimetres, seen from the parts' side. */
import type { Part } from "../../board/board.ts";
import {
  axialBody,
  boxBody,
  canBody,
  chipBody,
  connectorBody,
  discBody,
  flatBody,
  legsIn,
  squareBody,
  toroidBody,
} from "./bodies.ts";
import type { Footprint } from "./footprint-shape.ts";

/** From this rating on a switch has a package that is screwed to a heatsink, volts (from memory). */
const POWER_VOLTS = 200;
/** From here on a resistor is no chip any more, watts (common practice: 1206 takes a quarter). */
const LEADED_WATTS = 0.5;
/** From here on a diode has leads, amperes (from memory). */
const LEADED_AMPS = 1;
/** A controller of more pins has them on four sides. */
const TWO_ROWS_OF_PINS = 12;

/** The footprint of a part, by its kind and rating. */
export function footprintOf(part: Part): Footprint {
  const pins = [...part.pins.keys()];
  if (part.kind === "motor" || part.plugged) return connectorBody(pins);
  switch (part.kind) {
    case "capacitor":
      return capacitor(part, pins);
    case "resistor":
      return (part.value.watts ?? 0) > LEADED_WATTS
        ? axialBody(pins, 12, 4.6, "#d9d5c7")
        : chipBody(pins, "#17191a", "");
    case "diode":
      return (part.value.amps ?? 0) >= LEADED_AMPS
        ? axialBody(pins, 8, 4.2, "#1b1d1f", { band: "#c9cdd0" })
        : chipBody(pins, "#22262a", "band");
    case "zener":
      return chipBody(pins, "#8d3b2c", "band");
    case "led":
      return chipBody(pins, "#e8ecd9", "dot");
    case "fuse":
      return axialBody(pins, 19, 5.4, "#dfe7ea", { caps: "#b9bec2", glass: true });
    case "link":
      return axialBody(pins, 8, 1, "#c3c8ca");
    case "inductor":
      return isPower(part) ? toroidBody(pins, 24, "#7b5a2e") : axialBody(pins, 9, 4, "#3f6b46");
    case "choke":
      return toroidBody(pins, 22, "#2c4636");
    case "ntc":
      return part.stage === "sensor" ? chipBody(pins, "#46402f", "") : discBody(pins, 15, "#2f3a2c");
    case "ptc":
      return discBody(pins, 13, "#41506b");
    case "varistor":
      return discBody(pins, 14, "#26517c");
    case "transformer":
      return boxBody(pins, 26, 24, "#c8a24a", "core");
    case "relay":
      return boxBody(pins, 19, 15.5, "#23405e");
    case "bridge":
      return legsIn(pins, 24, 5, 6.2);
    case "regulator":
      return legsIn(pins, 10.4, 4.6, 2.8);
    case "igbt":
    case "mosfet":
    case "bjt":
    case "thyristor":
    case "triac":
      return isPower(part) ? legsIn(pins, 16, 5.2, 5.4) : chipBody(pins, "#1a1c1e", "");
    case "shuntref":
      return chipBody(pins, "#1a1c1e", "");
    case "opto":
      return flatBody(
        ["a", "k", "e", "c"].filter((pin) => part.pins.has(pin)),
        { body: 6.2 },
      );
    case "switcher":
      return flatBody(pins, { body: 6.4 });
    case "module":
      return module(pins);
    case "controller":
      return pins.length > TWO_ROWS_OF_PINS ? squareBody(pins) : flatBody(pins, { body: 5 });
    case "ic":
      return flatBody(pins, { body: 4.2 });
  }
}

function isPower({ value, kind }: Part): boolean {
  return (value.volts ?? 0) >= POWER_VOLTS || (kind === "inductor" && (value.henries ?? 0) < 5e-3);
}

/** Stored energy tells the size of an electrolytic: volume goes with it (from memory). */
function capacitor({ value }: Part, pins: readonly string[]): Footprint {
  const { farads = 1e-7, volts = 50, type } = value;
  if (type === "electrolytic") {
    const joules = 0.5 * farads * volts ** 2;
    return canBody(pins, Math.min(30, Math.max(5, 10 * (joules / 0.15) ** 0.2)));
  }
  if (type === "film") return boxBody(pins, 17, 8, "#b8442f");
  return volts >= POWER_VOLTS ? discBody(pins, 8, "#3c6f9c") : chipBody(pins, "#a98a5c", "");
}

/** Power pins along one long side, control pins along the other. */
const POWER_PINS: ReadonlySet<string> = new Set(["p", "n", "nu", "nv", "nw", "u", "v", "w"]);

function module(pins: readonly string[]): Footprint {
  return flatBody(pins, {
    body: 22,
    rows: [pins.filter((pin) => !POWER_PINS.has(pin)), pins.filter((pin) => POWER_PINS.has(pin))],
  });
}
