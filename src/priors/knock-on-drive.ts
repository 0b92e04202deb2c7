import type { Part } from "../board/board.ts";
import { said } from "../messages/said.ts";
import { type CircuitView, netsOf, type SwitchSite } from "./circuit-view.ts";
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

/** What hangs on a switch's gate, and the chips, optos and transistors that drive it through that. */
function gateParts(
  view: CircuitView,
  found: SwitchSite,
): { resistors: Part[]; clamps: Part[]; drivers: Part[] } {
  const gate = view.roles.gates.find((one) => one.switch === found.part);
  if (gate === undefined) return { resistors: [], clamps: [], drivers: [] };
  const known = (refs: readonly string[]): Part[] => refs.flatMap((ref) => view.board.parts.get(ref) ?? []);
  const series = known(gate.series);
  const beyond = series.flatMap(netsOf).filter((net) => net !== gate.net && net !== view.board.zero);
  const near = [gate.net, ...beyond].flatMap((net) => view.on(net)).filter((part) => part.ref !== found.part);
  return {
    resistors: ofKind(series, "resistor"),
    clamps: known(gate.clamps),
    drivers: [...new Set(ofKind(near, "ic", "opto", "bjt"))],
  };
}

/** What a dead driver shows: its supply and the pins on the gate's side. */
function driverSites(view: CircuitView, found: SwitchSite, driver: Part): Failing[] {
  if (driver.kind === "opto") return [short(`${driver.ref}.out`)];
  if (driver.kind === "bjt") return [short(`${driver.ref}.ce`)];
  const near = new Set([found.gate ?? "", ...gateParts(view, found).resistors.flatMap(netsOf)]);
  const pins = [...driver.pins]
    .filter(([, net]) => near.has(net))
    .map(([name]) => short(`${driver.ref}.${name}`));
  return [short(`${driver.ref}.supply`), ...pins];
}

const allSwitches = (view: CircuitView): readonly SwitchSite[] => [
  ...view.motorSwitches,
  ...view.otherSwitches,
  ...view.supplySwitches,
];

/** Gates and drivers: the bus breaks through to the gate, and a dead driver takes its switch. */
export const DRIVE_RULES: readonly KnockOnRule[] = [
  rule(
    "switch-drives-gate-parts",
    0.5,
    said`bus voltage breaks through to the gate: resistor open, clamp shorted`,
    (view) =>
      allSwitches(view).flatMap((found) => {
        const { resistors, clamps } = gateParts(view, found);
        return every([short(found.fault)], [...opensOf(resistors), ...shortsOf(clamps)]);
      }),
  ),
  rule("switch-kills-gate", 0.8, said`a shorted switch has lost its gate too`, (view) =>
    allSwitches(view)
      .filter((found) => found.gate !== null)
      .map((found) =>
        pair(
          short(found.fault),
          short(found.fault.endsWith(".ce") ? `${found.part}.ge` : `${found.part}.gs`),
        ),
      ),
  ),
  rule("switch-kills-driver", 0.25, said`through the gate into the driver`, (view) =>
    allSwitches(view).flatMap((found) =>
      gateParts(view, found).drivers.flatMap((driver) =>
        every([short(found.fault)], driverSites(view, found, driver)),
      ),
    ),
  ),
  rule(
    "module-switch-kills-drive",
    0.12,
    said`a shorted switch inside a module takes the driver beside it`,
    (view) =>
      view.motorSwitches
        .filter((found) => found.gate === null)
        .map((found) => pair(short(found.fault), short(`${found.part}.drive`))),
  ),
  rule("driver-kills-switch", 0.3, said`a dead driver leaves a gate half on: its switch shorts`, (view) =>
    view.workingSwitches.flatMap((found) =>
      gateParts(view, found).drivers.flatMap((driver) =>
        every(driverSites(view, found, driver), [short(found.fault)], driver.kind === "ic" ? 0.4 : 1),
      ),
    ),
  ),
  rule(
    "dry-drive-capacitor",
    0.02,
    said`a dry bootstrap or drive-rail capacitor lets a switch run linear`,
    (view) =>
      every(
        view
          .inGroups("drive")
          .filter((part) => part.kind === "capacitor")
          .flatMap((part): Failing[] => [
            { site: part.ref, mode: "drift" },
            { site: part.ref, mode: "open" },
          ]),
        view.workingSwitches.map((found) => short(found.fault)),
      ),
  ),
  rule(
    "drive-to-controller",
    0.15,
    said`15 V or bus voltage reaches the controller pin on the same net`,
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
