/** Heat that a part makes, by the figures of its data sheet. */
import type { Command } from "commander";
import { currentsAtLoad, type LoadCurrents, moduleHeat } from "../../parts/cooling/board-load.ts";
import { bridgeWatts, chopperWatts, legWatts } from "../../parts/cooling/losses.ts";
import { sinkWanted } from "../../parts/cooling/thermal-chain.ts";
import type { Parsed } from "../../units/outcome.ts";
import { figures, type Told } from "../told.ts";

type Answer = (made: () => Parsed<Told>, json: boolean) => void;
type Options = Readonly<Record<string, string>> & { readonly json?: true };

/** Typical figures of a data sheet make typical heat. */
const TYPICAL = "typical figures make typical heat, not the worst";
const amperes = (figure: number) => `${Number(figure.toPrecision(3))} A`;
const watts = (figure: number) => `${Number(figure.toPrecision(3))} W`;

export function addHeat(cool: Command, answer: Answer): void {
  const add = (name: string, description: string, made: (options: Options) => Parsed<Told>): Command =>
    cool
      .command(name)
      .description(description)
      .option("--json", "one JSON object for a script")
      .action((options: Options) => answer(() => made(options), options.json === true));
  atLoad(add("bridge", "heat of a single-phase bridge", bridge))
    .requiredOption("--volts <volts>", "threshold of one junction")
    .requiredOption("--ohms <ohms>", "its slope resistance")
    .option("--amps <amps>", "direct current")
    .option(
      "--shape <ratio>",
      "effective over mean current: 1.6 to 2.5 behind a capacitor (2), 1.11 before a boost",
    );
  switching(add("chopper", "heat of a boost switch or a brake", chopper))
    .requiredOption("--amps <amps>", "current")
    .requiredOption("--bus <volts>", "that it switches")
    .requiredOption("--duty <share>", "share of the time that it conducts, 0 to 1");
  legOptions(add("leg", "heat of one switch of a three-phase leg, and of the diode across it", leg));
  legOptions(add("module", "heat and junctions of a module of six switches and their diodes", module))
    .requiredOption("--case <kelvin per watt>", "one switch to the case")
    .requiredOption("--diode-case <kelvin per watt>", "one diode to the case")
    .requiredOption("--under <kelvin per watt>", "case to heatsink, the whole module")
    .requiredOption("--sink <kelvin per watt>", "heatsink to air")
    .option("--air <degC>", "air at the heatsink", "40");
  add("sink", "the heatsink that keeps a junction below its limit", sink)
    .requiredOption("--watts <watts>", "heat of the part")
    .requiredOption("--case <kelvin per watt>", "junction to case")
    .requiredOption("--under <kelvin per watt>", "case to heatsink")
    .option("--limit <degC>", "of the junction", "110")
    .option("--air <degC>", "air at the heatsink", "40");
}

/** The load in the place of a current. */
function atLoad(command: Command): Command {
  return command
    .option("--load <watts>", "in the place of --amps: what the board drives")
    .option("--line <volts>", "of the mains, with --load", "230")
    .option("--boosted <volts>", "bus that a boost holds up, with --load; else the peak of the line");
}

function legOptions(command: Command): Command {
  return atLoad(switching(command))
    .option("--amps <amps>", "effective current of its phase")
    .option("--bus <volts>", "that it switches, with --amps")
    .requiredOption("--diode-volts <volts>", "threshold of the diode")
    .requiredOption("--diode-ohms <ohms>", "its slope resistance")
    .requiredOption("--recovery <joules>", "of one recovery, where --energy is given")
    .option("--depth <share>", "modulation depth", "0.8")
    .option("--power-factor <share>", "of the motor's current", "0.8");
}

/** What the path carries: as given, or at the load. */
function carried(options: Options): Parsed<LoadCurrents> {
  const { amps, load, line = "", boosted, bus, depth = "0.8", powerFactor = "0.8" } = options;
  if ((amps === undefined) === (load === undefined))
    return { ok: false, problem: "--amps or --load: one of them" };
  if (load === undefined) {
    const read = figures({ amps: amps ?? "", bus: bus ?? "0" });
    if (!read.ok) return read;
    const { amps: own, bus: busVolts } = read.value;
    return { ok: true, value: { busVolts, directAmps: own, phaseAmps: own, shape: null } };
  }
  const read = figures({ load, line, depth, powerFactor, boosted: boosted ?? "0" });
  if (!read.ok) return read;
  const { load: watts, line: lineVolts, boosted: held, ...motor } = read.value;
  return currentsAtLoad({ watts, lineVolts, boostedVolts: boosted === undefined ? null : held, ...motor });
}

function switching(command: Command): Command {
  return command
    .requiredOption("--volts <volts>", "threshold of the switch")
    .requiredOption("--ohms <ohms>", "its slope resistance")
    .requiredOption("--hertz <hertz>", "how often")
    .requiredOption("--energy <joules>", "of one turn-on with one turn-off")
    .requiredOption("--at-amps <amps>", "the current for which the data sheet says so")
    .requiredOption("--at-volts <volts>", "and the voltage");
}

/** Behind a capacitor; nobody knows the mains' own resistance. From memory: 1.6 to 2.5. */
const CAPACITOR_SHAPE = "2";

