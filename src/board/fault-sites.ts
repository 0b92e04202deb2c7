/** Where a part can fail and how: the junction names and modes of `faultwright-board/1`. */
import type { Part } from "./board.ts";
import type { FaultMode } from "./fault.ts";
import { MODULE_INPUTS, supplyPin } from "./kinds.ts";

/** One junction (or winding, coil, contact, pin) of a part and the modes it can take. */
export interface FaultSite {
  /** null where the part has only one */
  readonly junction: string | null;
  readonly modes: readonly FaultMode[];
  /** what the value behind `@` of a `drift` is, or null where the site cannot drift */
  readonly drifts: "ohms" | "farads" | null;
}

const FIXED: readonly FaultMode[] = ["short", "leaky", "open"];
const DRIFTING: readonly FaultMode[] = [...FIXED, "drift"];

function fixed(junction: string | null): FaultSite {
  return { junction, modes: FIXED, drifts: null };
}

function drifting(junction: string | null, drifts: "ohms" | "farads" = "ohms"): FaultSite {
  return { junction, modes: DRIFTING, drifts };
}

function moduleSites(part: Part): readonly FaultSite[] {
  const switches = ["up", "vp", "wp", "un", "vn", "wn"];
  const high = ["vbu", "vbv", "vbw"].filter((pin) => part.pins.has(pin));
  const drive = part.pins.has("vcc") && part.pins.has("com") ? ["drive"] : [];
  const inputs = MODULE_INPUTS.filter((pin) => part.pins.has(pin));
  return [...switches, ...high, ...drive, ...inputs].map(fixed);
}

function chipSites(part: Part, kind: "controller" | "ic"): readonly FaultSite[] {
  const floating = new Set((part.value.floating ?? []).flat());
  const sites = [fixed("supply")];
  for (const pin of part.pins.keys()) {
    // A pin that bears the junction's own name cannot be told from it, so `supply` means the supply.
    if (pin === supplyPin(kind) || pin === "gnd" || pin === "supply") continue;
    sites.push(fixed(pin));
    if (!floating.has(pin)) sites.push(fixed(`${pin}.supply`));
  }
  return sites;
}

/** The sites of one part, in the format's order. */
export function faultSites(part: Part): readonly FaultSite[] {
  switch (part.kind) {
    case "resistor":
    case "ntc":
    case "ptc":
    case "inductor":
    case "motor":
      return [drifting(null)];
    case "capacitor":
      return [drifting(null, "farads")];
    case "choke":
      return [drifting("w12"), drifting("w34")];
    case "transformer":
      return Object.keys(part.value.windings ?? {}).map((name) => drifting(name));
    case "relay":
      return [drifting("coil"), fixed("contact")];
    case "bridge":
      return [
        "ac1plus",
        "ac2plus",
        "minusac1",
        "minusac2",
        ...(part.pins.has("ac3") ? ["ac3plus", "minusac3"] : []),
      ].map(fixed);
    case "bjt":
      return ["be", "bc", "ce"].map(fixed);
    case "mosfet":
      return ["ds", "gs"].map(fixed);
    case "igbt":
      return ["ce", "ge"].map(fixed);
    case "module":
      return moduleSites(part);
    case "opto":
      return ["led", "out"].map(fixed);
    case "regulator":
      return ["inout", "outgnd"].map(fixed);
    case "switcher":
      return ["ds", "vcc", "fb"].map(fixed);
    case "shuntref":
      return [fixed("ka")];
    case "controller":
    case "ic":
      return chipSites(part, part.kind);
    default:
      return [fixed(null)];
  }
}
