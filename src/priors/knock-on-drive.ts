import type { Part } from "../board/board.ts";
import { type CircuitView, netsOf, type PowerSwitch } from "./circuit-view.ts";
import {
  every,
  type Failing,
  type KnockOnRule,
  ofKind,
  opensOf,
  pair,
  rule,
  short,
  shortsOf,
} from "./knock-on-rule.ts";

/** Resistors and clamps on a switch's gate net. */
function gateParts(
  view: CircuitView,
  found: PowerSwitch,
): { resistors: Part[]; clamps: Part[]; drivers: Part[] } {
  if (found.gate === null) return { resistors: [], clamps: [], drivers: [] };
  const here = view.on(found.gate).filter((part) => part !== found.part);
  const resistors = here.filter((part) => part.kind === "resistor" && (part.value.ohms ?? 22) < 1000);
  const beyond = resistors.flatMap(netsOf).filter((net) => net !== found.gate && net !== view.board.zero);
  const far = beyond.flatMap((net) => view.on(net));
  const drivers = ofKind([...here, ...far], "ic", "opto", "bjt");
  return { resistors, clamps: ofKind(here, "zener", "diode"), drivers: [...new Set(drivers)] };
}

/** What a dead driver shows: its supply and the pins on the gate's side. */
function driverSites(view: CircuitView, found: PowerSwitch, driver: Part): Failing[] {
  if (driver.kind === "opto") return [short(`${driver.ref}.out`)];
  if (driver.kind === "bjt") return [short(`${driver.ref}.ce`)];
  const near = new Set([found.gate ?? "", ...gateParts(view, found).resistors.flatMap(netsOf)]);
  const pins = [...driver.pins]
    .filter(([, net]) => near.has(net))
    .map(([name]) => short(`${driver.ref}.${name}`));
  return [short(`${driver.ref}.supply`), ...pins];
}

const allSwitches = (view: CircuitView): readonly PowerSwitch[] => [
  ...view.motorSwitches,
  ...view.otherSwitches,
  ...view.supplySwitches,
];

/** Gates and drivers: the bus breaks through to the gate, and a dead driver takes its switch. */
export const DRIVE_RULES: readonly KnockOnRule[] = [
  rule(
    "switch-drives-gate-parts",
    0.5,
    "bus voltage breaks through to the gate: resistor open, clamp shorted",
    (view) =>
      allSwitches(view).flatMap((found) => {
        const { resistors, clamps } = gateParts(view, found);
        return every([short(found.site)], [...opensOf(resistors), ...shortsOf(clamps)]);
      }),
  ),
  rule("switch-kills-gate", 0.8, "a shorted switch has lost its gate too", (view) =>
    allSwitches(view)
      .filter((found) => found.gate !== null)
      .map((found) =>
        pair(short(found.site), short(`${found.part.ref}.${found.part.kind === "igbt" ? "ge" : "gs"}`)),
      ),
  ),
  rule("switch-kills-driver", 0.25, "through the gate into the driver", (view) =>
    allSwitches(view).flatMap((found) =>
      gateParts(view, found).drivers.flatMap((driver) =>
        every([short(found.site)], driverSites(view, found, driver)),
      ),
    ),
  ),
  rule(
    "module-switch-kills-drive",
    0.12,
    "a shorted switch inside a module takes the driver beside it",
    (view) =>
      view.motorSwitches
        .filter((found) => found.gate === null)
        .map((found) => pair(short(found.site), short(`${found.part.ref}.drive`))),
  ),
  rule("driver-kills-switch", 0.3, "a dead driver leaves a gate half on: its switch shorts", (view) =>
    view.motorSwitches.flatMap((found) =>
      gateParts(view, found).drivers.flatMap((driver) =>
        every(driverSites(view, found, driver), [short(found.site)], driver.kind === "ic" ? 0.4 : 1),
      ),
    ),
  ),
  rule(
    "dry-drive-capacitor",
    0.06,
    "a dry bootstrap or drive-rail capacitor lets a switch run linear",
    (view) =>
      every(
        view
          .inGroups("drive")
          .filter((part) => part.kind === "capacitor")
          .flatMap((part): Failing[] => [
            { site: part.ref, mode: "drift" },
            { site: part.ref, mode: "open" },
          ]),
        view.motorSwitches.map((found) => short(found.site)),
      ),
  ),
  rule(
    "drive-to-controller",
    0.15,
    "15 V or bus voltage reaches the controller pin on the same net",
    (view) =>
      view.inGroups("inverter", "drive", "logic", "output").flatMap((chip) => {
        if (chip.kind !== "ic" && chip.kind !== "module") return [];
        const from = chip.kind === "module" ? short(`${chip.ref}.drive`) : short(`${chip.ref}.supply`);
        return controllerPinsNear(view, chip).map((to) => pair(from, to));
      }),
  ),
];

/** Controller pins on a chip's nets, directly or through one small resistor. */
function controllerPinsNear(view: CircuitView, chip: Part): Failing[] {
  const rails = new Set([view.board.zero, ...view.board.rails.map((rail) => rail.net)]);
  const own = netsOf(chip).filter((net) => !rails.has(net));
  const beyond = own.flatMap((net) =>
    view
      .on(net)
      .filter((part) => part.kind === "resistor" && (part.value.ohms ?? 0) <= 1000)
      .flatMap(netsOf),
  );
  const near = new Set([...own, ...beyond].filter((net) => !rails.has(net)));
  return [...view.board.parts.values()]
    .filter((part) => part.kind === "controller")
    .flatMap((part) =>
      [...part.pins]
        .filter(([name, net]) => name !== "vdd" && name !== "gnd" && near.has(net))
        .map(([name]) => short(`${part.ref}.${name}`)),
    );
}