function bridge(options: Options): Parsed<Told> {
  const { volts = "", ohms = "", shape } = options;
  const currents = carried(options);
  if (!currents.ok) return currents;
  const { directAmps, shape: ofBoost } = currents.value;
  const read = figures({
    volts,
    ohms,
    shape: shape ?? (ofBoost === null ? CAPACITOR_SHAPE : String(ofBoost)),
  });
  if (!read.ok) return read;
  const drop = { volts: read.value.volts, ohms: read.value.ohms };
  const made = bridgeWatts(drop, directAmps, read.value.shape);
  if (!made.ok) return made;
  const text = `${watts(made.value)} in the bridge at ${amperes(directAmps)} (${TYPICAL})\n`;
  return { ok: true, value: { json: { watts: made.value, directAmps }, text } };
}

/** The figures that a chopper and a leg share. */
function readSwitch(options: Options): ReturnType<typeof figures<SwitchFigure>> {
  const { volts = "", ohms = "", hertz = "", energy = "", atAmps = "", atVolts = "" } = options;
  return figures({ volts, ohms, hertz, energy, atAmps, atVolts });
}
type SwitchFigure = "volts" | "ohms" | "hertz" | "energy" | "atAmps" | "atVolts";

function chopper(options: Options): Parsed<Told> {
  const read = readSwitch(options);
  if (!read.ok) return read;
  const more = figures({ amps: options.amps ?? "", bus: options.bus ?? "", duty: options.duty ?? "" });
  if (!more.ok) return more;
  const { volts, ohms, hertz, energy, atAmps, atVolts } = read.value;
  const made = chopperWatts({
    drop: { volts, ohms },
    energy: { joules: energy, atAmps, atVolts },
    amps: more.value.amps,
    volts: more.value.bus,
    duty: more.value.duty,
    hertz,
  });
  if (!made.ok) return made;
  return {
    ok: true,
    value: { json: { watts: made.value }, text: `${watts(made.value)} in the switch (${TYPICAL})\n` },
  };
}

/** A leg as its losses ask for it. */
function readLeg(options: Options): Parsed<Parameters<typeof legWatts>[0]> {
  if (options.amps !== undefined && options.bus === undefined)
    return { ok: false, problem: "--bus: is wanted with --amps" };
  const read = readSwitch(options);
  if (!read.ok) return read;
  const { diodeVolts = "", diodeOhms = "", recovery = "", depth = "", powerFactor = "" } = options;
  const more = figures({ diodeVolts, diodeOhms, recovery, depth, powerFactor });
  if (!more.ok) return more;
  const currents = carried(options);
  if (!currents.ok) return currents;
  const { volts, ohms, hertz, energy, atAmps, atVolts } = read.value;
  return {
    ok: true,
    value: {
      switchDrop: { volts, ohms },
      diodeDrop: { volts: more.value.diodeVolts, ohms: more.value.diodeOhms },
      energy: { joules: energy, atAmps, atVolts },
      recovery: { joules: more.value.recovery, atAmps, atVolts },
      rmsAmps: currents.value.phaseAmps,
      busVolts: currents.value.busVolts,
      depth: more.value.depth,
      powerFactor: more.value.powerFactor,
      hertz,
    },
  };
}

function leg(options: Options): Parsed<Told> {
  const read = readLeg(options);
  if (!read.ok) return read;
  const made = legWatts(read.value);
  if (!made.ok) return made;
  const { switchWatts, diodeWatts } = made.value;
  const { rmsAmps, busVolts } = read.value;
  const text = `${watts(switchWatts)} in the switch, ${watts(diodeWatts)} in the diode, at ${amperes(rmsAmps)} a phase (${TYPICAL})\n`;
  return { ok: true, value: { json: { ...made.value, phaseAmps: rmsAmps, busVolts }, text } };
}

function module(options: Options): Parsed<Told> {
  const read = readLeg(options);
  if (!read.ok) return read;
  const { case: switchToCase = "", diodeCase = "", under = "", sink: toAir = "", air = "" } = options;
  const mounted = figures({ case: switchToCase, diodeCase, under, sink: toAir, air });
  if (!mounted.ok) return mounted;
  const made = moduleHeat(read.value, {
    switchToCase: mounted.value.case,
    diodeToCase: mounted.value.diodeCase,
    caseToSink: mounted.value.under,
    sinkToAir: mounted.value.sink,
    airDegC: mounted.value.air,
  });
  if (!made.ok) return made;
  const { moduleWatts, caseDegC, switchDegC, diodeDegC } = made.value;
  const degC = (figure: number) => `${figure.toFixed(0)} degC`;
  const text = `${watts(moduleWatts)} in the module at ${amperes(read.value.rmsAmps)} a phase: case ${degC(caseDegC)}, switches ${degC(switchDegC)}, diodes ${degC(diodeDegC)} (${TYPICAL})\n`;
  return { ok: true, value: { json: { ...made.value, phaseAmps: read.value.rmsAmps }, text } };
}

function sink(options: Options): Parsed<Told> {
  const { watts: heat = "", case: junctionToCase = "", under = "", limit = "", air = "" } = options;
  const read = figures({ watts: heat, case: junctionToCase, under, limit, air });
  if (!read.ok) return read;
  const part = { watts: read.value.watts, junctionToCase: read.value.case, caseToSink: read.value.under };
  const made = sinkWanted(part, read.value.limit, read.value.air);
  if (!made.ok) return made;
  const text = `a heatsink of ${Number(made.value.toPrecision(3))} K/W or better, for ${read.value.limit} degC at the junction\n`;
  return { ok: true, value: { json: { sinkToAir: made.value }, text } };
}
