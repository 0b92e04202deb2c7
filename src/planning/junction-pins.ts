import type { Part } from "../board/board.ts";
import { supplyPin } from "../board/kinds.ts";

/** Pins across which one junction of a part is measured, the usual forward direction first. */
type PinPair = readonly [string, string];

const BY_KIND: Readonly<Partial<Record<Part["kind"], Readonly<Record<string, PinPair>>>>> = {
  choke: { w12: ["1", "2"], w34: ["3", "4"] },
  relay: { coil: ["coil1", "coil2"], contact: ["com", "no"] },
  bridge: {
    ac1plus: ["ac1", "plus"],
    ac2plus: ["ac2", "plus"],
    ac3plus: ["ac3", "plus"],
    minusac1: ["minus", "ac1"],
    minusac2: ["minus", "ac2"],
    minusac3: ["minus", "ac3"],
  },
  bjt: { be: ["b", "e"], bc: ["b", "c"], ce: ["c", "e"] },
  mosfet: { ds: ["s", "d"], gs: ["g", "s"] },
  igbt: { ce: ["e", "c"], ge: ["g", "e"] },
  opto: { led: ["a", "k"], out: ["c", "e"] },
  regulator: { inout: ["out", "in"], outgnd: ["out", "gnd"] },
  switcher: { ds: ["s", "d"], vcc: ["vcc", "s"], fb: ["fb", "s"] },
  shuntref: { ka: ["a", "k"] },
  module: {
    up: ["u", "p"],
    vp: ["v", "p"],
    wp: ["w", "p"],
    un: ["nu", "u"],
    vn: ["nv", "v"],
    wn: ["nw", "w"],
    vbu: ["u", "vbu"],
    vbv: ["v", "vbv"],
    vbw: ["w", "vbw"],
    drive: ["com", "vcc"],
  },
};

/**
 * The two pins across a junction, forward direction of its diode (where it has one) first; null where the part has no such
 * pins. `junction` null means the part's only one.
 */
export function junctionPins(part: Part, junction: string | null): PinPair | null {
  const pair = rawPair(part, junction);
  if (pair === null) return null;
  const pins = pair.map((pin) => (part.pins.has(pin) ? pin : standIn(part, pin)));
  const [first, second] = pins;
  return first === undefined || second === undefined ? null : [first, second];
}

/** A module's single `n` stands for `nu nv nw`. */
function standIn(part: Part, pin: string): string | undefined {
  return part.kind === "module" && /^n[uvw]$/.test(pin) && part.pins.has("n") ? "n" : undefined;
}

function rawPair(part: Part, junction: string | null): PinPair | null {
  if (part.kind === "controller" || part.kind === "ic") return chipPair(part, part.kind, junction);
  if (part.kind === "transformer")
    return junction === null ? null : (part.value.windings?.[junction]?.pins ?? null);
  const listed = BY_KIND[part.kind];
  if (listed !== undefined) {
    const named = junction === null ? Object.values(listed)[0] : listed[junction];
    if (named !== undefined) return named;
    return part.kind === "module" && junction !== null ? [junction, "com"] : null;
  }
  const [first, second] =
    part.kind === "thyristor" ? ["a", "k"] : part.kind === "triac" ? ["1", "2"] : [...part.pins.keys()];
  return first === undefined || second === undefined ? null : [first, second];
}

function chipPair(part: Part, kind: "controller" | "ic", junction: string | null): PinPair {
  const supply = supplyPin(kind);
  if (junction === null || junction === "supply") return ["gnd", supply];
  if (junction.endsWith(".supply")) return [junction.slice(0, -".supply".length), supply];
  const floating = (part.value.floating ?? []).find(([pin]) => pin === junction);
  return [floating?.[1] ?? "gnd", junction];
}
