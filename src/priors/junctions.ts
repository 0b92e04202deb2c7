import type { Part } from "../board/board.ts";
import type { Shape } from "./mode-shares.ts";

/** One thing inside a part that can fail: the junction's name in a fault's spelling, and its share of the part's failures. */
export interface JunctionShare {
  readonly junction: string | null;
  readonly shape: Shape;
  readonly share: number;
}

const whole = (shape: Shape): JunctionShare[] => [{ junction: null, shape, share: 1 }];
const named = (shape: Shape, weights: Readonly<Record<string, number>>): JunctionShare[] =>
  Object.entries(weights).map(([junction, share]) => ({ junction, shape, share }));
const equal = (shape: Shape, names: readonly string[], total: number): JunctionShare[] =>
  names.map((junction) => ({ junction, shape, share: total / names.length }));

/** Which capacitor it is where the board does not say: from its size. `common practice`. */
export function capacitorShape(part: Part): "electrolytic" | "film" | "ceramic" {
  const { type, farads, volts } = part.value;
  if (type === "electrolytic" || type === "film" || type === "ceramic") return type;
  if ((farads ?? 0) >= 4.7e-6) return "electrolytic";
  return (volts ?? 0) >= 200 && (farads ?? 0) >= 1e-8 ? "film" : "ceramic";
}

function diodeShape(part: Part): Shape {
  if (part.value.type === "signal") return "signal-diode";
  return part.value.type === "rectifier" ? "rectifier-diode" : "diode";
}

function bridgeJunctions(part: Part): JunctionShare[] {
  const legs = ["ac1", "ac2", "ac3"].filter((pin) => part.pins.has(pin));
  return equal(
    "rectifier-diode",
    legs.flatMap((leg) => [`${leg}plus`, `minus${leg}`]),
    1,
  );
}

const MODULE_CONTROL = ["vcc", "com"];
const MODULE_INPUTS = ["inup", "invp", "inwp", "inun", "invn", "inwn", "fault", "trip"];

/** Shares of a module's junctions `from memory`: the switches first, then the control side, then single inputs. */
function moduleJunctions(part: Part): JunctionShare[] {
  const switches = equal("switch", ["up", "vp", "wp", "un", "vn", "wn"], 0.72);
  const boots = ["vbu", "vbv", "vbw"].filter((pin) => part.pins.has(pin));
  const inputs = MODULE_INPUTS.filter((pin) => part.pins.has(pin));
  const control = MODULE_CONTROL.every((pin) => part.pins.has(pin));
  return [
    ...switches,
    ...(control ? named("chip-supply", { drive: 0.13 }) : []),
    ...(boots.length > 0 ? equal("bootstrap", boots, 0.08) : []),
    ...(inputs.length > 0 ? equal("chip-pin", inputs, 0.07) : []),
  ];
}

/** Supply first, then the pins, shared out evenly. `from memory`. */
function chipJunctions(part: Part, supplyPin: string, groundPin: string): JunctionShare[] {
  const floating = new Set((part.value.floating ?? []).flat());
  const pins = [...part.pins.keys()].filter(
    (pin) => pin !== supplyPin && pin !== groundPin && pin !== "supply" && !floating.has(pin),
  );
  const high = (part.value.floating ?? []).map(([pin]) => pin).filter((pin) => part.pins.has(pin));
  const supply = part.pins.has(supplyPin) ? 0.55 : 0;
  return [
    ...(supply > 0 ? named("chip-supply", { supply }) : []),
    ...(pins.length > 0 ? equal("chip-pin", pins, 0.27) : []),
    ...(pins.length > 0 && supply > 0
      ? equal(
          "chip-pin-to-supply",
          pins.map((pin) => `${pin}.supply`),
          0.06,
        )
      : []),
    ...(high.length > 0 ? equal("chip-pin", high, 0.12) : []),
  ];
}

/** Everything inside `part` that can fail, in the fault spelling's names; shares sum to about one. */
export function junctionsOf(part: Part): JunctionShare[] {
  switch (part.kind) {
    case "fuse":
      return whole("fuse");
    case "link":
      return whole("link");
    case "resistor":
      return whole("resistor");
    case "ntc":
    case "ptc":
      return whole("ntc-ptc");
    case "varistor":
      return whole("varistor");
    case "capacitor":
      return whole(capacitorShape(part));
    case "inductor":
      return whole("inductor");
    case "choke":
      return named("inductor", { w12: 0.5, w34: 0.5 });
    case "transformer":
      return equal("winding", Object.keys(part.value.windings ?? {}), 1);
    case "relay":
      return [...named("coil", { coil: 0.4 }), ...named("contact", { contact: 0.6 })];
    case "diode":
      return whole(diodeShape(part));
    case "zener":
      return whole("zener");
    case "led":
      return whole("led");
    case "bridge":
      return bridgeJunctions(part);
    case "bjt":
      return named("bjt-junction", { ce: 0.5, be: 0.25, bc: 0.25 });
    case "mosfet":
      return [...named("switch", { ds: 0.75 }), ...named("gate", { gs: 0.25 })];
    case "igbt":
      return [...named("switch", { ce: 0.78 }), ...named("gate", { ge: 0.22 })];
    case "thyristor":
    case "triac":
      return whole("thyristor");
    case "module":
      return moduleJunctions(part);
    case "opto":
      return [...named("opto-led", { led: 0.4 }), ...named("opto-output", { out: 0.6 })];
    case "regulator":
      return [...named("regulator-pass", { inout: 0.55 }), ...named("regulator-output", { outgnd: 0.45 })];
    case "switcher":
      return [
        ...named("switch", { ds: 0.7 }),
        ...named("chip-supply", { vcc: 0.2 }),
        ...named("chip-pin", { fb: 0.1 }),
      ];
    case "shuntref":
      return named("reference", { ka: 1 });
    case "controller":
      return chipJunctions(part, "vdd", "gnd");
    case "ic":
      return chipJunctions(part, "vcc", "gnd");
    case "motor":
      return whole("motor");
  }
}
